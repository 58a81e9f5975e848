import type { Range } from '../quantities/index.ts';
import type { InputValues, Sum } from './sum.ts';

/** What a sum is asked with: ranges, choices by id, nothing for optional ones left out. */
export type GivenValues = Readonly<Record<string, Range | string | undefined>>;

/** Whether an input is a number rather than a choice or left empty. */
export const isRange = (value: Range | string | undefined): value is Range =>
  typeof value === 'object';

/** The typical value of every input. */
export const typicalOf = (given: GivenValues): InputValues =>
  Object.fromEntries(
    Object.entries(given).map(([key, value]) => [key, isRange(value) ? value.typ : value]),
  );

/** Inputs that have a width, with their ends. */
export const wideInputs = (given: GivenValues): [string, Range][] =>
  Object.entries(given).filter(
    (entry): entry is [string, Range] => isRange(entry[1]) && entry[1].min < entry[1].max,
  );

/** Up to so many inputs with a width, the middle of each is tried beside its ends. */
const WITH_MIDDLE = 5;
/** Up to so many, every combination of ends is tried. */
const EVERY_CORNER = 10;

/** Values that are moved from place to place: what looks at them keeps none. */
type Moving = Record<string, number | string | undefined>;

/** Visits every combination of the ends, and of the middles where they are few. */
const visitCorners = (
  wide: readonly [string, Range][],
  values: Moving,
  visit: (values: InputValues) => void,
): void => {
  const hasMiddles = wide.length <= WITH_MIDDLE;
  const move = (index: number): void => {
    const input = wide[index];
    if (input === undefined) {
      visit(values);
      return;
    }
    const [key, { min, typ, max }] = input;
    for (const level of hasMiddles ? [min, typ, max] : [min, max]) {
      values[key] = level;
      move(index + 1);
    }
  };
  move(0);
};

/** Of many inputs: each moved to its ends by itself, then all to the side that lowers or raises. */
const extremes = (
  wide: readonly [string, Range][],
  middle: InputValues,
  outputsAt: (values: InputValues) => Readonly<Record<string, number | undefined>>,
): InputValues[] => {
  const moved = wide.map(([key, { min, max }]) => ({
    key,
    min,
    max,
    low: outputsAt({ ...middle, [key]: min }),
    high: outputsAt({ ...middle, [key]: max }),
  }));
  const outputs = Object.keys(outputsAt(middle));
  return outputs.flatMap((output) => {
    const side = (rising: boolean): InputValues =>
      Object.fromEntries(
        moved.map(({ key, min, max, low, high }) => {
          const rises = (high[output] ?? 0) >= (low[output] ?? 0);
          return [key, rises === rising ? max : min];
        }),
      );
    return [side(true), side(false)];
  });
};

/**
 * Visits the points at which a sum is worked out besides the typical one: each combination of the ends
 * of its ranges, or of many ranges those where an output is likely to be least or greatest. None where
 * no input has a width.
 */
export const visitEnds = (
  sum: Sum,
  given: GivenValues,
  facts: unknown,
  visit: (values: InputValues) => void,
): void => {
  const [wide, middle] = [wideInputs(given), typicalOf(given)];
  if (wide.length > EVERY_CORNER) {
    extremes(wide, middle, (values) => sum.at(values, facts)).forEach(visit);
  } else if (wide.length > 0) visitCorners(wide, { ...middle }, visit);
};

/**
 * Outputs of a sum over the ranges of its inputs. An input that occurs twice in an equation is one
 * quantity: the sum is worked out anew at each combination of ends, so nothing widens falsely. An
 * output that is not defined at the typical values is left out; one that is not defined at some
 * combination spans the others.
 */
export const spanOf = (sum: Sum, given: GivenValues, facts: unknown): Record<string, Range> => {
  const middle = typicalOf(given);
  const outputsAt = (values: InputValues) => sum.at(values, facts);
  const spans: Record<string, Range> = {};
  for (const [key, typ] of Object.entries(outputsAt(middle))) {
    if (typ !== undefined && Number.isFinite(typ)) spans[key] = { min: typ, typ, max: typ };
  }
  const widen = (values: InputValues): void => {
    const outputs = outputsAt(values);
    for (const [key, span] of Object.entries(spans)) {
      const value = outputs[key];
      if (value === undefined || !Number.isFinite(value)) continue;
      if (value < span.min) span.min = value;
      if (value > span.max) span.max = value;
    }
  };
  visitEnds(sum, given, facts, widen);
  return spans;
};
