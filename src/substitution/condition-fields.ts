import {
  formatQuantity,
  formatValue,
  type Catalogue,
  type Habit,
  type PositionId,
  type Range,
  type ResolvedCondition,
  type Unit,
} from '../engine/index.ts';
import type { Field } from './field.ts';
import { readRange, type Measure, type Taker } from './typed-numbers.ts';

/** SI unit of a condition, as the engine names it. */
const conditionUnit = (catalogue: Catalogue, id: string): Unit => {
  const unit = catalogue.conditionDefinitions[id]?.unit ?? '';
  return (catalogue.units[unit]?.si ?? 'ratio') as Unit;
};

const conditionMeasure = (catalogue: Catalogue, id: string): Measure => {
  const row = catalogue.conditionDefinitions[id];
  const factor = catalogue.units[row?.unit ?? '']?.factor ?? 1;
  return {
    unit: conditionUnit(catalogue, id),
    bare: row?.unit,
    lowest: (row?.lowest ?? 0) * factor,
    highest: (row?.highest ?? Infinity) * factor,
  };
};

/** Ids of the conditions that a position lets the visitor change. */
export const conditionIds = (catalogue: Catalogue, position: PositionId): string[] =>
  catalogue.conditions.filter((row) => row.position === position).map((row) => row.condition);

/** Conditions of which the first may not lie above the second. */
const IN_ORDER = [
  ['t-min', 't-max'],
  ['esr-min', 'esr-max'],
] as const;

/** What a condition is where nobody says it, SI; nothing where the position does not ask for it. */
type Usual = (id: string) => Range | undefined;

/**
 * The conditions without those of such a pair that contradict the other number, be it said or usual: a
 * coldest above the warmest would leave no span to drift over, which any part bears.
 */
const withoutContradictions = (
  catalogue: Catalogue,
  said: Readonly<Record<string, Range>>,
  usual: Usual,
  take: Taker['take'],
): Record<string, Range> => {
  let conditions = { ...said };
  const rangeOf: Usual = (id) => conditions[id] ?? usual(id);
  const refuse = (id: string, way: 'less' | 'more', other: string, value: number): void => {
    const name = catalogue.conditionDefinitions[other]?.name ?? other;
    const limit = formatValue(value, conditionUnit(catalogue, other));
    take(id, () => ({ message: `Please give no ${way} than “${name}”, ${limit}.` }));
    conditions = Object.fromEntries(Object.entries(conditions).filter(([key]) => key !== id));
  };
  for (const [low, high] of IN_ORDER) {
    for (const refused of [high, low]) {
      if (conditions[refused] === undefined) continue;
      const [lower, upper] = [rangeOf(low), rangeOf(high)];
      if (!lower || !upper || lower.min <= upper.max) continue;
      if (refused === high) refuse(high, 'less', low, lower.min);
      else refuse(low, 'more', high, upper.max);
    }
  }
  return conditions;
};

/**
 * What an address says of the conditions of a position, SI.
 * @param resolved all of its conditions as they usually are, asked for only if a number has to agree with them
 */
export const readConditions = (
  catalogue: Catalogue,
  position: PositionId,
  resolved: () => readonly ResolvedCondition[],
  take: Taker['take'],
): Record<string, Range> => {
  const conditions: Record<string, Range> = {};
  for (const id of conditionIds(catalogue, position)) {
    const range = take(id, (text) => readRange(text, conditionMeasure(catalogue, id)));
    if (range !== undefined) conditions[id] = range;
  }
  const usual: Usual = (id) => resolved().find((one) => one.id === id)?.range;
  return withoutContradictions(catalogue, conditions, usual, take);
};

/** A condition written out; no time at all in the unit that people give it in, as `0 years`. */
const printCondition = (catalogue: Catalogue, id: string, range: Range, habit?: Habit): string => {
  const unit = conditionUnit(catalogue, id);
  return unit === 's' && range.max === 0
    ? `0\u00A0${catalogue.conditionDefinitions[id]?.unit ?? unit}`
    : formatQuantity(range, unit, habit);
};

/** The conditions of a position as fields of a form. */
export const conditionFields = (
  catalogue: Catalogue,
  conditions: readonly ResolvedCondition[],
  habit?: Habit,
): Omit<Field, 'message'>[] =>
  conditions.map(({ id, range, from, row }) => ({
    key: id,
    group: catalogue.conditionDefinitions[id]?.group ?? 'circuit',
    label: catalogue.conditionDefinitions[id]?.name ?? id,
    text: printCondition(catalogue, id, range, habit),
    from,
    note: row.note,
  }));
