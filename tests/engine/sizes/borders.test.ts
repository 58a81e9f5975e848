import { describe, expect, test } from 'vitest';
import { esrOf } from '../../../src/engine/sizes/esr-of.ts';
import { frequencyFactor, temperatureFactor } from '../../../src/engine/sizes/ripple-factors.ts';
import { listedRipple } from '../../../src/engine/sizes/ripple-of.ts';
import { catalogue, knowing, known, notKnown } from '../assessment/setting.ts';
import { madeResistance, sized } from './setting.ts';

// Where bands of voltage and value begin and end, and where what is read comes from. Rows are in no
// order, as tables may be.

const from = (source: string, basis: 'published' | 'memory') => ({
  ...{ source, basis, locator: '', note: '' },
});

/** Made anew for each question, as it is sorted once for each table. */
const table = () =>
  sized({
    seriesResistance: [
      madeResistance({ capacitance: 3e-6, esr_typ: 2, ripple_a: 0.3, ...from('mid', 'memory') }),
      madeResistance({ capacitance: 1e-5, esr_typ: 1, ripple_a: 1, ...from('top', 'published') }),
      madeResistance({ capacitance: 1e-6, esr_typ: 4, ripple_a: 0.1, ...from('low', 'published') }),
      madeResistance({ capacitance: 1e-6, esr_typ: 9, v_min: 160, v_max: 250 }),
      madeResistance({
        capacitance: 1e-6,
        esr_typ: 90,
        frequency_hz: 120,
        ...from('hz', 'memory'),
      }),
    ].map((row) => ({
      ...row,
      ...{ esr_min: undefined, esr_max: row.esr_typ },
      ripple_c: row.ripple_a === undefined ? undefined : 105,
    })),
    rippleByFrequency: [
      { ...{ frequency_hz: 1e5, factor: 1 }, ...from('fast', 'published') },
      { ...{ frequency_hz: 120, factor: 0.5 }, ...from('slow', 'memory') },
    ].map((row) => ({ ...row, type: 'glass', v_min: 50, v_max: 100, c_min: 1e-6, c_max: 1e-4 })),
    rippleByTemperature: [
      { type: 'glass', temperature_c: 105, factor: 1, ...from('hot', 'published') },
      { type: 'glass', temperature_c: 65, factor: 2, ...from('cool', 'memory') },
    ],
  });

const part = (capacitance: number, ratedVoltage = 63, type = 'glass') => ({
  ...{ type, capacitance, ratedVoltage },
});

/** What is known where a part lies in a band: by its voltage, then by its value. */
const BORDERS: [what: string, farads: number, volts: number, inside: boolean][] = [
  ['the lowest voltage', 3e-6, 50, true],
  ['below the lowest voltage', 3e-6, 49, false],
  ['the highest voltage', 3e-6, 100, true],
  ['above the highest voltage', 3e-6, 101, false],
  ['between two bands', 3e-6, 130, false],
  ['the smallest value', 1e-6, 63, true],
  ['below the smallest value', 0.99e-6, 63, false],
  ['the largest value', 1e-5, 63, true],
  ['above the largest value', 1.01e-5, 63, false],
];

describe('series resistance is read by value', () => {
  test.each(BORDERS)('%s', (_what, farads, volts, inside) => {
    expect(
      esrOf(knowing(table(), 'glass', { 'esr-100khz': notKnown }), part(farads, volts))?.by,
    ).toBe(inside ? 'value' : undefined);
  });

  test.each<[farads: number, ohm: number, sources: string[]]>([
    [1e-6, 4, ['low']],
    [3e-6, 2, ['mid']],
    // Halfway in decades, by the geometric mean.
    [Math.sqrt(3) * 1e-6, Math.sqrt(8), ['low', 'mid']],
    [Math.sqrt(30) * 1e-6, Math.sqrt(2), ['mid', 'top']],
  ])('%d F between the two rows beside it', (farads, ohm, sources) => {
    const found = esrOf(table(), part(farads));
    expect(found?.range.typ).toBeCloseTo(ohm, 9);
    expect(found?.sources).toEqual(sources);
    expect(found?.bases).toHaveLength(2);
  });

  test('in the band of the voltage', () => {
    expect(esrOf(table(), part(1e-6, 200))?.range.typ).toBe(9);
  });

  test('between two frequencies from the sources of both', () => {
    const found = esrOf(table(), part(1e-6), 1e3);
    expect(found?.sources).toEqual(['hz', 'low']);
    expect(found?.bases).toEqual(['memory', 'memory', 'published', 'published']);
  });

  test.each([
    [1e5 / 3.1, undefined],
    [1e5 / 2.9, 'type'],
    [1e5, 'type'],
    [2.9e5, 'type'],
    [3.1e5, undefined],
  ])('else, near 100 kHz, that of the type: %d Hz', (hertz, by) => {
    const whole = knowing(table(), 'glass', { 'esr-100khz': known(7) });
    const found = esrOf(whole, part(1e-4), hertz);
    expect(found?.by).toBe(by);
    expect(found?.bases.length).toBe(by === undefined ? undefined : 1);
  });

  test('of a part of unknown class from the sources of all that it can be', () => {
    const union = 'film-unknown';
    const members = catalogue.types[union]?.union_of ?? [];
    const rows = members.map((type, i) =>
      madeResistance({ ...{ type, esr_typ: i + 1, source: `of-${i}` }, esr_max: i + 1 }),
    );
    const found = esrOf(sized({ seriesResistance: rows }), part(1e-6, 63, union));
    expect(found?.by).toBe('value');
    expect(found?.range.max).toBe(members.length);
    expect(found?.sources).toEqual(members.map((_, i) => `of-${i}`));
    expect(found?.bases).toHaveLength(2 * members.length);
  });
});

