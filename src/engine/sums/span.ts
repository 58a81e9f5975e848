import type { Range } from '../quantities/index.ts';
import type { InputValues, Sum } from './sum.ts';

/** What a sum is asked with: ranges, choices by id, nothing for optional ones left out. */
export type GivenValues = Readonly<Record<string, Range | string | undefined>>;

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

/** Every combination of the ends, and of the middles where they are few. */
const corners = (wide: readonly [string, Range][]): InputValues[] => {
  const middles = wide.length <= WITH_MIDDLE;
  let all: InputValues[] = [{}];
  for (const [key, { min, typ, max }] of wide) {
    const levels = middles ? [min, typ, max] : [min, max];
    all = all.flatMap((corner) => levels.map((level) => ({ ...corner, [key]: level })));
  }
  return all;
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
 * Outputs of a sum over the ranges of its inputs. An input that occurs twice in an equation is one
 * quantity: the sum is worked out anew at each combination of ends, so nothing widens falsely. An
 * output that is not defined at the typical values is left out; one that is not defined at some
 * combination spans the others.
 */
export const spanOf = (sum: Sum, given: GivenValues, facts: unknown): Record<string, Range> => {
  const middle = typicalOf(given);
  const outputsAt = (values: InputValues) => sum.at(values, facts);
  const wide = wideInputs(given);
  const places = wide.length <= EVERY_CORNER ? corners(wide) : extremes(wide, middle, outputsAt);
  const results = places.map((place) => outputsAt({ ...middle, ...place }));
  return Object.fromEntries(
    Object.entries(outputsAt(middle)).flatMap(([key, typ]) => {
      if (typ === undefined || !Number.isFinite(typ)) return [];
      const values = [typ, ...results.map((result) => result[key] ?? typ)].filter(Number.isFinite);
      return [[key, { min: Math.min(...values), typ, max: Math.max(...values) }]];
    }),
  );
};
