import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { benchCases } from './bench-cases.ts';
import { cases, n, p, u, type Wanted } from './cases.ts';
import { catalogue } from './tables.ts';

const near = (value: number) => expect.closeTo(value, 18) as number;

/** What a case asks, in the shape of a reading. */
const inShape = ({ c, r, sections, tolerance, volts, ...wanted }: Wanted) => {
  const asked = {
    capacitance: c === undefined ? undefined : { typ: near(c) },
    sections: sections?.map((each) => ({ capacitance: { typ: near(each) } })),
    resistance: r === undefined ? undefined : { typ: near(r) },
    tolerance:
      tolerance === undefined
        ? undefined
        : { minus: near(tolerance[0]), plus: near(tolerance[1]), unit: tolerance[2] },
    ratedVoltage: volts === undefined ? undefined : { typ: volts },
    voltageKind: wanted.kind,
    temperatureCharacteristic: wanted.code === undefined ? undefined : { code: wanted.code },
    types: wanted.types,
    sure: wanted.sure,
    date: wanted.date,
    safetyClass: wanted.safety,
    notUnderstood: wanted.lost,
  };
  return Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
};

describe('the best reading', () => {
  test.each([...cases, ...benchCases])('%j with %j', (text, hints, wanted) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best).toMatchObject(inShape(wanted));
  });
});

test.each([
  ['2512 R010', undefined],
  ['0805 4n7', undefined],
  ['1210 22u 25V', undefined],
  ['104 1205', '2012-W05'],
  ['104 8312', '1983-W12'],
])('the size of a chip in a list is no date: %s', (text, date) => {
  expect(readMarking(catalogue, text)[0]?.date).toBe(date);
});

/** Markings of capacitors that can be taken in more than one way, and the values in their order. */
const ambiguous: [string, Hints, number[]][] = [
  ['10K', {}, [10 * p, 10 * n]],
  ['47K', {}, [47 * p, 47 * n]],
  ['470', {}, [47 * p, 470 * p, 470 * u]],
  ['100', {}, [10 * p, 100 * p, 100 * u]],
  ['2R2', {}, [2.2 * p, 2.2 * u]],
  ['1M', { kind: 'capacitor' }, [u, p]],
  ['470P', {}, [470 * p, 47 * p]],
  ['470', { body: 'aluminium' }, [470 * u, 47 * u]],
  ['470', { body: 'ceramic', origin: 'british' }, [470 * p]],
  ['101 M', { body: 'aluminium' }, [100 * u]],
  ['0.1 mF', {}, [100 * n, 100 * u]],
];

/** Marks with a tolerance letter that tables differ about, and what it is below and above, per cent. */
const disputed: [string, Hints, [minus: number, plus: number][]][] = [
  [
    '104H',
    {},
    [
      [3, 3],
      [2.5, 2.5],
    ],
  ],
  [
    '473H 50V',
    { body: 'film' },
    [
      [3, 3],
      [2.5, 2.5],
    ],
  ],
  [
    '104P',
    {},
    [
      [0, 100],
      [0, 80],
    ],
  ],
];

describe('a tolerance letter with two meanings', () => {
  test.each(disputed)('%j with %j is shown with both and is not sure', (text, hints, wanted) => {
    const readings = readMarking(catalogue, text, hints);
    const found = readings.map(({ tolerance }) => [
      Math.round((tolerance?.minus ?? NaN) * 1e4) / 100,
      Math.round((tolerance?.plus ?? NaN) * 1e4) / 100,
    ]);
    expect(found.slice(0, wanted.length)).toEqual(wanted);
    expect(readings.map(({ sure }) => sure)).not.toContain('sure');
    for (const { settleBy } of readings) expect(settleBy.join()).toMatch(/made/);
  });

  test('one that a single list differs about stays sure', () => {
    expect(readMarking(catalogue, '473Z', {}).map(({ sure }) => sure)).toEqual(['sure']);
  });
});

/** A capital letter behind round figures is the unit of some makers. */
test.each([
  ['100N', 100 * n],
  ['10N', 10 * n],
  ['330N 63V', 330 * n],
  ['100P', 100 * p],
  ['470U', 470 * u],
])('%s may be %d F', (text, value) => {
  const found = readMarking(catalogue, text, {}).map(({ capacitance }) => capacitance?.typ ?? 0);
  expect(found).toContainEqual(near(value));
});

