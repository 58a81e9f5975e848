import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Range } from '../../src/engine/quantities/range.ts';

/** What a case is given: names and numbers or words. */
export class Given {
  readonly #cells: ReadonlyMap<string, string>;

  constructor(cell: string) {
    this.#cells = new Map(
      cell.split(';').map((item) => {
        const at = item.indexOf('=');
        return [item.slice(0, at), item.slice(at + 1)] as const;
      }),
    );
  }

  /** A word. @throws where the case does not give it */
  word(name: string): string {
    const found = this.#cells.get(name);
    if (found === undefined) throw new Error(`the case gives no ${name}`);
    return found;
  }

  /** A number in SI units. @throws where the case does not give it */
  number(name: string): number {
    const value = Number(this.word(name));
    if (!Number.isFinite(value)) throw new Error(`${name} is not a number`);
    return value;
  }

  /** Everything that is given, as it is written. */
  all(): Record<string, string> {
    return Object.fromEntries(this.#cells);
  }

  has(name: string): boolean {
    return this.#cells.has(name);
  }
}

const row = z.strictObject({
  id: z.string().min(1),
  kind: z.string().min(1),
  given: z
    .string()
    .min(1)
    .transform((cell) => new Given(cell)),
  expected: z.string().min(1),
  tolerance: z.coerce.number().nonnegative(),
  source: z.string().min(1),
});

/** One answer that a document prints, or that follows from what it prints. */
export type GivenCase = z.output<typeof row>;

/** The cases of a CSV beside the tests. */
export const readCases = (file: string): GivenCase[] => {
  const records: unknown = parse(readFileSync(file, 'utf8'), { columns: true });
  return z.array(row).parse(records);
};

/** Rows for a table of tests. */
export const named = (cases: readonly GivenCase[]): (readonly [string, string, GivenCase])[] =>
  cases.map((one) => [one.id, one.source, one] as const);

/**
 * That an answer is the one expected: a word; a number within a relative tolerance; or a range that
 * holds the number expected.
 */
export const expectGiven = (
  got: number | string | Range,
  { expected, tolerance }: GivenCase,
): void => {
  if (typeof got === 'string') {
    expect(got).toBe(expected);
  } else if (typeof got === 'number') {
    expect(Math.abs(got / Number(expected) - 1)).toBeLessThanOrEqual(tolerance + 1e-9);
  } else {
    expect(got.min).toBeLessThanOrEqual(Number(expected));
    expect(got.max).toBeGreaterThanOrEqual(Number(expected));
  }
};

/** What the code answers to cases, by their kind. */
export type Answers = Readonly<Record<string, (one: Given) => number | string | Range>>;

/** Holds answers to the cases of a table, of which there are so many at least. */
export const describeAnswers = (
  title: string,
  cases: readonly GivenCase[],
  answers: Answers,
  least: number,
): void => {
  describe(title, () => {
    test.each(named(cases))('%s, %s', (_id, _source, one) => {
      const answer = answers[one.kind];
      if (answer === undefined) throw new Error(`no answer for ${one.kind}`);
      expectGiven(answer(one.given), one);
    });

    test('there are enough of them, and none twice', () => {
      expect(cases.length).toBeGreaterThanOrEqual(least);
      expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
    });

    test('each fails with an answer that is a tenth off', () => {
      for (const one of cases) {
        const answer = answers[one.kind]?.(one.given);
        if (typeof answer !== 'number') continue;
        expect(() => expectGiven(answer * 1.1, one), one.id).toThrow();
      }
    });
  });
};
