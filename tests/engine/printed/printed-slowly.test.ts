import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTemperatureCharacteristic } from '../../../src/engine/markings/lexicon/temperatures.ts';
import { toleranceOf } from '../../../src/engine/markings/ratings/tolerances.ts';
import { inOrderOfUse } from '../../../src/engine/markings/meanings/use.ts';
import { waysPrinted, type PartToPrint, type Way } from '../../../src/engine/printed/index.ts';
import { catalogue, markings } from '../markings/tables.ts';
import { agrees, readBack } from './read-back.ts';

const ways = (part: PartToPrint): Way[] => waysPrinted(catalogue, part);

const tenPercent = { minus: 0.1, plus: 0.1, unit: 'fraction' } as const;

const mantissas = (...names: string[]): number[] => [
  ...new Set(catalogue.series.filter((row) => names.includes(row.series)).map((row) => row.value)),
];
const scaled = (mantissa: number, power: number): number => Number(`${mantissa}e${power}`);

/** Whether parts of such a characteristic come within ten times of the value; a mark of others is rather read otherwise. */
const isMet = ({ capacitance = NaN, temperatureCharacteristic: code }: PartToPrint): boolean =>
  code === undefined ||
  readTemperatureCharacteristic(markings, code)
    .flatMap(({ types }) => types.flatMap((type) => catalogue.types[type] ?? []))
    .some((row) => capacitance >= row.old_c_min / 10 && capacitance <= row.old_c_max * 10);

const inE24 = new Set(mantissas('E24'));

/** Tolerances wider than this, as a fraction, and voltages below this, in V, precise parts do not have. */
const WIDEST_OF_PRECISE = 0.05;
const LEAST_OF_PRECISE = 25;

/** Whether parts come in such a value: IEC 60063 has E96 for one per cent. */
const isMade = ({ capacitance = NaN, tolerance, ratedVoltage: volts = Infinity }: PartToPrint) =>
  inE24.has(Number(capacitance.toExponential(6).split('e')[0])) ||
  ((tolerance?.unit !== 'fraction' || tolerance.plus <= WIDEST_OF_PRECISE) &&
    volts >= LEAST_OF_PRECISE);

/** Whether something is left of the value at its least: nobody makes 1.6 pF of ±2 pF. */
const isSomething = ({ capacitance = NaN, tolerance }: PartToPrint): boolean =>
  tolerance?.unit !== 'F' || tolerance.minus < capacitance;

const LEAST_OF_CLASS_2 = 0.05;

/** Whether parts of such a characteristic come in such a tolerance: class 2 drifts by more than a per cent. */
const isSteady = ({ tolerance, temperatureCharacteristic: code }: PartToPrint): boolean =>
  code === undefined ||
  !/^[XYZ]\d/.test(code) ||
  tolerance?.unit !== 'fraction' ||
  tolerance.plus >= LEAST_OF_CLASS_2;

/** V. A `1V` on a part is the code for 35 V, as on `1V 225`; nobody is known to have rated one for 1 V. */
const LEAST_RATED = 1.5;

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
      fc
        .constantFrom(...markings.voltageCodes.filter((row) => row.volts_min >= LEAST_RATED))
        .map((row) => row.volts_min),
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
  )
  .filter(isMet)
  .filter(isMade)
  .filter(isSomething)
  .filter(isSteady);

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
