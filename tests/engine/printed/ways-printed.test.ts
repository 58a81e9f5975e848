import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toleranceOf } from '../../../src/engine/markings/tolerances.ts';
import { inOrderOfUse } from '../../../src/engine/markings/use.ts';
import type { PartToPrint, Way } from '../../../src/engine/printed/index.ts';
import { waysPrinted } from '../../../src/engine/printed/index.ts';
import { catalogue, markings } from '../markings/tables.ts';
import { agrees, readBack } from './read-back.ts';

const ways = (part: PartToPrint): Way[] => waysPrinted(catalogue, part);

const tenPercent = { minus: 0.1, plus: 0.1, unit: 'fraction' } as const;

/** Marks that are met, with what they are printed for; each is one that a person would look for. */
const met: readonly { part: PartToPrint; text: string; use: Way['use']; body?: string }[] = [
  { part: { capacitance: 4.7e-8 }, text: '473', use: 'usual', body: 'film' },
  { part: { capacitance: 4.7e-8, tolerance: tenPercent }, text: '473K', use: 'usual' },
  {
    part: {
      capacitance: 4.7e-7,
      tolerance: { ...tenPercent, minus: 0.05, plus: 0.05 },
      ratedVoltage: 100,
    },
    text: '2A474J',
    use: 'usual',
    body: 'film',
  },
  { part: { capacitance: 1e-7 }, text: '0.1 µF', use: 'usual', body: 'paper' },
  { part: { capacitance: 1e-7 }, text: '.1 MFD', use: 'usual', body: 'paper' },
  { part: { capacitance: 1e-7 }, text: '100n', use: 'usual', body: 'film' },
  { part: { capacitance: 1e-7 }, text: 'u1', use: 'usual', body: 'film' },
  { part: { capacitance: 1e-7 }, text: 'u10', use: 'other', body: 'film' },
  { part: { capacitance: 1e-10 }, text: 'n10', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-7 }, text: '100 000 pF', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-7 }, text: '0,1 µF', use: 'usual', body: 'paper' },
  { part: { capacitance: 4.7e-9 }, text: '4n70', use: 'other', body: 'film' },
  { part: { capacitance: 4.75e-9 }, text: '4751', use: 'other', body: 'mica' },
  { part: { capacitance: 4.7e-8 }, text: 'S4', use: 'usual', body: 'ceramic-chip' },
  { part: { capacitance: 4.7e-12 }, text: '4R7', use: 'usual', body: 'ceramic' },
  { part: { capacitance: 4.7e-12 }, text: '479', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-8 }, text: '10K', use: 'other', body: 'ceramic' },
  { part: { capacitance: 4.7e-10 }, text: '470', use: 'other', body: 'mica' },
  { part: { capacitance: 2.5e-10 }, text: '250 MMFD', use: 'other', body: 'mica' },
  { part: { capacitance: 1e-5, ratedVoltage: 6.3 }, text: 'J106', use: 'usual', body: 'tantalum' },
  {
    part: { capacitance: 4.7e-5, ratedVoltage: 16 },
    text: '47/16',
    use: 'other',
    body: 'aluminium',
  },
  {
    part: { capacitance: 1e-8, ratedVoltage: 500 },
    text: '103 no underline',
    use: 'other',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 1e-8,
      tolerance: { minus: 0.2, plus: 0.2, unit: 'fraction' },
      ratedVoltage: 1000,
      temperatureCharacteristic: 'Z5U',
    },
    text: '103M 1kV Z5U',
    use: 'usual',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 4.7e-10,
      tolerance: { minus: 0.05, plus: 0.05, unit: 'fraction' },
      temperatureCharacteristic: 'N750',
    },
    text: '470JN',
    use: 'other',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 2.2e-7,
      tolerance: { minus: 0.2, plus: 0.2, unit: 'fraction' },
      ratedVoltage: 275,
      voltageKind: 'ac',
    },
    text: 'u22M 275V~',
    use: 'usual',
    body: 'film',
  },
  {
    part: { capacitance: 4.7e-8, tolerance: tenPercent, ratedVoltage: 100, type: 'pet-metallized' },
    text: 'MKT 47nK 100V',
    use: 'other',
    body: 'film',
  },
  { part: { capacitance: 1.5e-7 }, text: 'М15', use: 'usual', body: 'film' },
  { part: { resistance: 4700 }, text: '4K7', use: 'usual' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'B50K', use: 'usual', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'A50K', use: 'other', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'logarithmic' }, text: 'A50K', use: 'usual' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'B503', use: 'usual', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'linear' }, text: '50KB', use: 'other', body: 'trimmer' },
  { part: { resistance: 1e6, taper: 'logarithmic' }, text: 'A1M', use: 'other' },
  { part: { resistance: 1e6, taper: 'logarithmic' }, text: '1 MΩ LOG', use: 'usual' },
  { part: { resistance: 10e3, taper: 'reverse logarithmic' }, text: 'C10K', use: 'other' },
  { part: { resistance: 4700 }, text: '472', use: 'usual', body: 'resistor-chip' },
  { part: { resistance: 49.9 }, text: '68X', use: 'usual', body: 'resistor-chip' },
  { part: { resistance: 4700, tolerance: tenPercent }, text: '4.7 kΩ 10%', use: 'usual' },
];

