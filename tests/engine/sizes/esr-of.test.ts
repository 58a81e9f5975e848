import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { esrOf } from '../../../src/engine/sizes/esr-of.ts';
import { catalogue, knowing, known, notKnown } from '../assessment/setting.ts';
import { madeResistance, sized } from './setting.ts';

const table = knowing(
  sized({
    seriesResistance: [
      madeResistance({ capacitance: 1e-5, esr_min: 0.05, esr_typ: 0.1, esr_max: 0.4 }),
      madeResistance({ capacitance: 1e-6, esr_min: 0.5, esr_typ: 1, esr_max: 4 }),
      madeResistance({ frequency_hz: 120, esr_min: undefined, esr_typ: 30, esr_max: 60 }),
    ],
  }),
  'glass',
  { 'esr-100khz': known({ min: 7, typ: 8, max: 9 }) },
);

const at = (capacitance: number, ratedVoltage = 63, frequency?: number) =>
  esrOf(table, { type: 'glass', capacitance, ratedVoltage }, frequency);

describe('series resistance', () => {
  test('is what a row says at its own value', () => {
    expect(at(1e-5)?.range).toEqual({ min: 0.05, typ: 0.1, max: 0.4 });
    expect(at(1e-5)?.by).toBe('value');
  });

  test('lies between two rows on logarithmic scales', () => {
    const range = at(Math.sqrt(10) * 1e-6)?.range;
    expect(range?.typ).toBeCloseTo(1 / Math.sqrt(10), 9);
    expect(range?.max).toBeCloseTo(4 / Math.sqrt(10), 9);
  });

  test.each([
    ['a value below the rows', 4.7e-7, 63],
    ['a value above the rows', 2.2e-5, 63],
    ['a voltage outside the band', 1e-6, 160],
  ])('is that of the whole type for %s', (_what, farads, volts) => {
    expect(at(farads, volts)).toMatchObject({ by: 'type', range: { min: 7, typ: 8, max: 9 } });
  });

  test('at another frequency is what a row for it says', () => {
    expect(at(1e-6, 63, 120)?.range).toEqual({ min: 30, typ: 30, max: 60 });
  });

  test('lies between the rows of two frequencies, as a steady part and one that goes with 1/f', () => {
    const [b, a] = [(30 - 1) / (1 / 120 - 1e-5), 1 - (30 - 1) / (1 / 120 - 1e-5) / 1e5];
    expect(at(1e-6, 63, 1000)?.range.typ).toBeCloseTo(a + b / 1000, 9);
    expect(at(1e-6, 63, 1000)?.by).toBe('value');
  });

  test('goes with 1/f below the lowest frequency, as far as half of it', () => {
    expect(at(1e-6, 63, 60)?.range).toEqual({ min: 60, typ: 60, max: 120 });
    expect(at(1e-6, 63, 40)).toBeUndefined();
  });

  test('stays above the highest frequency, as far as ten times of it', () => {
    expect(at(1e-5, 63, 1e6)?.range).toEqual({ min: 0.05, typ: 0.1, max: 0.4 });
    expect(at(1e-5, 63, 2e6)).toBeUndefined();
  });

  test.each([2e4, 1e3])(
    'is not known of a value with rows for 100 kHz alone, at %d Hz',
    (hertz) => {
      expect(at(1e-5, 63, hertz)).toBeUndefined();
    },
  );

  test('that of the whole type holds near 100 kHz only', () => {
    expect(at(2.2e-5, 63, 5e4)?.by).toBe('type');
    expect(at(2.2e-5, 63, 2e4)).toBeUndefined();
  });
});

