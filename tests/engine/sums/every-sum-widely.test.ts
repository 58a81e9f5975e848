import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { optionsOf, readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { headlineOf, resultOf } from '../../../src/engine/sums/run-sum.ts';
import { isRange, spanOf } from '../../../src/engine/sums/span.ts';
import type { Sum } from '../../../src/engine/sums/sum.ts';

const catalogue = loadCatalogue();
const factsOf = (sum: Sum): unknown => {
  const facts: unknown = sum.facts?.(catalogue);
  // As a browser gets them.
  return facts === undefined ? undefined : JSON.parse(JSON.stringify(facts));
};
const usual = (sum: Sum) => readInputs(sum, factsOf(sum), {}).given;

describe.each(allSums.map((sum) => [sum.id, sum] as const))('%s', (_, sum) => {
  test('works with what stands in its fields at first', () => {
    const facts = factsOf(sum);
    const result = resultOf(sum, usual(sum), facts);
    expect(result.outputs[headlineOf(sum)]).toBeDefined();
    expect(result.plots.length).toBeGreaterThanOrEqual(sum.plots.length);
    expect(result.plots.length, 'every sum is drawn').toBeGreaterThan(0);
    for (const input of Object.values(sum.inputs)) {
      if (input.kind !== 'choice') continue;
      expect(optionsOf(input, facts).map(({ id }) => id)).toContain(input.usual);
    }
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  test('keeps its ends in order over ranges of every input, and says nothing that is no number', () => {
    const facts = factsOf(sum);
    const wide = Object.fromEntries(
      Object.entries(usual(sum)).map(([key, value]) => {
        const input = sum.inputs[key];
        if (!isRange(value) || input?.kind !== 'quantity') return [key, value];
        const by = Math.abs(value.typ) * 0.05;
        return [
          key,
          {
            min: Math.max(input.lowest, value.typ - by),
            typ: value.typ,
            max: Math.min(input.highest, value.typ + by),
          },
        ];
      }),
    );
    for (const [key, { min, typ, max }] of Object.entries(spanOf(sum, wide, facts))) {
      expect([min, typ, max].every(Number.isFinite), key).toBe(true);
      expect(min <= typ && typ <= max, key).toBe(true);
    }
  });

  test.each(['lowest', 'highest'] as const)('stands the %s value of every field', (end) => {
    const facts = factsOf(sum);
    const given = Object.fromEntries(
      Object.entries(usual(sum)).map(([key, value]) => {
        const input = sum.inputs[key];
        if (!isRange(value) || input?.kind !== 'quantity') return [key, value];
        return [key, { min: input[end], typ: input[end], max: input[end] }];
      }),
    );
    expect(() => resultOf(sum, given, facts)).not.toThrow();
  });
});