describe('what is met on parts', () => {
  test.each(met)('$text', ({ part, text, use, body }) => {
    const way = ways(part).find((one) => one.text === text);
    expect(way).toMatchObject({ text, use });
    if (body !== undefined) expect(way?.bodies).toContain(body);
  });

  test.each<[string, PartToPrint]>([
    ['434V', { capacitance: 4.3e-7, tolerance: { minus: 0.1, plus: 1, unit: 'fraction' } }],
    ['47nF', { capacitance: 4.7e-8, tolerance: { minus: 0.01, plus: 0.01, unit: 'fraction' } }],
    ['470K', { capacitance: 4.7e-7 }],
    ['47нK', { capacitance: 4.7e-8, tolerance: tenPercent }],
    ['103', { capacitance: 1e-8, type: 'al-electrolytic-wet' }],
    ['2A104', { capacitance: 1e-7, ratedVoltage: 90 }],
    ['0.1 µF 250VAC', { capacitance: 1e-7, ratedVoltage: 250 }],
    ['B50K', { resistance: 50e3 }],
    ['C50K', { resistance: 50e3, taper: 'linear' }],
    ['4K7B', { resistance: 4700, taper: 'linear' }],
    ['AK5', { resistance: 500, taper: 'logarithmic' }],
    ['103K', { resistance: 10_000, tolerance: { ...tenPercent, minus: 0.05, plus: 0.05 } }],
    ['68X', { resistance: 49.9, tolerance: tenPercent }],
    ['R56', { resistance: 3.9, tolerance: tenPercent }],
    ['.0523U', { capacitance: 5.23e-8, tolerance: { minus: 0, plus: 0.8, unit: 'fraction' } }],
  ])('nobody prints %s for %o', (text, part) => {
    expect(ways(part).map((way) => way.text)).not.toContain(text);
  });

  test.each<PartToPrint>([
    {},
    { capacitance: 0 },
    { capacitance: -1e-9 },
    { capacitance: NaN },
    { capacitance: Infinity },
    { capacitance: Math.PI * 1e-9 },
    { resistance: NaN },
  ])('nothing is printed for %o', (part) => {
    expect(ways(part)).toEqual([]);
  });

  test('units that are printed are units that are read', () => {
    for (const { word, factor } of markings.printedUnits)
      expect(
        markings.unitWords.some(
          (row) => row.word.toLowerCase() === word.toLowerCase() && row.factor === factor,
        ),
        word,
      ).toBe(true);
  });

  test('an arrangement names voltages and words that there are', () => {
    const schemes = new Set<string>(markings.voltageCodes.map((row) => row.scheme));
    const words = new Set(markings.voltageWords.map((row) => row.word));
    for (const { pattern } of markings.arrangements) {
      for (const [, scheme = ''] of pattern.matchAll(/\{voltage:([^}]+)\}/g))
        expect(schemes).toContain(scheme);
      for (const [, word = ''] of pattern.matchAll(/\{volts:([^}]+)\}/g))
        expect(words).toContain(word);
    }
  });
});

const mantissas = (...names: string[]): number[] => [
  ...new Set(catalogue.series.filter((row) => names.includes(row.series)).map((row) => row.value)),
];
const scaled = (mantissa: number, power: number): number => Number(`${mantissa}e${power}`);

const anyPart = fc
  .record({
    capacitance: fc
      .tuple(
        fc.oneof(fc.constantFrom(...mantissas('E24')), fc.constantFrom(...mantissas('E96'))),
        fc.integer({ min: -12, max: -3 }),
      )
      .map(([mantissa, power]) => scaled(mantissa, power)),
    tolerance: fc.option(
      fc.constantFrom(...markings.toleranceLetters).map((row) => toleranceOf(row)),
      { nil: undefined },
    ),
    ratedVoltage: fc.option(
      fc.constantFrom(...markings.voltageCodes).map((row) => row.volts_min),
      {
        nil: undefined,
      },
    ),
    temperatureCharacteristic: fc.constantFrom(undefined, 'X7R', 'N750', 'CH', 'Z5U'),
  })
  .map(
    (part) =>
      Object.fromEntries(
        Object.entries(part).filter(([, value]) => value !== undefined),
      ) as PartToPrint,
  );

