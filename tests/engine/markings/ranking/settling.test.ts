import { describe, expect, test } from 'vitest';
import {
  readMarking,
  type Hints,
  type Measured,
  type Reading,
} from '../../../../src/engine/markings/index.ts';
import { measuredAmong, measuredOf } from '../../../../src/engine/markings/ranking/measured.ts';
import { underlineOf } from '../../../../src/engine/markings/composing/underline.ts';
import { between, exactly } from '../../../../src/engine/quantities/range.ts';
import { lexiconFor } from '../scans.ts';
import { catalogue } from '../tables.ts';
import { wayOf, type Sought } from '../ways.ts';

const OHMMETER = 'an ohmmeter: a resistor reads its value, a capacitor nothing once it is charged';
const NOUGHTS = 'parts from about 1970 on count zeros with the third figure';
const PLAIN = 'ceramics before about 1970, and mica and polystyrene of any age, print plain pF';
const LARGE = 'a polar part as large as a finger-tip counts in uF';
const HALF =
  'set it to half its travel and measure from the wiper to the end it came from: about half of the whole is linear, less logarithmic, more reverse logarithmic';

/** What settles each reading, in their order. */
const settled = (text: string, hints?: Hints): string[][] =>
  readMarking(catalogue, text, hints).map(({ settleBy }) => settleBy);

describe('what would settle between a reading and its rivals', () => {
  test.each<[text: string, first: string[], second?: string[]]>([
    // Its own mark first, then what the marks of the others say, each once.
    [
      '470',
      ['measure at 1 kHz: 47 pF or 470 pF or 470 µF', NOUGHTS, PLAIN, LARGE, OHMMETER],
      ['measure at 1 kHz: 47 pF or 470 pF or 470 µF', PLAIN, NOUGHTS, LARGE, OHMMETER],
    ],
    // A single capacitance is not measured; an ohmmeter tells it from a resistance.
    ['473', [NOUGHTS, OHMMETER], [OHMMETER, NOUGHTS]],
    [
      '0.1 mF',
      [
        'measure at 1 kHz: 100 nF or 100 µF',
        'before SI it is uF; only large cans reach millifarads',
      ],
    ],
    // Nothing, where one value is read.
    ['47n', []],
    ['104GMV', []],
    // The meanings of a letter that two readings of one value differ about.
    [
      '104H',
      ['where and when it was made: H is ±3 %, or ±2.5 %'],
      ['where and when it was made: H is ±2.5 %, or ±3 %'],
    ],
    // And those of no reading, with the one that is shown.
    [
      '104P',
      [
        'where and when it was made: P is 0/+100 %, or 0/+80 %',
        'who made it: tables have the letter for 0/+100 %, −20/+80 %',
      ],
    ],
    ['104Z', ['who made it: tables have the letter for −20/+80 %, −20/+100 %']],
    // Meanings for other capacitances than this do not count.
    ['4n7C', []],
    [
      'B50K',
      [
        HALF,
        'where and when it was made: B is linear taper: 45 to 55 % of the whole at half travel, or logarithmic taper: 10 to 30 % of the whole at half travel',
      ],
    ],
    ['LIN 10K', []],
    // Where characters were made up, a meter and a lens.
    [
      '1?3',
      [
        'measure at 1 kHz: 10 nF or 15 nF or 12 nF or 18 nF or another value',
        'look again with a lens and slanting light',
      ],
    ],
    // The last may be a tolerance or a unit.
    [
      '104?',
      [
        'measure at 1 kHz: 100 nF or 104 pF or 104 nF or 104 µF',
        'look again with a lens and slanting light',
      ],
    ],
    [
      '4?3K',
      [
        'measure at 1 kHz: 47 nF or 43 nF or 4.3 nF or 4.3 µF',
        'look again with a lens and slanting light',
      ],
    ],
  ])('%j', (text, first, second) => {
    const found = settled(text);
    expect(found[0]).toEqual(first);
    if (second !== undefined) expect(found[1]).toEqual(second);
  });

  test('large capacitances are measured at 100 or 120 Hz', () => {
    const [first] = settled('470', { body: 'aluminium' });
    expect(first?.[0]).toBe('measure at 100 or 120 Hz: 470 µF or 47 µF');
  });

  test('four values are named one by one', () => {
    const texts = settled('2#µ').map(([first]) => first ?? '');
    expect(new Set(texts).size).toBe(1);
    const named = (texts[0] ?? '').split(': ')[1]?.split(' or ') ?? [];
    expect(named.length > 4).toBe(named.at(-1) === 'another value');
  });
});

const reading = (part: Partial<Reading>): Reading => ({
  kind: 'capacitor',
  types: [],
  sure: 'possible',
  evidence: [],
  notUnderstood: [],
  settleBy: [],
  ...part,
});

const within = (share: number) => ({ minus: share, plus: share, unit: 'fraction' as const });

const METERING = { unmarkedTolerance: 0.2, largestAt1kHz: 1e-6 };