describe('series resistance of a part of unknown class', () => {
  const union = 'film-unknown';
  const members = catalogue.types[union]?.union_of ?? [];
  const one = { type: union, capacitance: 1e-6, ratedVoltage: 63 };
  const rows = members.map((type, index) =>
    madeResistance({ type, esr_min: index + 1, esr_typ: index + 2, esr_max: index + 3 }),
  );

  test('spans what it can be', () => {
    const found = esrOf(sized({ seriesResistance: rows }), one);
    expect(found?.by).toBe('value');
    expect(found?.range).toMatchObject({ min: 1, max: members.length + 2 });
  });

  test('rests on the type where one of them is not tabulated', () => {
    expect(esrOf(sized({ seriesResistance: rows.slice(1) }), one)?.by).toBe('type');
  });

  test('is not known where one of them is not', () => {
    const [first = ''] = members;
    const bare = knowing(sized({ seriesResistance: rows.slice(1) }), first, {
      'esr-100khz': notKnown,
    });
    expect(esrOf(bare, one)).toBeUndefined();
  });
});

test('tabulated resistance never leaves the two rows beside the value', () => {
  const rows = catalogue.seriesResistance;
  fc.assert(
    fc.property(
      fc.constantFrom(...rows),
      fc.double({ min: 0.2, max: 5, noNaN: true }),
      ({ type, v_min: ratedVoltage, frequency_hz: frequency, capacitance: near }, times) => {
        const capacitance = near * times;
        const found = esrOf(catalogue, { type, capacitance, ratedVoltage }, frequency);
        if (found?.by !== 'value') return;
        const own = rows
          .filter(
            (row) =>
              row.type === type && row.v_min === ratedVoltage && row.frequency_hz === frequency,
          )
          .toSorted((a, b) => a.capacitance - b.capacitance);
        const upper = own.find((row) => row.capacitance >= capacitance * 0.9999);
        const lower = own.findLast((row) => row.capacitance <= capacitance * 1.0001);
        if (upper === undefined || lower === undefined) {
          // Rows for a frequency near it may reach further; beyond those nothing is read.
          const others = rows.filter(
            (row) =>
              row.type === type &&
              row.frequency_hz !== frequency &&
              row.v_min <= ratedVoltage &&
              row.v_max >= ratedVoltage,
          );
          const values = others.map((row) => row.capacitance);
          expect(Math.min(...values)).toBeLessThanOrEqual(capacitance * 1.0001);
          expect(Math.max(...values)).toBeGreaterThanOrEqual(capacitance * 0.9999);
          return;
        }
        const typical = [upper.esr_typ, lower.esr_typ];
        const most = [upper.esr_max, lower.esr_max];
        expect(found.range.typ).toBeGreaterThanOrEqual(Math.min(...typical) * (1 - 1e-9));
        expect(found.range.typ).toBeLessThanOrEqual(Math.max(...typical) * (1 + 1e-9));
        expect(found.range.max).toBeGreaterThanOrEqual(Math.min(...most) * (1 - 1e-9));
        expect(found.range.max).toBeLessThanOrEqual(Math.max(...most) * (1 + 1e-9));
        expect(found.range.min).toBeLessThanOrEqual(found.range.typ);
        expect(found.range.typ).toBeLessThanOrEqual(found.range.max);
      },
    ),
    { numRuns: 500 },
  );
});

describe('the tables', () => {
  const rows = catalogue.seriesResistance;
  const types = [...new Set(rows.map(({ type }) => type))];

  // The loss in the dielectric makes a resistance that falls with the frequency; leads and foils stay.
  // What sheets of two makers say lies up to a half apart.
  test.each(types)('let the usual resistance of %s not rise with the frequency', (type) => {
    const own = rows.filter((row) => row.type === type);
    const hertz = [...new Set(own.map((row) => row.frequency_hz))].toSorted((a, b) => a - b);
    const volts = new Set(own.flatMap((row) => [row.v_min, row.v_max]));
    const farads = new Set(own.map((row) => row.capacitance));
    const rising: unknown[] = [];
    for (const ratedVoltage of volts)
      for (const capacitance of farads) {
        const told = hertz.flatMap((at) => {
          const found = esrOf(catalogue, { type, capacitance, ratedVoltage }, at);
          return found?.by === 'value' ? [{ at, ohm: found.range.typ }] : [];
        });
        for (const [index, { at, ohm }] of told.entries())
          for (const lower of told.slice(0, index))
            if (ohm > lower.ohm * 1.5) rising.push({ ratedVoltage, capacitance, at, ohm, lower });
      }
    expect(rising).toEqual([]);
  });
});