/** Reads a way on a body; a usual one must come first, others be among the readings. */
const holdsOn = (part: PartToPrint, way: Way, body: string): void => {
  const readings = readBack(way, body);
  const said = `${way.text} on ${body}: ${JSON.stringify(readings[0])}`;
  // Rare meanings of a letter or a voltage give way to usual ones; the value does not.
  const asked: Way = way.use === 'rare' ? { ...way, shows: [] } : way;
  const looked = way.use === 'usual' ? readings.slice(0, 1) : readings;
  expect(
    looked.some((reading) => agrees(asked, part, reading)),
    said,
  ).toBe(true);
};

const holds = (part: PartToPrint, way: Way): void => {
  for (const body of way.bodies) holdsOn(part, way, body);
};

/** One of a list, by a number of any size. */
const picked = <Item>(items: readonly Item[], pick: number): Item | undefined =>
  items[pick % Math.max(1, items.length)];

describe('what is printed is read back', () => {
  test('any value, tolerance, voltage and characteristic', () => {
    fc.assert(
      fc.property(anyPart, fc.nat(), (part, pick) => {
        const way = picked(ways(part), pick);
        if (way !== undefined) holdsOn(part, way, picked(way.bodies, pick) ?? '');
      }),
      { numRuns: 600 },
    );
  });

  test('every value of the three-figure code', () => {
    for (const mantissa of mantissas('E24')) {
      for (let power = -11; power <= -5; power += 1) {
        const part = { capacitance: scaled(mantissa, power) };
        const coded = ways(part).filter((way) => way.writing === 'figures' && way.use === 'usual');
        expect(coded.length).toBeGreaterThan(0);
        for (const way of coded) holds(part, way);
      }
    }
  });

  test('every letter and figure of chips', () => {
    for (const { value } of markings.mantissaLetters) {
      for (const power of [-13, -12, -11, -10, -9, -8, -7]) {
        const part = { capacitance: scaled(value, power) };
        const coded = ways(part).filter((way) => way.writing === 'chip');
        for (const way of coded) holds(part, way);
      }
    }
  });

  test('every voltage code', () => {
    for (const row of markings.voltageCodes.filter((one) => one.scheme !== 'words')) {
      const part: PartToPrint = {
        capacitance: row.bodies.includes('ceramic') ? 4.7e-10 : 4.7e-6,
        tolerance: tenPercent,
        ratedVoltage: row.volts_min,
        ...(row.kind === 'ac' ? { voltageKind: 'ac' } : {}),
      };
      const coded = ways(part).filter(
        (way) => way.shows.includes('voltage') && way.text.includes(row.code),
      );
      for (const way of coded.slice(0, 4)) holds(part, way);
    }
  });

  test('every tolerance letter', () => {
    for (const row of markings.toleranceLetters) {
      const part: PartToPrint = {
        capacitance: row.below_f === undefined ? 1e-8 : 5.6e-12,
        tolerance: toleranceOf(row),
      };
      const lettered = ways(part).filter(
        (way) => way.shows.includes('tolerance') && way.text.endsWith(row.letter),
      );
      for (const way of lettered.slice(0, 8)) holds(part, way);
    }
  });

  test('resistors', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...mantissas('E24')),
        fc.integer({ min: 0, max: 6 }),
        fc.nat(),
        (mantissa, power, pick) => {
          const part = { resistance: scaled(mantissa, power), tolerance: tenPercent };
          const way = picked(ways(part), pick);
          if (way !== undefined) holdsOn(part, way, picked(way.bodies, pick) ?? '');
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('a potentiometer is read back with its taper', () => {
  const laws = [...new Set(markings.tapers.map(({ law }) => law))];
  const asked = laws.flatMap((taper) =>
    [100, 470, 1e3, 2200, 4700, 5e3, 1e4, 2.5e4, 5e4, 1e5, 2.5e5, 4.7e5, 1e6, 2e6].map(
      (resistance) => ({ taper, resistance }),
    ),
  );

  test.each(asked)('$taper, $resistance ohm', (part) => {
    const tapered = ways(part).filter((way) => way.shows.includes('taper'));
    expect(tapered.length).toBeGreaterThan(1);
    for (const way of tapered) holds(part, way);
  });
});

describe('any part', () => {
  test('each text once, usual ones first, with a body and a source', () => {
    fc.assert(
      fc.property(anyPart, (part) => {
        const all = ways(part);
        expect(new Set(all.map((way) => way.text)).size).toBe(all.length);
        expect(inOrderOfUse(all)).toEqual(all);
        for (const way of all) {
          expect(way.text).toContain(way.value);
          expect(way.bodies.length).toBeGreaterThan(0);
          expect(way.sources.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 100 },
    );
  });
});
