import { readEquation } from '../components/equation-tree.ts';
import { namesIn } from '../components/equation-values.ts';
import { equationMarkup } from '../components/math.ts';
import { formatValue, type Habit, type Range } from '../engine/index.ts';
import type { GivenValues } from '../engine/sums/span.ts';
import type { SumResult } from '../engine/sums/run-sum.ts';
import type { Sum } from '../engine/sums/sum.ts';
import { h, type Markup } from '../markup/node.ts';

/** Typical values by the symbols of a sum's equations, as people read them. */
const valuesBySymbol = (
  sum: Sum,
  given: GivenValues,
  outputs: Readonly<Record<string, Range>>,
  habit?: Habit,
): Map<string, string> => {
  const values = new Map<string, string>();
  for (const [key, input] of Object.entries(sum.inputs)) {
    const value = given[key];
    if (input.kind !== 'quantity' || input.symbol === undefined || typeof value !== 'object')
      continue;
    values.set(input.symbol, formatValue(value.typ, input.unit, habit));
  }
  for (const [key, { symbol, unit }] of Object.entries(sum.outputs)) {
    const value = outputs[key];
    if (symbol !== undefined && value !== undefined)
      values.set(symbol, formatValue(value.typ, unit, habit));
  }
  return values;
};

/** Names that are constants and have no value of a visitor's. */
const CONSTANTS: ReadonlySet<string> = new Set(['pi', 'k']);

/** Whether every name of an equation has a value to put in. */
const isFilled = (equation: string, values: ReadonlyMap<string, string>): boolean => {
  const tree = readEquation(equation);
  const names = tree === undefined ? [] : namesIn(tree);
  return names.every((name) => CONSTANTS.has(name) || values.has(name));
};

/** Each equation of a sum as it is written, and with the numbers put in. */
export const workingMarkup = (sum: Sum, result: SumResult, habit?: Habit): Markup => {
  const values = valuesBySymbol(sum, result.inputs, result.outputs, habit);
  return h(
    'div',
    { class: 'working' },
    ...result.equations.map((equation) =>
      h(
        'div',
        { class: 'equation' },
        equationMarkup(equation),
        isFilled(equation, values) &&
          h('span', { class: 'numbers-in' }, equationMarkup(equation, values)),
      ),
    ),
  );
};