describe('what a meter reads', () => {
  test.each<[of: Partial<Reading>, measured: Measured | undefined]>([
    // Without a tolerance 20 % is taken; up to 1 µF it is measured at 1 kHz.
    [
      { capacitance: exactly(1e-6) },
      {
        range: { min: 0.8e-6, typ: 1e-6, max: 1.2e-6 },
        with: '1 kHz',
        toleranceTaken: 0.2,
        overlaps: false,
      },
    ],
    [
      { capacitance: between(9e-6, 11e-6, 10e-6), tolerance: within(0.1) },
      {
        range: between(9e-6, 11e-6, 10e-6),
        with: '100 or 120 Hz',
        overlaps: false,
      },
    ],
    // What can be set has its ends marked.
    [
      { capacitance: between(4e-12, 20e-12, 12e-12) },
      {
        range: between(4e-12, 20e-12, 12e-12),
        with: '1 kHz',
        overlaps: false,
      },
    ],
    [
      { kind: 'resistor', resistance: exactly(100), tolerance: within(0) },
      { range: exactly(100), with: 'dc', overlaps: false },
    ],
    [{}, undefined],
  ])('%j', (of, measured) => {
    const found = measuredOf(METERING, reading(of));
    expect(found).toEqual(
      measured === undefined
        ? undefined
        : {
            ...measured,
            range: {
              min: expect.closeTo(measured.range.min, 15) as number,
              typ: measured.range.typ,
              max: expect.closeTo(measured.range.max, 15) as number,
            },
          },
    );
  });

  test('goes by the rules of thumb', () => {
    const other = { unmarkedTolerance: 0.5, largestAt1kHz: 1e-7 };
    const found = measuredOf(other, reading({ capacitance: exactly(2e-7) }));
    expect(found).toMatchObject({ with: '100 or 120 Hz', toleranceTaken: 0.5 });
    expect((found?.range.max ?? NaN) / 3e-7).toBeCloseTo(1, 9);
  });

  const tenth = (typ: number): Partial<Reading> => ({
    capacitance: between(typ * 0.9, typ * 1.1, typ),
    tolerance: within(0.1),
  });

  test.each<[says: string, own: Partial<Reading>, rival: Partial<Reading>, overlaps: boolean]>([
    ['far apart', tenth(10e-9), tenth(15e-9), false],
    ['near each other', tenth(10e-9), tenth(12e-9), true],
    ['far below', tenth(15e-9), tenth(10e-9), false],
    ['the other way round', tenth(12e-9), tenth(10e-9), true],
    ['of one value', tenth(10e-9), { capacitance: exactly(10e-9) }, false],
    [
      'of a resistor',
      tenth(10e-9),
      { kind: 'resistor', resistance: exactly(11e-9), tolerance: within(0) },
      false,
    ],
    ['without a value', tenth(10e-9), {}, false],
    [
      'touching',
      { capacitance: between(1e-9, 2e-9, 1.5e-9), tolerance: within(0.1) },
      { capacitance: between(2e-9, 3e-9, 2.5e-9), tolerance: within(0.1) },
      true,
    ],
  ])('may not settle a rival: %s', (_, own, rival, overlaps) => {
    const [one, other] = [reading(own), reading(rival)];
    expect(measuredAmong(METERING, [one, other], one)?.overlaps).toBe(overlaps);
    expect(measuredAmong(METERING, [one], one)?.overlaps).toBe(false);
    expect(measuredAmong(METERING, [one], reading({}))).toBeUndefined();
  });
});

describe('a line under the value', () => {
  const none = { evidence: [] };
  const disc = {
    volts: between(50, 100),
    evidence: [
      {
        text: '',
        at: 3,
        means: 'underlined (ceramic disc, plate or tube): rated 50 V to 100 V dc',
        source: 'tti-disc',
      },
    ],
  };

  test.each<[text: string, sought: Sought, wanted: object]>([
    ['104', { taken: ['104'], hints: { underlined: true } }, disc],
    ['104', { taken: ['104'], hints: { underlined: true, body: 'ceramic' } }, disc],
    ['104 63V TEST', { taken: ['104', '63V TEST'], hints: { underlined: true } }, disc],
    // Not where a rating is printed, nobody looked, or the part is no disc.
    ['104 63V', { taken: ['104', '63V'], hints: { underlined: true } }, none],
    ['104', { taken: ['104'] }, none],
    ['104', { taken: ['104'], hints: { underlined: true, body: 'film' } }, none],
    ['2R2', { taken: ['2R2'], value: 2.2e-6, hints: { underlined: true } }, none],
    ['X7R', { taken: ['X7R'], hints: { underlined: true } }, none],
    // That there is none says something of a disc alone, and is no rating.
    [
      '104',
      { taken: ['104'], hints: { underlined: false, body: 'ceramic' } },
      {
        evidence: [
          {
            text: '',
            at: 3,
            means:
              'not underlined (ceramic disc, plate or tube): 500 V dc by some makers; not to be relied on',
            source: 'tti-disc',
          },
        ],
      },
    ],
    ['104', { taken: ['104'], hints: { underlined: false } }, none],
    ['104', { taken: ['104'], hints: { underlined: false, body: 'film' } }, none],
    // Of chip resistors it says one per cent, of those with three figures.
    [
      '473',
      { taken: ['473'], says: 'resistance', value: 47e3, hints: { underlined: true } },
      {
        tolerance: within(0.01),
        evidence: [
          { text: '', at: 3, means: 'underlined: ±1 %', source: expect.any(String) as string },
        ],
      },
    ],
    [
      '473',
      { taken: ['473'], says: 'resistance', value: 47e3, hints: { underlined: false } },
      none,
    ],
    ['4702', { taken: ['4702'], says: 'resistance', hints: { underlined: true } }, none],
    ['47R', { taken: ['47R'], says: 'resistance', hints: { underlined: true } }, none],
  ])('%s, %j', (text, sought, wanted) => {
    const found = underlineOf(
      lexiconFor(sought.hints),
      wayOf(text, { says: 'capacitance', ...sought }),
    );
    expect(found).toEqual(wanted);
  });
});
