import { describe, expect, test } from 'vitest';
import { readColours, type ColourRequest } from '../../../src/engine/colours/index.ts';
import type { Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from '../markings/tables.ts';

const read = (form: string, text: string, more: Partial<ColourRequest> = {}): Reading[] =>
  readColours(catalogue, {
    form,
    colours: text.split(' ').map((name) => (name === '?' ? undefined : name)),
    ...more,
  });

/** What each place was taken for, with the place as it was given; not where the reading begins. */
const placesOf = (reading: Reading | undefined): string[] =>
  (reading?.evidence ?? [])
    .filter(({ text }) => !text.startsWith('begins'))
    .map(({ at, text, means }) => `${at} ${text}: ${means}`);

/** Figures and factors of IEC 60062; the others by the tables of their form. */
describe('what each place means', () => {
  test.each<[form: string, colours: string, places: string[]]>([
    [
      'resistor',
      'yellow violet red gold',
      ['0 yellow (1st band): figure 4', '1 violet (2nd band): figure 7'].concat([
        '2 red (3rd band): × 100',
        '3 gold (4th band): ±5 %',
      ]),
    ],
    // From the other end the places are counted as they were given.
    [
      'resistor',
      'gold red violet yellow',
      ['3 yellow (4th band): figure 4', '2 violet (3rd band): figure 7'].concat([
        '1 red (2nd band): × 100',
        '0 gold (1st band): ±5 %',
      ]),
    ],
    [
      'resistor',
      'brown black black blue brown red',
      ['0 brown (1st band): figure 1', '1 black (2nd band): figure 0'].concat([
        '2 black (3rd band): figure 0',
        '3 blue (4th band): × 10⁶',
        '4 brown (5th band): ±1 %',
        '5 red (6th band): ±50 ppm/K',
      ]),
    ],
    [
      'resistor',
      'orange orange orange',
      ['0 orange (1st band): figure 3', '1 orange (2nd band): figure 3'].concat([
        '2 orange (3rd band): × 1000',
        '3 no band for the tolerance: ±20 %',
      ]),
    ],
    [
      'resistor-painted',
      'red none brown',
      ['0 red (body): figure 2'].concat([
        '1 no mark (end): figure 2, in the colour of the body, red',
        '2 brown (dot): × 10',
        '3 no place for the tolerance: ±20 %',
      ]),
    ],
    [
      'resistor',
      'brown green yellow gold red',
      ['0 brown (1st band): figure 1', '1 green (2nd band): figure 5'].concat([
        '2 yellow (3rd band): × 10⁴',
        '3 gold (4th band): ±5 %',
        '4 red (5th band): 0.1 % fail in 1000 hours, letter P',
      ]),
    ],
    [
      'ceramic-tube',
      'orange orange yellow violet brown green',
      ['0 orange and orange (1st band and 2nd band): −1500 ppm/K, N1500'].concat([
        '2 yellow (3rd band): figure 4',
        '3 violet (4th band): figure 7',
        '4 brown (5th band): × 10',
        '5 green (6th band): ±5 %',
      ]),
    ],
    // Below 10 pF a tolerance is in picofarad.
    [
      'ceramic-tube',
      'black green violet white green',
      ['0 black (1st band): 0 ppm/K, NP0', '1 green (2nd band): figure 5'].concat([
        '2 violet (3rd band): figure 7',
        '3 white (4th band): × 0.1',
        '4 green (5th band): ±0.5 pF',
      ]),
    ],
    [
      'ceramic-tip',
      'red violet',
      ['0 red and violet (larger colour and smaller colour): +100 ppm/K, P100'],
    ],
    ['ceramic-body', 'red', ['0 red (the body): −750 to −150 ppm/K, М150 to М750']],
    [
      'tantalum-bead',
      'brown black black pink',
      ['0 brown (top): figure 1', '1 black (2nd band): figure 0'].concat([
        '2 black (spot): × 1',
        '3 pink (band by the leads): rated 35 V',
      ]),
    ],
    [
      'moulded-block',
      'red green black',
      ['0 red (1st dot): figure 2', '1 green (2nd dot): figure 5'].concat([
        '2 black (3rd dot): × 1',
        '3 no dot for the tolerance: ±20 %',
        '3 no dot for the voltage: rated 500 V',
      ]),
    ],
    [
      'moulded-block',
      'black blue grey red gold red',
      ['0 black (upper left): mica', '1 blue (upper middle): figure 6'].concat([
        '2 grey (upper right): figure 8',
        '3 red (lower left): characteristic C',
        '4 gold (lower middle): ±5 %',
        '5 red (lower right): × 100',
        '6 no dot for the voltage: rated 300 V',
      ]),
    ],
    [
      'moulded-tube',
      'red red orange black brown black',
      ['0 red (1st band): figure 2', '1 red (2nd band): figure 2'].concat([
        '2 orange (3rd band): × 1000',
        '3 black (4th band): ±20 %',
        '4 brown (5th band): figure 1 of the voltage, in hundreds of volts',
        '5 black (6th band): figure 0 of the voltage, in hundreds of volts',
      ]),
    ],
  ])('%s: %s', (form, colours, places) => {
    expect(placesOf(read(form, colours)[0])).toEqual(places);
  });

  test('words of a class, and of a kind of resistor', () => {
    const means = read('ceramic-tip', 'yellow').map((reading) => reading.evidence[0]?.means);
    expect(means).toContain('class 2, medium permittivity');
    const type = read('resistor', 'brown black black red violet')[1];
    expect(placesOf(type)).toContain('4 violet (5th band): fusible, type in the common body size');
  });

  test('tables that differ are both told', () => {
    const [first] = read('resistor', 'brown black black red violet');
    expect(placesOf(first)).toContain('4 violet (5th band): ±0.1 %; another table has ±0.5 %');
  });

  test('the back of a military mica', () => {
    const [first] = readColours(catalogue, {
      scheme: 'mica-9',
      colours: 'black brown red red gold red green red black'.split(' '),
    });
    expect(placesOf(first).slice(-3)).toEqual([
      '6 green (back, 1st dot): rated 500 V',
      '7 red (back, 2nd dot): −55 to 85 °C',
      '8 black (back, 3rd dot): tested with vibration from 10 to 55 Hz',
    ]);
  });

  test.each<[colours: string, left: string[]]>([
    ['yellow violet red pink', ['pink (4th band)']],
    ['yellow violet red ?', ['4th band, not known']],
    ['yellow violet red gold', []],
  ])('what is left of %s', (colours, left) => {
    expect(read('resistor', colours)[0]?.notUnderstood).toEqual(left);
  });
});

describe('where a reading begins', () => {
  const begin = (form: string, text: string, more: Partial<ColourRequest> = {}) =>
    read(form, text, more)[0]?.evidence.find((each) => each.text.startsWith('begins'));

  test.each<[form: string, colours: string, more: Partial<ColourRequest>, text: string, RegExp]>([
    ['resistor', 'yellow violet red gold', {}, 'begins at the 1st band', /gold would be a figure/],
    ['resistor', 'gold red violet yellow', {}, 'begins at the 4th band', /gold would be a figure/],
    [
      ...(['resistor', 'brown black black red brown', { apart: 'first' }] as const),
      'begins at the 5th band',
      /^the band that stands apart is the last one; from the other end it would be 10 kΩ$/,
    ],
    [
      ...(['resistor', 'brown black black red brown', { apart: 'last' }] as const),
      'begins at the 1st band',
      /^the band that stands apart is the last one; from the other end it would be 120 Ω$/,
    ],
    // 211 is in no series of IEC 60063; 10 kΩ is in all.
    [
      ...(['resistor', 'brown black black brown brown red', {}] as const),
      'begins at the 1st band',
      /211 Ω, which is in no series/,
    ],
    [
      ...(['ceramic-tube', 'black green violet white green', {}] as const),
      'begins at the 1st band',
      /9\.7 µF, which such parts do not have/,
    ],
    [
      ...(['moulded-tube', 'red red orange black brown black', {}] as const),
      'begins at the 1st band',
      /1 pF, with a nought in front/,
    ],
    [
      ...(['resistor', 'brown red ? black brown', {}] as const),
      'begins at the 1st band',
      /from the other end it would be /,
    ],
  ])('%s: %s, %j', (form, colours, more, text, means) => {
    const found = begin(form, colours, more);
    expect(found?.text).toBe(text);
    expect(found?.means).toMatch(means);
    expect(found?.at).toBe(0);
  });

  test('of the other reading, too', () => {
    const [, second] = read('resistor', 'brown black black red brown', { apart: 'first' });
    expect(second?.evidence[0]?.means).toBe(
      'the band that stands apart is the first one; from the other end it would be 120 Ω',
    );
    expect(second?.sure).toBe('possible');
  });

  test('no band stands apart where the scheme has none that does', () => {
    const found = begin('ceramic-tube', 'yellow violet brown white', { apart: 'first' });
    expect(found?.means).not.toContain('apart');
  });

  test.each([
    ['resistor', 'brown red red brown'],
    // Only one way up.
    ['tantalum-bead', 'brown black black pink'],
    ['film-stripes', 'red violet orange'],
    ['resistor', 'black'],
  ])('is not said where there is no choice, %s: %s', (form, colours) => {
    expect(begin(form, colours)).toBeUndefined();
  });
});

describe('what would settle it', () => {
  test.each<[form: string, colours: string, first: string[]]>([
    ['resistor', 'yellow violet red gold', []],
    ['resistor', 'yellow ? red gold', ['measure: 4.7 kΩ or 4.3 kΩ or 4 kΩ or 4.1 kΩ, …']],
    [
      'resistor',
      'brown green yellow gold red',
      ['measure: 150 kΩ or 15.4 Ω'].concat([
        'gold or silver in the fourth place, then brown, red, orange or yellow',
      ]),
    ],
    // Capacitances come with the frequency: that of mains ripple where all are large.
    ['film-stripes', 'red ? orange', [expect.stringMatching(/^measure at 1 kHz: /) as string]],
    [
      'tantalum-bead',
      'brown ? brown black',
      [expect.stringMatching(/^measure at 100 or 120 Hz: /) as string],
    ],
  ])('%s: %s', (form, colours, first) => {
    expect(read(form, colours)[0]?.settleBy.slice(0, Math.max(1, first.length))).toEqual(first);
  });
});

describe('colours that make no value', () => {
  test('too many that one cannot tell', () => {
    const [first] = read('resistor', '? ? ? red brown');
    expect(first?.resistance).toBeUndefined();
    expect(first?.tolerance?.plus).toBe(0.01);
  });

  test.each([
    [
      'a failure rate that is none',
      'resistor',
      'brown green yellow gold pink',
      'resistor-5-military',
    ],
    ['a kind that is none', 'moulded-block', 'blue brown red red silver red', 'mica-6'],
  ])('%s', (_what, form, colours, scheme) => {
    expect(read(form, colours).map((reading) => reading.colours?.scheme)).not.toContain(scheme);
  });
});

test('places that were filled in are counted as given, in order', () => {
  const [first] = read('resistor', 'gold red ? ?');
  expect(first?.colours).toMatchObject({ turned: true, guessed: [2, 3] });
});

test('a coefficient has a spread only where the colour gives one', () => {
  const known = (form: string, colours: string) =>
    read(form, colours)[0]?.temperatureCharacteristic?.spreadKnown;
  expect(known('ceramic-body', 'red')).toBe(true);
  expect(known('ceramic-tip', 'violet')).toBe(false);
  expect(Object.keys(read('resistor', 'yellow violet red gold')[0] ?? {})).not.toContain(
    'polarity',
  );
});
