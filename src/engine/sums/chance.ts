import type { Range } from '../quantities/index.ts';
import { spanOf, typicalOf, wideInputs, type GivenValues } from './span.ts';
import type { Sum } from './sum.ts';

/** How likely the ends of a result are, three ways. */
export interface Chance {
  /** Every input at its worst at once. */
  worst: Range;
  /** Root of the sum of squares of what each input does by itself. */
  rootSumSquare: Range;
  /** From many parts picked at random, evenly within the ranges: 5 of 100 lie below, 5 above. */
  drawn: Range;
  /** How many of the drawn parts fall into equal steps from `from` to `to`. */
  histogram: { from: number; to: number; counts: number[] };
}

/** What draws begin with unless another seed is given. */
export const USUAL_SEED = 1;

export const DRAWS = 2000;
const STEPS = 24;
const TAIL = 0.05;

/**
 * Numbers from 0 to 1 that are the same for the same seed, so that a result can be told to others.
 * The generator is the public-domain "mulberry32".
 */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Typical value with what each input does by itself, added as squares to either side. */
const bySquares = (sum: Sum, given: GivenValues, facts: unknown, output: string): Range => {
  const middle = typicalOf(given);
  const typ = sum.at(middle, facts)[output] ?? NaN;
  let below = 0;
  let above = 0;
  for (const [key, { min, max }] of wideInputs(given)) {
    const ends = [min, max].map(
      (value) => sum.at({ ...middle, [key]: value }, facts)[output] ?? typ,
    );
    below += Math.min(0, ...ends.map((end) => end - typ)) ** 2;
    above += Math.max(0, ...ends.map((end) => end - typ)) ** 2;
  }
  return { min: typ - Math.sqrt(below), typ, max: typ + Math.sqrt(above) };
};

/**
 * How likely the ends of one output are over the ranges of the inputs; nothing where fewer than two
 * have a width, since one alone is as likely at its ends as elsewhere, or the output is not defined or
 * comes out the same of every draw.
 */
export const chanceOf = (
  sum: Sum,
  given: GivenValues,
  facts: unknown,
  output: string,
  seed: number = USUAL_SEED,
): Chance | undefined => {
  const wide = wideInputs(given);
  const worst = spanOf(sum, given, facts)[output];
  if (wide.length < 2 || worst === undefined || worst.min === worst.max) return undefined;
  const random = seeded(seed);
  const values: Record<string, number | string | undefined> = { ...typicalOf(given) };
  const found: number[] = [];
  for (let draw = 0; draw < DRAWS; draw += 1) {
    for (const [key, { min, max }] of wide) values[key] = min + (max - min) * random();
    const value = sum.at(values, facts)[output];
    if (value !== undefined && Number.isFinite(value)) found.push(value);
  }
  const drawn = Float64Array.from(found).sort();
  const at = (share: number): number => drawn[Math.round(share * (drawn.length - 1))] ?? NaN;
  const [from, to] = [at(0), at(1)];
  // Ends that no draw came near, or a result that has but few steps, leave nothing to show.
  if (!(from < to)) return undefined;
  const counts = Array.from({ length: STEPS }, () => 0);
  for (const value of drawn) {
    const step = Math.min(STEPS - 1, Math.floor(((value - from) / (to - from)) * STEPS));
    counts[step] = (counts[step] ?? 0) + 1;
  }
  return {
    worst,
    rootSumSquare: bySquares(sum, given, facts, output),
    drawn: { min: at(TAIL), typ: at(0.5), max: at(1 - TAIL) },
    histogram: { from, to, counts },
  };
};
