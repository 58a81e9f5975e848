import type { Basis, SourceId } from '../catalogue.ts';
import type { Range } from '../quantities/range.ts';
import type { LookRangeRow, QuestionRow } from '../../schemas/look.ts';
import { foundFor } from './choice.ts';
import { answered, likelihoods, type Given } from './likelihood.ts';
import { readNumber, scoreNumber } from './reading.ts';
import type { Hypothesis, LookAnswers, LookModel, QuestionId } from './model.ts';

/** One answer that speaks for a style or against it. */
export interface Ground {
  question: QuestionId;
  /** The answer, as it was given. */
  ticked?: readonly string[];
  number?: Range;
  /**
   * How often the style gives this answer, or where the number stands: inside what is usual, in its
   * fringe, or outside. `not-met`: no row of the data has it.
   */
  how: 'usual' | 'sometimes' | 'seldom' | 'not-met' | 'inside' | 'fringe' | 'outside' | 'senseless';
  /** The range that the number was held against. */
  range?: LookRangeRow;
  /** Weight of evidence against the average part, in bits; above zero speaks for the style. */
  bits: number;
  source: SourceId;
  basis: Basis;
  note: string;
}

/** Evidence of less than this, either way, says nothing. */
const LEAST_BITS = 0.4;

/** Where no row says so, it is the practice of the trade that a style looks otherwise. */
const UNSAID = { source: 'trade', basis: 'common-practice', note: '' } as const;

const ORDER = ['usual', 'sometimes', 'seldom'] as const;

type Account = Omit<Ground, 'question' | 'bits'>;

const accountOfTicks = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  ticked: readonly string[],
): Account => {
  const found = ticked.map((answer) =>
    foundFor(model, hypothesis, question, answer).toSorted(
      (a, b) => ORDER.indexOf(a.how) - ORDER.indexOf(b.how),
    ),
  );
  // Of one answer the best counts, of several marks the one that is least usual.
  const rank = (index: number): number => {
    const first = found[index]?.[0];
    return first === undefined ? ORDER.length : ORDER.indexOf(first.how);
  };
  const places = ticked.map((_, i) => i).toSorted((a, b) => rank(a) - rank(b));
  const place = question.kind === 'any' ? places.at(-1) : places[0];
  const best = found[place ?? 0]?.[0];
  if (best === undefined) return { ticked, how: 'not-met', ...UNSAID };
  const { source, basis, note } = best.row;
  return { ticked, how: best.how, source, basis, note };
};

const accountOfNumber = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  given: Given,
  answers: LookAnswers,
): Account | undefined => {
  const number = 'number' in given ? given.number : scoreNumber(given.ticked);
  const read = readNumber(model, hypothesis, question, number, answers);
  if (read === undefined) {
    return question.part === '' || question.part === hypothesis.kind.is
      ? undefined
      : { ...given, how: 'senseless', ...UNSAID };
  }
  const { source, basis, note } = read.row;
  const how = read.fit === 1 ? 'inside' : read.fit > 0 ? 'fringe' : 'outside';
  return { ...given, how, range: read.row, source, basis, note };
};

/** What answers say of each hypothesis, the weightiest first. */
export const groundsOf = (
  model: LookModel,
  answers: LookAnswers,
): ((index: number) => Ground[]) => {
  const counted = answered(model, answers).map(({ question, given }) => {
    const shares = likelihoods(model, question, given, answers);
    const mean = model.hypotheses.reduce((sum, { prior }, i) => sum + prior * (shares[i] ?? 0), 0);
    return { question, given, shares, mean };
  });
  return (index) => {
    const hypothesis = model.hypotheses[index];
    if (hypothesis === undefined) return [];
    return counted
      .flatMap(({ question, given, shares, mean }): Ground[] => {
        const bits = question.counts * Math.log2((shares[index] ?? mean) / mean);
        if (Math.abs(bits) < LEAST_BITS) return [];
        const account =
          'ticked' in given && question.kind !== 'score'
            ? accountOfTicks(model, hypothesis, question, given.ticked)
            : accountOfNumber(model, hypothesis, question, given, answers);
        return account === undefined ? [] : [{ question: question.id, bits, ...account }];
      })
      .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));
  };
};
