import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { lookKey, type LookResult } from '../../src/engine/index.ts';
import { readLook } from '../../src/look/address.ts';

/** Parts that documents describe, and what they turned out to be. */
const row = z.strictObject({
  id: z.string().min(1),
  asks: z.enum(['style', 'kind', 'family', 'sign', 'window', 'drift']),
  query: z.string().min(1),
  expected: z.string().min(1),
  source: z.string().min(1),
  locator: z.string(),
  note: z.string(),
});
const records: unknown = parse(readFileSync('tests/published/look.csv', 'utf8'), { columns: true });
const cases = z.array(row).parse(records);
const asking = (asks: z.output<typeof row>['asks']) => cases.filter((one) => one.asks === asks);

const catalogue = loadCatalogue();

const resultOf = (query: string): LookResult => {
  const { answers, rejected } = readLook(catalogue, new URLSearchParams(query));
  expect(rejected).toEqual({});
  return lookKey(catalogue, answers);
};

describe('parts are named as their documents name them', () => {
  test.each(asking('style'))('$id: $note ($source)', ({ query, expected }) => {
    const [first, second] = resultOf(query).styles;
    expect(first?.id).toBe(expected);
    expect(first?.likelihood).toBeGreaterThan(1.5 * (second?.likelihood ?? 1));
  });

  test.each(asking('kind'))('$id: $note ($source)', ({ query, expected }) => {
    expect(resultOf(query).kinds[0]?.id).toBe(expected);
  });

  test.each(asking('family'))('$id: $expected, $note ($source)', ({ query, expected }) => {
    const { kinds } = resultOf(query);
    const share = (family: string | undefined): number =>
      kinds
        .filter(({ id }) => {
          const type = catalogue.look.kinds.find((kind) => kind.id === id)?.type;
          return type !== undefined && catalogue.types[type]?.family === family;
        })
        .reduce((sum, { likelihood }) => sum + likelihood, 0);
    const [more, less] = expected.split(' over ');
    expect(share(more)).toBeGreaterThan(2 * share(less));
  });
});

test.each(asking('sign'))('$id: $query is $expected', ({ query, expected }) => {
  expect(resultOf(query).sign?.sign?.id).toBe(expected);
});

const CAPACITANCE_RATIO_BETWEEN = 1000 / 120;

describe('ranges of the data follow from what they are worked out from', () => {
  test.each(asking('window'))('$id: a loss of $query % gives $expected', ({ query, expected }) => {
    const ratio = 1 + (2 / Math.PI) * Math.log(CAPACITANCE_RATIO_BETWEEN) * (Number(query) / 100);
    expect(ratio).toBeCloseTo(Number(expected), 3);
  });

  // The rows whose note names the loss that they follow from.
  const derived = catalogue.look.ranges.flatMap((range) => {
    const found = /for a constant D of ([\d.]+) to ([\d.]+) %/.exec(range.note);
    return found === null ? [] : [{ ...range, least: Number(found[1]), most: Number(found[2]) }];
  });

  test('some do', () => {
    expect(derived.length).toBeGreaterThan(10);
  });

  test.each(derived)('$kind: C at 120 Hz over C at 1 kHz', ({ low, high, least, most }) => {
    const ratio = (percent: number): number =>
      1 + (2 / Math.PI) * Math.log(CAPACITANCE_RATIO_BETWEEN) * (percent / 100);
    // Rows are rounded to four places.
    expect(low).toBeCloseTo(ratio(least), 3);
    expect(high).toBeCloseTo(ratio(most), 3);
  });

  test.each(asking('drift'))('$id: $query ppm/K over 20 K', ({ query, expected }) => {
    const percent = Number(query) * 1e-6 * 20 * 100;
    expect(percent).toBeCloseTo(Number(expected), 3);
    const narrow = catalogue.look.ranges.find(
      ({ kind, question, conditions }) =>
        kind === 'ceramic-c0g' && question === 'warm-c' && conditions === '',
    );
    expect(narrow?.high).toBe(percent);
    expect(narrow?.low).toBe(-percent);
  });

  const warmed = catalogue.look.ranges.flatMap((range) => {
    const found = /^(-?\d+) to (-?\d+) ppm\/K times 20 K/.exec(range.note);
    return found === null ? [] : [{ ...range, least: Number(found[1]), most: Number(found[2]) }];
  });

  test.each(warmed)('$kind $conditions: $note', ({ low, high, least, most }) => {
    expect(low).toBeCloseTo((least * 20) / 1e4, 6);
    expect(high).toBeCloseTo((most * 20) / 1e4, 6);
  });
});
