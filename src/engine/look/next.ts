import { exactly } from '../quantities/range.ts';
import type { QuestionRow } from '../../schemas/look.ts';
import { answered, givenTo, likelihoods, type Given } from './likelihood.ts';
import { usualNumber } from './reading.ts';
import type { LookAnswers, LookModel, QuestionId } from './model.ts';

/** A question that is still open, and what asking it is worth. */
export interface NextQuestion {
  question: QuestionId;
  /** Bits of what is still open that its answer is expected to settle, for the effort it takes. */
  worth: number;
}

/** Leading hypotheses that a question is weighed by: so much of all, at most so many. */
const LEADING_SHARE = 0.98;
const LEADING_MOST = 30;

const entropy = (shares: readonly number[]): number =>
  shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

const scaled = (weights: readonly number[]): number[] => {
  const total = sumOf(weights);
  return weights.map((weight) => weight / total);
};

/** The model with the leading hypotheses alone, as likely as they are now. */
const narrowed = (model: LookModel, shares: readonly number[]): LookModel => {
  const order = shares.map((_, i) => i).toSorted((a, b) => (shares[b] ?? 0) - (shares[a] ?? 0));
  let sum = 0;
  const places = order.slice(0, LEADING_MOST).filter((i) => {
    const wanted = sum < LEADING_SHARE;
    sum += shares[i] ?? 0;
    return wanted;
  });
  const own = scaled(places.map((i) => shares[i] ?? 0));
  const hypotheses = places.flatMap((place, i) => {
    const hypothesis = model.hypotheses[place];
    return hypothesis === undefined ? [] : [{ ...hypothesis, prior: own[i] ?? 0 }];
  });
  return { ...model, hypotheses };
};

/** An answer that may come, and how likely it is where that does not follow from its likelihood. */
interface Outcome {
  given: Given;
  chance?: number;
}

/** Answers that a question may get; a number for each that is usual for some of the parts. */
const outcomes = (model: LookModel, question: QuestionRow, answers: LookAnswers): Outcome[] => {
  if (question.kind !== 'range') {
    return (model.answers.get(question.id) ?? []).map(({ id }) => ({ given: { ticked: [id] } }));
  }
  const chances = new Map<number, number>();
  for (const hypothesis of model.hypotheses) {
    const usual = usualNumber(model, hypothesis, question, answers);
    if (usual === undefined) continue;
    chances.set(usual.number, (chances.get(usual.number) ?? 0) + hypothesis.prior);
  }
  return [...chances].map(([number, chance]) => ({ given: { number: exactly(number) }, chance }));
};

const expectedBits = (model: LookModel, question: QuestionRow, answers: LookAnswers): number => {
  const before = model.hypotheses.map(({ prior }) => prior);
  const possible = outcomes(model, question, answers).map(({ given, chance }) => {
    const likelihood = likelihoods(model, question, given, answers);
    const joint = before.map((share, i) => share * (likelihood[i] ?? 0) ** question.counts);
    return { chance: chance ?? sumOf(joint), left: entropy(scaled(joint)) };
  });
  const total = sumOf(possible.map(({ chance }) => chance));
  if (total === 0) return 0;
  const left = sumOf(possible.map((one) => one.chance * one.left)) / total;
  // Numbers are listed only for parts with a range: of the others nothing is learnt.
  const covered = question.kind === 'range' ? total : 1;
  return Math.max(0, covered * (entropy(before) - left));
};

/**
 * Open questions, the one first that is expected to settle most for the effort it takes.
 *
 * @param shares how likely each hypothesis is now
 */
export const nextQuestions = (
  model: LookModel,
  answers: LookAnswers,
  shares: readonly number[],
): NextQuestion[] => {
  const narrow = narrowed(model, shares);
  const counted = new Set(answered(model, answers).map(({ question }) => question.id));
  return model.questions
    .filter((question) => givenTo(model, question, answers) === undefined)
    .filter((question) => !counted.has(question.unless))
    .map((question) => ({
      question: question.id,
      worth: expectedBits(narrow, question, answers) / question.effort,
    }))
    .toSorted((a, b) => b.worth - a.worth);
};
