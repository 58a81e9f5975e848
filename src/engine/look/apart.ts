import { exactly } from '../quantities/range.ts';
import type { DisguiseRow, LookRangeRow, QuestionRow } from '../../schemas/look.ts';
import { shareOfMark, sharesOfOne } from './choice.ts';
import { answered, givenTo, likelihoods } from './likelihood.ts';
import { usualNumber } from './reading.ts';
import type { Hypothesis, KindId, LookAnswers, LookModel, QuestionId, StyleId } from './model.ts';

/**
 * What to expect of a part: the answer that it gives rather than the other, a range, or none of the
 * marks.
 */
export type Expected = { answer: string } | { range: LookRangeRow } | { unmarked: true };

/** What each of two parts would show. */
export interface Telling {
  question: QuestionId;
  first: Expected;
  second: Expected;
  /** How far the answers of the two lie apart, in bits for the effort that it takes. */
  worth: number;
}

/** What would tell the two likeliest parts apart. */
export interface Apart {
  first: { style: StyleId; kind: KindId };
  second: { style: StyleId; kind: KindId };
  /** What the data say of the two by name. */
  disguises: DisguiseRow[];
  /** Open questions that part the two, the best first. */
  tellings: Telling[];
}

/** A second part must be at least so likely against the first to be worth telling apart. */
const WORTH_TELLING = 0.02;
/** Answers that part two parts by less are no help. */
const LEAST_BITS = 0.6;
const MOST_TELLINGS = 3;

/** The likeliest part, and the next that is another inside; failing that, another style. */
const pairOf = (
  { hypotheses }: LookModel,
  shares: readonly number[],
): [Hypothesis, Hypothesis] | undefined => {
  const order = hypotheses
    .map((hypothesis, i) => ({ hypothesis, share: shares[i] ?? 0 }))
    .toSorted((a, b) => b.share - a.share);
  const [first, ...others] = order;
  if (first === undefined) return undefined;
  const near = others.filter(({ share }) => share >= first.share * WORTH_TELLING);
  const { style, kind } = first.hypothesis;
  const otherKind = near.filter((one) => one.hypothesis.kind.id !== kind.id);
  const second =
    otherKind.find((one) => one.hypothesis.style.id !== style.id) ?? otherKind[0] ?? near[0];
  return second && [first.hypothesis, second.hypothesis];
};

/** Shares of the answers of a part, or of its marks. */
const sharesFor = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
): { id: string; share: number }[] | undefined => {
  const ids = (model.answers.get(question.id) ?? []).map(({ id }) => id);
  if (question.kind === 'any') {
    return ids.map((id) => ({ id, share: shareOfMark(model, hypothesis, question, id) }));
  }
  const shares = sharesOfOne(model, hypothesis, question);
  return shares && ids.map((id) => ({ id, share: shares.get(id) ?? 0 }));
};

/** What one part answers rather than the other, and how many bits that is worth on average. */
const byAnswer = (
  model: LookModel,
  question: QuestionRow,
  [one, other]: readonly [Hypothesis, Hypothesis],
): { expected: Expected; bits: number } | undefined => {
  const [own, against] = [sharesFor(model, one, question), sharesFor(model, other, question)];
  if (own === undefined || against === undefined) return undefined;
  const weighed = own.map(({ id, share }, i) => ({
    id,
    share,
    bits: share * Math.log2(share / (against[i]?.share ?? share)),
  }));
  const [best] = weighed.toSorted((a, b) => b.bits - a.bits);
  if (best === undefined) return undefined;
  // Answers to one question exclude each other.
  if (question.kind !== 'any')
    return {
      expected: { answer: best.id },
      bits: weighed.reduce((sum, { bits }) => sum + bits, 0),
    };
  // Of marks only the one that is named is looked for: more usual here, and no chance find.
  const isShown = best.bits > 0 && best.share >= model.weight('mark-sometimes');
  return { expected: isShown ? { answer: best.id } : { unmarked: true }, bits: best.bits };
};

const byNumber = (
  model: LookModel,
  question: QuestionRow,
  answers: LookAnswers,
  pair: readonly [Hypothesis, Hypothesis],
): { expected: Expected; bits: number } | undefined => {
  const usual = usualNumber(model, pair[0], question, answers);
  if (usual === undefined) return undefined;
  const given = { number: exactly(usual.number) };
  const [own = 1, against = 1] = likelihoods(
    { ...model, hypotheses: pair },
    question,
    given,
    answers,
  );
  return { expected: { range: usual.row }, bits: Math.log2(own / against) };
};

const telling = (
  model: LookModel,
  answers: LookAnswers,
  question: QuestionRow,
  [first, second]: [Hypothesis, Hypothesis],
): Telling[] => {
  const expect = (pair: readonly [Hypothesis, Hypothesis]) =>
    question.kind === 'one' || question.kind === 'any'
      ? byAnswer(model, question, pair)
      : byNumber(model, question, answers, pair);
  const [one, two] = [expect([first, second]), expect([second, first])];
  if (one === undefined || two === undefined) return [];
  const bits = (question.counts * (one.bits + two.bits)) / 2;
  return bits < LEAST_BITS
    ? []
    : [
        {
          question: question.id,
          first: one.expected,
          second: two.expected,
          worth: bits / question.effort,
        },
      ];
};

/** What would tell the two likeliest parts apart; nothing where one stands alone. */
export const tellApart = (
  model: LookModel,
  disguises: readonly DisguiseRow[],
  answers: LookAnswers,
  shares: readonly number[],
): Apart | undefined => {
  const pair = pairOf(model, shares);
  if (pair === undefined) return undefined;
  const [first, second] = pair;
  const ids = [first.style.id, second.style.id];
  const counted = new Set(answered(model, answers).map(({ question }) => question.id));
  return {
    first: { style: first.style.id, kind: first.kind.id },
    second: { style: second.style.id, kind: second.kind.id },
    disguises: disguises.filter(
      ({ style, other }) => style !== other && ids.includes(style) && ids.includes(other),
    ),
    tellings: model.questions
      .filter((question) => givenTo(model, question, answers) === undefined)
      .filter((question) => !counted.has(question.unless))
      .flatMap((question) => telling(model, answers, question, pair))
      .toSorted((a, b) => b.worth - a.worth)
      .slice(0, MOST_TELLINGS),
  };
};
