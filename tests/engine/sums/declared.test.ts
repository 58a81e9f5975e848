import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { parseQuantity } from '../../../src/engine/quantities/index.ts';
import { UNITS } from '../../../src/engine/quantities/unit-facts.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { optionsOf, readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { headlineOf } from '../../../src/engine/sums/run-sum.ts';
import { isRange, spanOf, typicalOf } from '../../../src/engine/sums/span.ts';
import {
  sumGroups,
  type Input,
  type QuantityInput,
  type Sum,
} from '../../../src/engine/sums/sum.ts';

/** What every sum has to say of itself, so that its page can be made. */

const catalogue = loadCatalogue();
const factsOf = (sum: Sum): unknown => sum.facts?.(catalogue);
const quantities = (sum: Sum): [string, QuantityInput][] =>
  Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'quantity' ? [[key, input] as [string, QuantityInput]] : [],
  );

/** Words, not none and not one that is only space. */
const WORDS = /\S/;
const SENTENCE = /^\S.*[.]$/s;

describe.each(allSums.map((sum) => [sum.id, sum] as const))('%s', (_, sum) => {
  test('has a title, a sentence about it, and stands under a heading', () => {
    expect(sum.title).toMatch(WORDS);
    expect(sum.lead).toMatch(SENTENCE);
    expect(Object.keys(sumGroups)).toContain(sum.group);
    expect(sum.sources).not.toEqual([]);
    expect(sum.equations.length > 0 || sum.equationsFor !== undefined).toBe(true);
    expect(sum.equations.every((equation) => WORDS.test(equation))).toBe(true);
  });

  test('has an answer, and outputs with a name and a unit', () => {
    expect(sum.outputs).toHaveProperty([headlineOf(sum)]);
    for (const [key, { label, unit }] of Object.entries(sum.outputs)) {
      expect(label, key).toMatch(WORDS);
      expect(UNITS, key).toContain(unit);
    }
    const { given } = readInputs(sum, factsOf(sum), {});
    const worked = Object.keys(sum.at(typicalOf(given), factsOf(sum)));
    expect(worked.toSorted()).toEqual(Object.keys(sum.outputs).toSorted());
  });

  test('has fields with a name, and an option with a name for every choice', () => {
    for (const [key, input] of Object.entries(sum.inputs)) {
      expect(input.label, key).toMatch(WORDS);
      if (input.hint !== undefined) expect(input.hint, key).toMatch(WORDS);
      if (input.kind === 'quantity') continue;
      const options = optionsOf(input, factsOf(sum));
      expect(
        options.map(({ id }) => id),
        key,
      ).toContain(input.usual);
      for (const { id, name } of options)
        expect([id, name].every((one) => WORDS.test(one))).toBe(true);
    }
  });

  test('starts with a number in every field that may not be empty, within its ends', () => {
    for (const [key, { unit, bare, usual, optional, lowest, highest }] of quantities(sum)) {
      expect(lowest < highest, key).toBe(true);
      expect(usual === '', key).toBe(optional);
      if (optional) continue;
      const read = parseQuantity(usual, unit, bare);
      if (!read.ok) throw new Error(`${key}: ${read.fault.message}`);
      expect(read.value.min >= lowest && read.value.max <= highest, key).toBe(true);
    }
  });

  test('is drawn over one of its fields, along an axis of some length', () => {
    expect(sum.plots.length + (sum.pictures === undefined ? 0 : 1)).toBeGreaterThan(0);
    const values = typicalOf(readInputs(sum, factsOf(sum), {}).given);
    for (const { title, x, scale, y, yScale, span, limits } of sum.plots) {
      expect(title).toMatch(WORDS);
      expect(quantities(sum).map(([key]) => key)).toContain(x);
      expect(['log', 'linear']).toContain(scale);
      expect(['log', 'linear']).toContain(yScale);
      expect(y).not.toEqual([]);
      const units = y.map((key) => sum.outputs[key]?.unit);
      expect(new Set(units).size, 'outputs of one unit').toBe(1);
      expect(units).not.toContain(undefined);
      if (span !== undefined) {
        const [from, to] = span(values, factsOf(sum));
        expect(from).toBeLessThan(to);
        if (scale === 'log') expect(from).toBeGreaterThan(0);
      }
      for (const { label, value } of limits?.(values, factsOf(sum)) ?? []) {
        expect(label).toMatch(WORDS);
        expect(Number.isNaN(value)).toBe(false);
      }
    }
  });

  test('has checks that hold numbers of its own, from somewhere', () => {
    for (const { what, inputs, expected, within, source, locator } of sum.checks) {
      expect([what, source, locator ?? 'none'].every((one) => WORDS.test(one))).toBe(true);
      expect(Object.keys(expected)).not.toEqual([]);
      expect(Object.keys(sum.outputs)).toEqual(expect.arrayContaining(Object.keys(expected)));
      expect(Object.keys(sum.inputs)).toEqual(expect.arrayContaining(Object.keys(inputs)));
      expect(within).toBeLessThan(0.1);
    }
  });
});

/** Fields that take a number without a unit for one in a unit of their own. */
const bareFields = allSums.flatMap((sum) =>
  quantities(sum).flatMap(([key, { unit, bare }]) =>
    bare === undefined ? [] : [[sum.id, key, unit, bare] as const],
  ),
);

test.each(bareFields)('%s takes a number without a unit for %s', (_sum, _key, unit, bare) => {
  expect(bare).toMatch(WORDS);
  expect(parseQuantity('1', unit, bare)).toEqual(parseQuantity(`1 ${bare}`, unit));
});

/** Every choice of a sum, one at a time, the other fields as they stand at first. */
const chosen = allSums.flatMap((sum) =>
  Object.entries(sum.inputs)
    .filter((entry): entry is [string, Exclude<Input, QuantityInput>] => entry[1].kind === 'choice')
    .flatMap(([key, input]) =>
      optionsOf(input, factsOf(sum)).map(({ id }) => [sum.id, key, id, sum] as const),
    ),
);

test.each(chosen)('%s answers for %s: %s, or says why not', (_id, key, option, sum) => {
  const facts = factsOf(sum);
  const { given, faults } = readInputs(sum, facts, { [key]: option });
  expect(faults).toEqual({});
  expect(given[key]).toBe(option);
  const values = typicalOf(given);
  const answer = spanOf(sum, given, facts)[headlineOf(sum)];
  const notes = sum.notes?.(values, sum.at(values, facts), facts) ?? [];
  expect(isRange(answer) || notes.some(({ kind }) => kind === 'limit')).toBe(true);
  expect(sum.equationsFor?.(values) ?? ['x']).not.toEqual([]);
});