describe('readings of an ambiguous marking', () => {
  test.each(ambiguous)('%j with %j', (text, hints, values) => {
    const readings = readMarking(catalogue, text, hints);
    const found = [...new Set(readings.flatMap(({ capacitance }) => capacitance?.typ ?? []))];
    expect(found.slice(0, values.length).map((value) => value.toPrecision(9))).toEqual(
      values.map((value) => value.toPrecision(9)),
    );
  });

  test.each(ambiguous.filter(([, , values]) => values.length > 1))(
    '%j with %j is never sure and says what settles it',
    (text, hints) => {
      for (const reading of readMarking(catalogue, text, hints)) {
        expect(reading.sure).not.toBe('sure');
        if (reading.kind === 'capacitor') expect(reading.settleBy[0]).toMatch(/^measure at/);
      }
    },
  );

  test('47 pF or 470 pF is settled by measuring', () => {
    const [reading] = readMarking(catalogue, '470');
    expect(reading?.settleBy[0]).toBe('measure at 1 kHz: 47 pF or 470 pF or 470 µF');
  });
});

describe('value with tolerance over temperature', () => {
  test('103M Z5U: 10 nF from 0.8 · 0.44 to 1.2 · 1.22', () => {
    const [reading] = readMarking(catalogue, '103M Z5U');
    expect(reading?.capacitanceOverTemperature?.min).toBeCloseTo(10e-9 * 0.8 * 0.44, 15);
    expect(reading?.capacitanceOverTemperature?.max).toBeCloseTo(10e-9 * 1.2 * 1.22, 15);
    expect(reading?.temperatureCharacteristic).toMatchObject({ tMin: 10, tMax: 85, class: 2 });
  });

  test('101J C0G: 30 ppm/K over the wider side, 100 K', () => {
    const [reading] = readMarking(catalogue, '101J C0G');
    expect(
      (reading?.capacitanceOverTemperature?.max ?? NaN) / (100e-12 * 1.05 * 1.003),
    ).toBeCloseTo(1, 9);
  });
});

describe('what is not understood', () => {
  test.each(['', '   ', '\n', 'zzz qq', '---'])('%j gives no reading', (text) => {
    expect(readMarking(catalogue, text)).toEqual([]);
  });

  test('a test voltage is never the rating', () => {
    const [reading] = readMarking(catalogue, '0.1uF T.E. 1500V', { origin: 'french' });
    expect(reading?.ratedVoltage).toBeUndefined();
    expect(reading?.evidence.at(-1)?.means).toContain('never the rating');
  });

  test('a maker’s letters beside a value stay as they are', () => {
    const [reading] = readMarking(catalogue, 'QQX 473K 100V');
    expect(reading?.notUnderstood).toEqual(['QQX']);
    expect(reading?.capacitance?.typ).toBeCloseTo(47e-9, 18);
  });

  test('every source of the evidence is named', () => {
    for (const [text, hints] of cases)
      for (const reading of readMarking(catalogue, text, hints))
        for (const { source, means } of reading.evidence) {
          expect(source).not.toBe('');
          expect(means).not.toBe('');
        }
  });
});

test.each([
  ['47P', undefined],
  ['47PK', 0.1],
  ['100PJ', 0.05],
  ['47UM', 0.2],
  ['104P', 1],
  ['104M', 0.2],
])('%j has its unit before its tolerance, which is %s', (text, plus) => {
  expect(readMarking(catalogue, text)[0]?.tolerance?.plus).toBe(plus);
});

describe('a figure with an F behind it', () => {
  // Double-layer parts are marked in farads beside 5.5 or 2.7 V, which no film below 1 µF is rated for; on
  // film the letter is a tolerance of 1 %.
  test.each<[text: string, farads: number[]]>([
    ['0.1F 5.5V', [0.1, 0.1e-6]],
    ['5.5V 0.047F', [0.047, 0.047e-6]],
    ['.1F', [0.1e-6, 0.1]],
    ['.1F 100V', [0.1e-6]],
  ])('%s', (text, farads) => {
    const read = readMarking(catalogue, text).map(({ capacitance }) => capacitance?.typ ?? NaN);
    expect(read.slice(0, farads.length).map((each) => Number(each.toPrecision(6)))).toEqual(farads);
  });
});