describe('ripple current is listed', () => {
  test.each(BORDERS)('%s', (_what, farads, volts, inside) => {
    expect(listedRipple(table(), part(farads, volts), 1e5) !== undefined).toBe(inside);
  });

  test.each<[farads: number, ampere: number, sources: string[], bases: string[]]>([
    [3e-6, 0.3, ['mid'], ['memory', 'memory']],
    [Math.sqrt(3) * 1e-6, Math.sqrt(0.03), ['low', 'mid'], ['published', 'memory']],
    [Math.sqrt(30) * 1e-6, Math.sqrt(0.3), ['mid', 'top'], ['memory', 'published']],
  ])('%d F between the two rows beside it', (farads, ampere, sources, bases) => {
    const found = listedRipple(table(), part(farads), 1e5);
    expect(found?.current).toBeCloseTo(ampere, 9);
    expect(found).toMatchObject({ sources, bases, temperature: 105 });
  });

  test.each<[what: string, row: object]>([
    ['current', { ripple_c: 105 }],
    ['temperature', { ripple_a: 1 }],
  ])('not by a row without a %s', (_what, row) => {
    const half = sized({ seriesResistance: [madeResistance({ capacitance: 1e-6, ...row })] });
    expect(listedRipple(half, part(1e-6), 1e5)).toBeUndefined();
  });

  test('not of a type without rows', () => {
    expect(listedRipple(table(), part(1e-6, 63, 'no-such-type'), 1e5)).toBeUndefined();
  });
});

describe('the factor for frequency', () => {
  test.each([
    ['the lowest voltage', 1e-5, 50, true],
    ['below the lowest voltage', 1e-5, 49, false],
    ['the highest voltage', 1e-5, 100, true],
    ['above the highest voltage', 1e-5, 101, false],
    ['the smallest value', 1e-6, 63, true],
    ['below the smallest value', 0.99e-6, 63, false],
    // Where the next row begins.
    ['below the largest value', 0.99e-4, 63, true],
    ['the largest value', 1e-4, 63, false],
  ])('%s', (_what, farads, volts, inside) => {
    const found = frequencyFactor(table(), part(farads, volts), 1e5, 120);
    expect(found?.factor).toBe(inside ? 0.5 : undefined);
    if (inside) expect(found).toMatchObject({ sources: ['slow', 'fast'] });
    if (inside) expect(found).toMatchObject({ bases: ['memory', 'published'] });
  });

  test('is not known where one of the two frequencies lies far below the rows', () => {
    expect(frequencyFactor(table(), part(1e-5), 40, 120)).toBeUndefined();
    expect(frequencyFactor(table(), part(1e-5), 120, 40)).toBeUndefined();
  });
});

describe('the factor for temperature', () => {
  test('comes with its sources', () => {
    expect(temperatureFactor(table(), { type: 'glass' }, 105, 65)).toEqual({
      ...{ factor: 2, sources: ['cool', 'hot'], bases: ['memory', 'published'] },
    });
  });

  test('is not known where one of the two temperatures lies above the rows', () => {
    expect(temperatureFactor(table(), { type: 'glass' }, 110, 85)).toBeUndefined();
    expect(temperatureFactor(table(), { type: 'glass' }, 85, 110)).toBeUndefined();
  });

  test('is none at one temperature where no row speaks of the type', () => {
    expect(temperatureFactor(table(), { type: 'no-such-type' }, 40, 40)).toEqual({
      ...{ factor: 1, sources: [], bases: [] },
    });
  });
});
