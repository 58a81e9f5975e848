import { all, create, type FactoryFunctionMap, type Unit as MathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { Unit } from '../../src/engine/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { spanOf, typicalOf } from '../../src/engine/sums/span.ts';
import type { Sum } from '../../src/engine/sums/sum.ts';

/**
 * The equations that pages show, worked out by a general-purpose library with its own idea of
 * arithmetic and of units, against what the sums give. An equation that does not say what is
 * reckoned, or whose units do not match, fails here.
 */

const math = create(all as FactoryFunctionMap, {});
math.import({ ln: (value: number) => Math.log(value) }, {});
const catalogue = loadCatalogue();

/** Units that the library knows, by ours; the others count as plain numbers. */
const KNOWN: Partial<Record<Unit, string>> = {
  F: 'F',
  V: 'V',
  A: 'A',
  ohm: 'ohm',
  s: 's',
  Hz: 'Hz',
  H: 'H',
  W: 'W',
  J: 'J',
  C: 'C',
  'V/s': 'V/s',
};

interface Side {
  value: number;
  unit: Unit;
}

/** Typical values of all symbols of a sum. */
const symbolsOf = (sum: Sum, choices: Readonly<Record<string, string>>): Map<string, Side> => {
  const facts = sum.facts?.(catalogue);
  const { given } = readInputs(sum, facts, choices);
  const values = typicalOf(given);
  const outputs = spanOf(sum, given, facts);
  const symbols = new Map<string, Side>();
  for (const [key, input] of Object.entries(sum.inputs)) {
    const value = values[key];
    if (input.kind !== 'quantity' || input.symbol === undefined || typeof value !== 'number')
      continue;
    symbols.set(input.symbol, { value, unit: input.unit });
  }
  for (const [key, { symbol, unit }] of Object.entries(sum.outputs)) {
    const range = outputs[key];
    if (symbol !== undefined && range !== undefined)
      symbols.set(symbol, { value: range.typ, unit });
  }
  return symbols;
};

/** Parts of a text between the commas that stand in no parentheses. */
const atCommas = (text: string): string[] => {
  const parts = [''];
  let depth = 0;
  for (const character of text) {
    depth += Number(character === '(') - Number(character === ')');
    if (character === ',' && depth === 0) parts.push('');
    else parts.push((parts.pop() ?? '') + character);
  }
  return parts;
};

/** `a = b, c = d` as its equations. */
const partsOf = (equation: string): [string, string][] =>
  atCommas(equation)
    .map((one) => one.split('='))
    .filter((sides) => sides.length === 2)
    .map(([left = '', right = '']) => [left.trim(), right.trim()]);

/** Bars about a quantity as the function that the library has for them. */
const forLibrary = (text: string): string => text.replace(/\|([^|]+)\|/gu, 'abs($1)');

const BOLTZMANN = 1.380649e-23;
const DEGREES = 180 / Math.PI;

/** Numbers of one's own: every field off what stands in it at first, each by another factor. */
const ownNumbers = (sum: Sum): Record<string, string> => {
  const { given } = readInputs(sum, sum.facts?.(catalogue), {});
  return Object.fromEntries(
    Object.entries(sum.inputs).flatMap(([key, input], index) => {
      const value = given[key];
      if (input.kind !== 'quantity' || typeof value !== 'object') return [];
      const moved = value.typ * (1.17 + 0.03 * index);
      return [[key, `${Math.min(Math.max(moved, input.lowest), input.highest)}e0`]];
    }),
  );
};

/** A number in every field that may stay empty, well within its ends. */
const allFilled = (sum: Sum): Record<string, string> =>
  Object.fromEntries(
    Object.entries(sum.inputs).flatMap(([key, input]) => {
      if (input.kind !== 'quantity' || !input.optional) return [];
      const { lowest, highest } = input;
      const middle = lowest > 0 ? Math.sqrt(lowest * highest) : (lowest + highest) / 2;
      return [[key, `${middle}e0`]];
    }),
  );

/** Each field at either of its ends: what is cut off there has to be in the equation. */
const atEnds = (sum: Sum): Record<string, string>[] =>
  Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'quantity'
      ? [input.lowest, input.highest].map((end) => ({ [key]: `${end}e0` }))
      : [],
  );

/**
 * The usual choices and numbers, other numbers, a number in every field, each field at its ends, and each
 * other choice where equations depend on it.
 */
