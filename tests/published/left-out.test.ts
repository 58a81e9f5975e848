import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { z } from 'zod';

/**
 * Published answers about ratings, circuits, life, sizes, dielectrics, fitting and first judgement
 * that were looked at and are no case, each with the reason. What can be a case is one, in the tables beside this.
 */
const row = z.strictObject({
  what: z.string().min(1),
  answer: z.string().min(1),
  source: z.string().min(1),
  why: z.string().min(1),
});

const leftOut = z
  .array(row)
  .parse(parse(readFileSync('tests/published/left-out.csv', 'utf8'), { columns: true }));

/** Cases that reasons name, such as `f4 to f9`, by the table that has them. */
const idsOf = (file: string): Set<string> => {
  const records = parse(readFileSync(`tests/published/${file}`, 'utf8'), { columns: true });
  return new Set(
    z
      .array(z.object({ id: z.string() }))
      .parse(records)
      .map(({ id }) => id),
  );
};

const cases = new Set(
  ['bench-sums.csv', 'rules.csv', 'sizes.csv'].flatMap((file) => [...idsOf(file)]),
);

test.each(leftOut)('$what is no case: $why', ({ why }) => {
  expect(why).toMatch(/^\S.{12}/u);
  expect(why).not.toMatch(/above|todo|later/iu);
  for (const [, id = ''] of why.matchAll(/\b(?<id>[a-z]\d{1,2})\b/gu)) expect(cases).toContain(id);
});

test('each is left out once, and there are no more of them than before', () => {
  const whats = leftOut.map(({ what }) => what);
  expect(new Set(whats).size).toBe(whats.length);
  expect(leftOut.length).toBeLessThanOrEqual(108);
});
