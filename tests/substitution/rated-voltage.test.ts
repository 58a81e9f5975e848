import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assess, resolveSituation } from '../../src/engine/index.ts';
import { fieldsFor, readAddress } from '../../src/substitution/address.ts';
import { readRated, writeRated } from '../../src/substitution/rated-voltage.ts';

const catalogue = loadCatalogue();

/** An old part for 250 V, of which the mark says what is put in. */
const asked = (v: string, type = 'pet-film-foil') =>
  readAddress(catalogue, type, 'interstage-coupling', new URLSearchParams({ c: '100n', v }));

const rating = (v: string, type?: string) => {
  const field = fieldsFor(catalogue, asked(v, type)).find(({ key }) => key === 'v');
  return field && [field.label, field.text.replaceAll('\u00A0', ' ')];
};

describe('a rating for alternating voltage', () => {
  test.each<[string, number, 'ac' | undefined]>([
    ['250 V', 250, undefined],
    ['250 V~', 250, 'ac'],
    ['275 VAC', 275, 'ac'],
    ['2 kV AC', 2000, 'ac'],
  ])('is told from the other by its sign: %s', (text, volts, kind) => {
    const read = readRated(text);
    if ('message' in read) throw new Error(read.message);
    expect([read.value.volts.typ, read.value.kind]).toEqual([volts, kind]);
    expect(readRated(writeRated(read.value))).toEqual(read);
  });

  test('is refused as any other where it is none', () => {
    expect(readRated('some V~')).toHaveProperty('message');
    expect(readRated('0 V~')).toHaveProperty('message');
  });

  test.each([
    ['250 V', undefined, ['Rated voltage', '250 V']],
    ['250 V~', undefined, ['Rated voltage, AC', '250 V AC']],
    // What is approved for the mains is rated in AC, whether its mark says so or not.
    ['275 V', 'film-x2', ['Rated voltage, AC', '275 V']],
    ['275 V~', 'film-x2', ['Rated voltage, AC', '275 V']],
  ])('stays one in its field: %s', (text, type, field) => {
    expect(rating(text, type)).toEqual(field);
  });

  // By conditions.csv half the old rating stands across it and nine tenths at switch-on; the peak of
  // 250 V is 353.6 V.
  test.each([
    ['250 V', 125, 225],
    ['250 V~', 176.78, 318.2],
  ])('bears its peak, so the circuit is taken to have that: %s', (text, steady, surge) => {
    const { conditions } = resolveSituation(catalogue, asked(text, 'paper-wax').request);
    const found = (id: string) => conditions.find((one) => one.id === id)?.range.typ;
    expect(found('vdc')).toBeCloseTo(steady, 2);
    expect(found('v-surge')).toBeCloseTo(surge, 2);
  });

  test('counts with its peak where the old part is judged', () => {
    const { request } = asked('250 V~', 'paper-wax');
    const old = { type: 'paper-wax', capacitance: 1e-7, ratedVoltage: 250, voltageKind: 'ac' };
    const finding = assess(catalogue, request, { ...old, voltageKind: 'ac' }).findings.find(
      (one) => one.finding === 'rated-voltage',
    );
    expect(finding?.original).toEqual(finding?.standIn);
    expect(finding?.working).toContain('√2');
  });
});