const choicesOf = (sum: Sum): Record<string, string>[] => [
  {},
  ownNumbers(sum),
  allFilled(sum),
  ...atEnds(sum),
  ...Object.entries(sum.equationsFor === undefined ? {} : sum.inputs).flatMap(([key, input]) =>
    input.kind === 'choice' && typeof input.options !== 'function'
      ? input.options.map(({ id }) => ({ [key]: id }))
      : [],
  ),
];

const equationsOf = (sum: Sum, choices: Readonly<Record<string, string>>): readonly string[] => {
  const { given } = readInputs(sum, sum.facts?.(catalogue), choices);
  return sum.equationsFor?.(typicalOf(given)) ?? sum.equations;
};

const shown = allSums.flatMap((sum) =>
  choicesOf(sum).flatMap((choices) =>
    equationsOf(sum, choices)
      .flatMap(partsOf)
      .map(([left, right]) => ({ id: sum.id, sum, choices, left, right })),
  ),
);

/** Symbols of fields that may stay empty. */
const mayBeEmpty = (sum: Sum): string[] =>
  Object.values(sum.inputs).flatMap((input) =>
    input.kind === 'quantity' && input.optional ? (input.symbol ?? []) : [],
  );

/** Equations with a number for what they say; what rests on a field that is left empty has none. */
const cases = shown.filter(({ sum, choices, left, right }) => {
  const symbols = symbolsOf(sum, choices);
  const names: readonly string[] = right.match(/[a-zA-Z]\w*/gu) ?? [];
  const isLeftOut = (name: string): boolean => names.includes(name) && !symbols.has(name);
  return symbols.has(left) && !mayBeEmpty(sum).some(isLeftOut);
});

/** Angles come out of the library in radians. */
const inOwnUnit = (value: number, unit: Unit): number => (unit === 'deg' ? value * DEGREES : value);

describe('equations of bench sums', () => {
  test('there are many', () => {
    expect(cases.length).toBeGreaterThan(80);
  });

  test('each that a page shows is worked out with some numbers', () => {
    const keyOf = ({ id, left, right }: (typeof shown)[number]) => `${id}: ${left} = ${right}`;
    expect(new Set(cases.map(keyOf))).toEqual(new Set(shown.map(keyOf)));
  });

  test.each(cases)('$id: $left = $right', ({ sum, choices, left, right }) => {
    const symbols = symbolsOf(sum, choices);
    const own = symbols.get(left);
    if (own === undefined) throw new Error(`nothing is known of ${left}`);
    const scope = Object.fromEntries([...symbols].map(([name, { value }]) => [name, value]));
    const value: unknown = math.evaluate(forLibrary(right), { k: BOLTZMANN, ...scope });
    expect(typeof value).toBe('number');
    const got = inOwnUnit(Number(value), own.unit);
    expect(Math.abs(got - own.value), `${got} against ${own.value}`).toBeLessThanOrEqual(
      1e-9 + 1e-6 * Math.abs(own.value),
    );
  });
});

/** Equations in which every quantity has a unit that the library knows, or none. */
const withUnits = cases.filter(({ sum, choices, left, right }) => {
  const symbols = symbolsOf(sum, choices);
  const used = [left, ...(right.match(/[a-zA-Z]\w*/gu) ?? [])];
  const transcendental = /ln|log10|exp|atan|max\(0|\|/u.test(right);
  return (
    !transcendental &&
    symbols.has(left) &&
    used.every((name) => {
      const symbol = symbols.get(name);
      return (
        symbol === undefined ||
        symbol.unit in KNOWN ||
        ['fraction', 'number', 'ratio'].includes(symbol.unit)
      );
    })
  );
});

describe('units of bench sums', () => {
  test('are checked in many', () => {
    expect(withUnits.length).toBeGreaterThan(50);
  });

  test.each(withUnits)('$id: $left = $right', ({ sum, choices, left, right }) => {
    const symbols = symbolsOf(sum, choices);
    const withUnit = ({ value, unit }: Side): number | MathUnit => {
      const known = KNOWN[unit];
      return known === undefined ? value : math.unit(value, known);
    };
    const scope = Object.fromEntries([...symbols].map(([name, side]) => [name, withUnit(side)]));
    const value: unknown = math.evaluate(forLibrary(right), scope);
    const own = symbols.get(left);
    const unit = own === undefined ? undefined : KNOWN[own.unit];
    if (own === undefined) throw new Error(`nothing is known of ${left}`);
    if (unit === undefined) {
      expect(math.number(value as number)).toBeCloseTo(own.value, 6);
      return;
    }
    const got = math.number(value as MathUnit, unit);
    expect(Math.abs(got - own.value)).toBeLessThanOrEqual(1e-6 * Math.abs(own.value));
  });
});
