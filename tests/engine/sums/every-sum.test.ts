import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { readEquation } from '../../../src/components/equation-tree.ts';
import { namesIn } from '../../../src/components/equation-values.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { couplingCorner } from '../../../src/engine/sums/audio/coupling-corner.ts';
import { optionsOf, readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { runSumOf } from '../../../src/engine/sums/run-sum.ts';
import { spanOf, typicalOf } from '../../../src/engine/sums/span.ts';
import type { Sum } from '../../../src/engine/sums/sum.ts';

const catalogue = loadCatalogue();
const factsOf = (sum: Sum): unknown => {
  const facts: unknown = sum.facts?.(catalogue);
  // As a browser gets them.
  return facts === undefined ? undefined : JSON.parse(JSON.stringify(facts));
};

/** Those that hold for every choice, with the optional fields left empty and with all of them filled. */
const equationsOf = (sum: Sum): string[] => {
  const facts = factsOf(sum);
  const fields = Object.entries(sum.inputs);
  const chosen = fields.flatMap(([key, input]) =>
    input.kind === 'choice' ? optionsOf(input, facts).map(({ id }) => ({ [key]: id })) : [],
  );
  const filled = Object.fromEntries(
    fields.flatMap(([key, input]) =>
      input.kind === 'quantity' && input.optional ? [[key, input.highest] as const] : [],
    ),
  );
  return [{}, ...chosen].flatMap((texts) => {
    const values = typicalOf(readInputs(sum, facts, texts).given);
    return [values, { ...values, ...filled }].flatMap((one) => sum.equationsFor?.(one) ?? []);
  });
};

const CONSTANTS = ['pi', 'k'];

test('sums have addresses of their own', () => {
  const ids = allSums.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.filter((id) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(id))).toEqual([]);
});

describe.each(allSums.map((sum) => [sum.id, sum] as const))('%s', (_, sum) => {
  const checked = sum.checks.map((check) => [check.what, check] as const);

  test('has a check', () => {
    expect(sum.checks.length).toBeGreaterThan(0);
  });

  test.each(checked)('agrees: %s', (_what, check) => {
    const facts = factsOf(sum);
    const { given, faults } = readInputs(sum, facts, check.inputs);
    expect(faults).toEqual({});
    const outputs = spanOf(sum, given, facts);
    for (const [key, value] of Object.entries(check.expected)) {
      const got = outputs[key]?.typ ?? NaN;
      expect(Math.abs(got - value), `${key}: ${got} against ${value}`).toBeLessThanOrEqual(
        check.within * Math.abs(value),
      );
    }
  });

  test('is written in equations that can be read, of names that it declares', () => {
    const declared = new Set([
      ...CONSTANTS,
      ...Object.values(sum.inputs).flatMap((input) =>
        input.kind === 'quantity' ? (input.symbol ?? []) : [],
      ),
      ...Object.values(sum.outputs).flatMap(({ symbol }) => symbol ?? []),
    ]);
    for (const equation of [...sum.equations, ...equationsOf(sum)]) {
      const tree = readEquation(equation);
      expect(tree, equation).toBeDefined();
      const unknown = tree === undefined ? [] : namesIn(tree).filter((one) => !declared.has(one));
      expect(unknown, equation).toEqual([]);
    }
  });

  test('names sources and cautions that there are', () => {
    const cited = [...sum.sources, ...sum.checks.map(({ source }) => source)];
    expect(cited.filter((id) => !Object.hasOwn(catalogue.sources, id))).toEqual([]);
    const known = catalogue.cautions.map(({ id }) => id);
    expect(sum.cautions.filter((id) => !known.includes(id))).toEqual([]);
  });
});

describe('a sum by its ranges', () => {
  test('takes ranges in SI units and fills in the rest', () => {
    const { outputs } = runSumOf(couplingCorner, catalogue, {
      c: { min: 9e-9, typ: 1e-8, max: 1.1e-8 },
      r: { min: 1e6, typ: 1e6, max: 1e6 },
    });
    expect(outputs['corner']?.typ).toBeCloseTo(15.915, 3);
    expect(outputs['corner']?.max).toBeCloseTo(17.684, 3);
    expect(outputs['corner']?.min).toBeCloseTo(14.469, 3);
  });

  test.each([{ x: { min: 1, typ: 1, max: 1 } }, { c: 'film' }])('refuses %o', (inputs) => {
    expect(() => runSumOf(couplingCorner, catalogue, inputs)).toThrow(RangeError);
  });
});
