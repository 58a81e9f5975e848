import { describe, expect, test } from 'vitest';
import type { Hints, Reading } from '../../../src/engine/markings/index.ts';
import { readMarking } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

/** What a case expects of the best reading; what it leaves out is not looked at. */
interface Wanted {
  c?: number;
  r?: number;
  tolerance?: [number, number, 'fraction' | 'F'];
  volts?: number;
  kind?: 'dc' | 'ac';
  code?: string;
  types?: string[];
  sure?: Reading['sure'];
  date?: string;
  safety?: string;
  lost?: string[];
}

const none: string[] = [];
const p = 1e-12;
const n = 1e-9;
const u = 1e-6;

const cases: [string, Hints, Wanted][] = [
  [
    '103M 1KV Z5U',
    {},
    {
      c: 10 * n,
      tolerance: [0.2, 0.2, 'fraction'],
      volts: 1000,
      code: 'Z5U',
      types: ['ceramic-z5u'],
      sure: 'sure',
      lost: none,
    },
  ],
  [
    '103m 1kv z5u',
    {},
    {
      c: 10 * n,
      tolerance: [0.2, 0.2, 'fraction'],
      volts: 1000,
      code: 'Z5U',
      sure: 'sure',
      lost: none,
    },
  ],
  ['473K', {}, { c: 47 * n, tolerance: [0.1, 0.1, 'fraction'], sure: 'sure' }],
  [
    '2A474J',
    {},
    { c: 470 * n, tolerance: [0.05, 0.05, 'fraction'], volts: 100, kind: 'dc', sure: 'sure' },
  ],
  ['2a474j', {}, { c: 470 * n, tolerance: [0.05, 0.05, 'fraction'], volts: 100 }],
  ['.1K250', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 250 }],
  ['.05 mfd 400V', {}, { c: 50 * n, volts: 400, sure: 'sure' }],
  ['0.01MFD 600WVDC', {}, { c: 10 * n, volts: 600, kind: 'dc', sure: 'sure' }],
  ['4n7', {}, { c: 4.7 * n, lost: none }],
  ['4,7 nF', {}, { c: 4.7 * n, sure: 'sure' }],
  ['47u 16V', {}, { c: 47 * u, volts: 16 }],
  [
    '1u0 K 100-',
    {},
    { c: u, tolerance: [0.1, 0.1, 'fraction'], volts: 100, kind: 'dc', lost: none },
  ],
  [
    'MKP 0u22 M 275~ X2',
    {},
    {
      c: 220 * n,
      volts: 275,
      kind: 'ac',
      safety: 'X2',
      types: ['film-x2', 'pp-metallized'],
      sure: 'sure',
    },
  ],
  ['CH 1H 101 J', {}, { c: 100 * p, volts: 50, code: 'CH', types: ['ceramic-c0g'] }],
  [
    '47JN',
    {},
    { c: 47 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N', types: ['ceramic-class1-other'] },
  ],
  [
    '470JN',
    { origin: 'british', body: 'ceramic' },
    { c: 470 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N' },
  ],
  ['470JN', {}, { c: 470 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N' }],
  ['6.8DC', {}, { c: 6.8 * p, tolerance: [0.5 * p, 0.5 * p, 'F'], code: 'C' }],
  ['1KV 102K', {}, { c: n, tolerance: [0.1, 0.1, 'fraction'], volts: 1000, sure: 'sure' }],
  ['250 mmfd', {}, { c: 250 * p, sure: 'sure' }],
  ['500 cm', {}, { c: 556.325 * p, sure: 'sure' }],
  ['2 jar', {}, { c: 2222 * p }],
  ['n47', {}, { c: 470 * p }],
  ['p33', {}, { c: 0.33 * p }],
  ['4R7', { body: 'ceramic' }, { c: 4.7 * p }],
  ['2R2', { body: 'film' }, { c: 2.2 * u }],
  ['15П', {}, { c: 15 * p }],
  ['М15', {}, { c: 150 * n }],
  ['10K', { kind: 'resistor' }, { r: 10000 }],
  ['10 000 pF', {}, { c: 10 * n, sure: 'sure', lost: none }],
  ['100 mmfd', {}, { c: 100 * p, sure: 'sure' }],
  ['1 MFD 50WVDC', {}, { c: u, volts: 50, kind: 'dc', sure: 'sure' }],
  [
    '0.1uF ±10% 100V',
    {},
    { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 100, lost: none },
  ],
  [
    '10 µF -20+80% 63 V',
    {},
    { c: 10 * u, tolerance: [0.2, 0.8, 'fraction'], volts: 63, lost: none },
  ],
  ['3.3 pF ±0.5 pF', {}, { c: 3.3 * p, tolerance: [0.5 * p, 0.5 * p, 'F'], lost: none }],
  ['104J 8923', {}, { c: 100 * n, date: '1989-W23', lost: none }],
  ['NONAME\n104K\n250V', {}, { c: 100 * n, volts: 250, lost: ['NONAME'] }],
  ['350/500V 8uF', {}, { c: 8 * u, volts: 350, lost: none }],
  ['0.1 uF 400V 1200V TEST', {}, { c: 100 * n, volts: 400, lost: none }],
  ['0,1/250', {}, { c: 100 * n, volts: 250, lost: none }],
  ['103Z', {}, { c: 10 * n, tolerance: [0.2, 0.8, 'fraction'] }],
  [
    '4p7C NP0',
    {},
    { c: 4.7 * p, tolerance: [0.25 * p, 0.25 * p, 'F'], code: 'NP0', types: ['ceramic-c0g'] },
  ],
  ['100J N750', {}, { c: 10 * p, code: 'N750', types: ['ceramic-class1-other'] }],
  ['BP 10uF 50V', {}, { c: 10 * u, volts: 50, types: ['al-electrolytic-bipolar'] }],
  ['К73-17 0,1мкФ 250В', {}, { c: 100 * n, volts: 250, types: ['pet-metallized'], lost: none }],
  ['222M Y2 250~', {}, { c: 2.2 * n, safety: 'Y2', kind: 'ac' }],
  ['472M X1Y2', {}, { c: 4.7 * n, safety: 'X1/Y2', types: ['ceramic-y-safety'] }],
  ['F103Z', {}, { c: 10 * n, code: 'F', types: ['ceramic-y5v'] }],
  ['104 X7R 50V', {}, { c: 100 * n, volts: 50, types: ['ceramic-x7r'] }],
  ['22/16', {}, { c: 22 * u, volts: 16 }],
  ['10/16V', {}, { c: 10 * u, volts: 16 }],
  ['100/25', {}, { c: 100 * u, volts: 25 }],
  ['104k', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'] }],
  ['680p 500V', {}, { c: 680 * p, volts: 500 }],
  ['16+16µF 350V', {}, { c: 16 * u, volts: 350, sure: 'likely', lost: ['16'] }],
  ['3300p K 630-', {}, { c: 3.3 * n, volts: 630, tolerance: [0.1, 0.1, 'fraction'] }],
];

const near = (value: number) => expect.closeTo(value, 18) as number;

/** What a case asks, in the shape of a reading. */
const inShape = ({ c, r, tolerance, volts, ...wanted }: Wanted) => {
  const asked = {
    capacitance: c === undefined ? undefined : { typ: near(c) },
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
  test.each(cases)('%j with %j', (text, hints, wanted) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best).toMatchObject(inShape(wanted));
  });
});

/** Markings that can be taken in more than one way, and the values in their order. */
const ambiguous: [string, Hints, number[]][] = [
  ['10K', {}, [10 * p, 10 * n]],
  ['47K', {}, [47 * p, 47 * n]],
  ['470', {}, [47 * p, 470 * p, 470 * u]],
  ['100', {}, [10 * p, 100 * p, 100 * u]],
  ['2R2', {}, [2.2 * p, 2.2 * u]],
  ['1M', {}, [u, p]],
  ['470', { body: 'aluminium' }, [470 * u, 47 * u]],
  ['470', { body: 'ceramic', origin: 'british' }, [470 * p]],
  ['101 M', { body: 'aluminium' }, [100 * u]],
  ['0.1 mF', {}, [100 * n, 100 * u]],
];

describe('readings of an ambiguous marking', () => {
  test.each(ambiguous)('%j with %j', (text, hints, values) => {
    const readings = readMarking(catalogue, text, hints);
    const found = readings.map(({ capacitance }) => capacitance?.typ ?? NaN);
    expect(found.slice(0, values.length).map((value) => value.toPrecision(9))).toEqual(
      values.map((value) => value.toPrecision(9)),
    );
  });

  test.each(ambiguous.filter(([, , values]) => values.length > 1))(
    '%j with %j is never sure and says what settles it',
    (text, hints) => {
      for (const reading of readMarking(catalogue, text, hints)) {
        expect(reading.sure).not.toBe('sure');
        expect(reading.settleBy[0]).toMatch(/^measure at/);
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
