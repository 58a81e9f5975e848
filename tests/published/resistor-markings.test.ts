import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { readMarking } from '../../src/engine/markings/read-marking.ts';
import { catalogue, markings } from '../engine/markings/tables.ts';

/** Marks of resistors and trimmers that outside sources print with their meaning. */
const row = z.strictObject({
  id: z.string(),
  kind: z.enum(['digit-code', 'rkm-code', 'eia96', 'eia96-index', 'tolerance-letter', 'trimmer']),
  input: z.string(),
  expected: z.coerce.number(),
  unit: z.string(),
  source: z.string().min(1),
  locator: z.string(),
  note: z.string(),
});
type Case = z.output<typeof row>;

const records: unknown = parse(readFileSync('tests/published/resistor-markings.csv', 'utf8'), {
  columns: true,
});
const cases = z.array(row).parse(records);

const after = (input: string, key: string): string =>
  new RegExp(`${key}=([^;]+)`).exec(input)?.[1] ?? '';

/** The best reading, where it is known that the part is a resistor; the codes of chips stand on nothing else. */
const best = (marking: string, kind?: Case['kind']) =>
  readMarking(
    catalogue,
    marking,
    kind === 'eia96' ? { body: 'resistor-chip' } : { kind: 'resistor' },
  )[0];

const checkValue = ({ input, expected, kind }: Case): void => {
  const reading = best(after(input, 'marking'), kind);
  expect(reading?.kind).toBe('resistor');
  expect(reading?.resistance?.typ).toBeCloseTo(expected, 9);
  expect(reading?.notUnderstood).toEqual([]);
};

const checkOf: Record<Case['kind'], (each: Case) => void> = {
  'digit-code': checkValue,
  'rkm-code': checkValue,
  trimmer: checkValue,
  eia96: (each) => {
    checkValue(each);
    expect(best(after(each.input, 'marking'), each.kind)?.tolerance?.plus).toBe(0.01);
  },
  'eia96-index': ({ input, expected }) => {
    const code = after(input, 'code');
    expect(markings.eia96Codes.find((each) => each.code === code)?.significand).toBe(expected);
    expect(best(`${code}A`)?.resistance?.min).toBeCloseTo(expected * 0.99, 9);
  },
  'tolerance-letter': ({ input, expected }) => {
    const reading = best(`4R7${after(input, 'letter')}`);
    expect(reading?.tolerance?.plus).toBeCloseTo(expected / 100, 9);
    expect(reading?.resistance?.typ).toBe(4.7);
  },
};

describe('markings of resistors that outside sources print with their meaning', () => {
  test('there are as many as were copied', () => {
    expect(cases).toHaveLength(28);
  });

  test.each(cases)('$id $kind: $input ($source)', (each) => {
    checkOf[each.kind](each);
  });
});

describe('the codes of small chips against the series that they number', () => {
  const e96 = catalogue.series.filter((each) => each.series === 'E96');

  test('there is one for each value of E96', () => {
    expect(markings.eia96Codes).toHaveLength(e96.length);
  });

  test.each(markings.eia96Codes)('$code is the value in that place', ({ code, significand }) => {
    const value = e96.find((each) => each.position === Number(code))?.value;
    expect((value ?? NaN) * 100).toBeCloseTo(significand, 9);
  });

  test('the codes of two and five per cent are E24, those of ten per cent E12', () => {
    const of = (series: string) =>
      catalogue.series
        .filter((each) => each.series === series)
        .map((each) => Math.round(each.value * 100));
    const coded = (percent: number) =>
      markings.letterFirstCodes
        .filter((each) => each.tolerance_percent === percent)
        .map((each) => each.significand);
    expect(coded(2)).toEqual(of('E24'));
    expect(coded(5)).toEqual(of('E24'));
    expect(coded(10)).toEqual(of('E12'));
  });
});
