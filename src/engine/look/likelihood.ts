import type { Range } from '../quantities/range.ts';
import type { QuestionRow } from '../../schemas/look.ts';
import { choiceLikelihood } from './choice.ts';
import { readNumber, scoreNumber } from './reading.ts';
import type { Hypothesis, LookAnswers, LookModel } from './model.ts';

/** One answer to one question. */
export type Given = { ticked: readonly string[] } | { number: Range };

/** What was answered to a question, if anything that it knows. */
export const givenTo = (
  { answers: known }: LookModel,
  { id, kind }: QuestionRow,
  answers: LookAnswers,
): Given | undefined => {
  if (kind === 'range') {
    const number = answers.numbers?.[id];
    return number === undefined ? undefined : { number };
  }
  const named = (known.get(id) ?? []).map((answer) => answer.id);
  // In the order of the table, so that the order of ticking changes nothing.
  const ticked = named.filter((answer) => answers.chosen?.[id]?.includes(answer));
  return ticked.length === 0 ? undefined : { ticked };
};

/** Questions that count, with what was answered to them. */
export const answered = (
  model: LookModel,
  answers: LookAnswers,
): { question: QuestionRow; given: Given }[] => {
  const known = model.questions.flatMap((question) => {
    const given = givenTo(model, question, answers);
    return given === undefined ? [] : [{ question, given }];
  });
  return known.filter(
    ({ question }) => !known.some((other) => other.question.id === question.unless),
  );
};

const ownLikelihood = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  given: Given,
  answers: LookAnswers,
): number | undefined => {
  const number = 'number' in given ? given.number : undefined;
  if (number === undefined && question.kind !== 'score' && 'ticked' in given) {
    return choiceLikelihood(model, hypothesis, question, given.ticked);
  }
  const reading = number ?? scoreNumber('ticked' in given ? given.ticked : []);
  return readNumber(model, hypothesis, question, reading, answers)?.likelihood;
};

/**
 * Likelihood of an answer for every hypothesis, before it is raised to the power that its question
 * counts with. A part of which nothing is known in this respect takes the mean of those of which
 * something is; one for which the reading makes no sense keeps only a share of it.
 */
export const likelihoods = (
  model: LookModel,
  question: QuestionRow,
  given: Given,
  answers: LookAnswers,
): number[] => {
  const own = model.hypotheses.map((one) => ownLikelihood(model, one, question, given, answers));
  const known = model.hypotheses.flatMap(({ prior }, i) => {
    const value = own[i];
    return value === undefined ? [] : [{ prior, value }];
  });
  const total = known.reduce((sum, { prior }) => sum + prior, 0);
  const mean =
    total === 0 ? 1 : known.reduce((sum, { prior, value }) => sum + prior * value, 0) / total;
  const foreign = model.weight('foreign') * mean;
  return model.hypotheses.map(({ kind }, i) => {
    const value = own[i];
    if (value !== undefined) return value;
    return question.part === '' || question.part === kind.is ? mean : foreign;
  });
};
