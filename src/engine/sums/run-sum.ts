import type { Catalogue } from '../catalogue.ts';
import { given as known } from '../given.ts';
import type { Habit, Range } from '../quantities/index.ts';
import { chanceOf, USUAL_SEED, type Chance } from './chance.ts';
import { plotOf } from './curves.ts';
import { notesOf } from './notes.ts';
import type { SumPlot } from './picture.ts';
import { readInputs } from './read-inputs.ts';
import { isRange, spanOf, typicalOf, visitEnds, type GivenValues } from './span.ts';
import type { Sum, SumNote, SumTable } from './sum.ts';

/** What a sum answers, before all that goes with it. */
export interface SumAnswer {
  sum: string;
  /** With the usual values for what was left out. */
  inputs: GivenValues;
  /** By output; those that are not defined for these inputs are missing. */
  outputs: Readonly<Record<string, Range>>;
  /** The answer in words, where the headline alone says too little. */
  answer?: string;
}

/** All that a sum comes to, as plain data in SI units. */
export interface SumResult extends SumAnswer {
  /** Those that hold for these inputs. */
  equations: readonly string[];
  /** How likely the ends of its chief outputs are; where several inputs have a width. */
  chances: readonly { output: string; chance: Chance }[];
  /** What the draws began with. */
  seed: number;
  tables: readonly SumTable[];
  notes: readonly SumNote[];
  plots: readonly SumPlot[];
}

/** Key of the output that a sum is about. */
export const headlineOf = (sum: Sum): string => {
  const [first] = Object.entries(sum.outputs).filter(([, { headline }]) => headline);
  if (first === undefined) throw new Error(`the sum ${sum.id} has no headline`);
  return first[0];
};

/** The answer in words; of a sum that judges, with what it is at an end of a range where that differs. */
const answerInWords = (
  sum: Sum,
  given: GivenValues,
  facts: unknown,
  habit?: Habit,
): string | undefined => {
  const own = sum.answer?.(typicalOf(given), facts, habit);
  if (own === undefined || !sum.judges) return own;
  const others = new Set<string>();
  visitEnds(sum, given, facts, (values) => {
    const answer = sum.answer?.(values, facts, habit);
    if (answer !== undefined && answer !== own) others.add(answer);
  });
  return others.size === 0 ? own : `${own} At an end of a range: ${[...others].join(' ')}`;
};

/**
 * What a sum answers: soon known, so that nobody waits for its plots.
 * @param habit how numbers stand in words of it
 */
export const answerTo = (
  sum: Sum,
  given: GivenValues,
  facts: unknown,
  habit?: Habit,
): SumAnswer => ({
  sum: sum.id,
  inputs: given,
  outputs: spanOf(sum, given, facts),
  ...known('answer', answerInWords(sum, given, facts, habit)),
});

/** How a result is drawn and put into words. */
interface Manner {
  /** How numbers stand in words of it. */
  habit?: Habit | undefined;
  /** Of what is drawn by chance; the same one draws the same. */
  seed?: number | undefined;
}

/** All that a sum comes to beside what it answers. */
export const resultWith = (
  answer: SumAnswer,
  sum: Sum,
  facts: unknown,
  { habit, seed = USUAL_SEED }: Manner = {},
): SumResult => {
  const given = answer.inputs;
  const values = typicalOf(given);
  const drawn = sum.laborious ? [] : (sum.drawn ?? [headlineOf(sum)]);
  return {
    ...answer,
    equations: sum.equationsFor?.(values) ?? sum.equations,
    chances: drawn.flatMap((output) => {
      const chance = chanceOf(sum, given, facts, output, seed);
      return chance === undefined ? [] : [{ output, chance }];
    }),
    seed,
    tables: sum.tables?.(values, facts, habit) ?? [],
    notes: notesOf(sum, given, facts),
    plots: [
      ...sum.plots.flatMap((spec) => plotOf(sum, spec, given, facts) ?? []),
      ...(sum.pictures?.(values, facts) ?? []),
    ],
  };
};

/** Works a sum out. */
export const resultOf = (
  sum: Sum,
  given: GivenValues,
  facts: unknown,
  manner: Manner = {},
): SumResult => resultWith(answerTo(sum, given, facts, manner.habit), sum, facts, manner);

/**
 * Works one of the bench sums out.
 * @param inputs by key: ranges in SI units, choices by id; what is left out takes its usual value
 * @throws RangeError for an input that the sum does not have, or of the wrong kind
 */
export const runSumOf = (
  sum: Sum,
  catalogue: Catalogue,
  inputs: Readonly<Record<string, Range | string>>,
): SumResult => {
  for (const [key, value] of Object.entries(inputs)) {
    const kind = sum.inputs[key]?.kind;
    if (kind === undefined) throw new RangeError(`the sum ${sum.id} has no input ${key}`);
    if ((kind === 'quantity') !== isRange(value)) {
      throw new RangeError(`the input ${key} of the sum ${sum.id} is a ${kind}`);
    }
  }
  const facts = sum.facts?.(catalogue);
  const { given } = readInputs(sum, facts, {});
  return resultOf(sum, { ...given, ...inputs }, facts);
};
