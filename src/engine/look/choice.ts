import type { QuestionRow } from '../../schemas/look.ts';
import { ownerKey, type Found, type Hypothesis, type LookModel } from './model.ts';

/** What the tables say of one answer for a part: of its style and of what is inside. */
export const foundFor = (
  { features }: LookModel,
  { style, kind }: Hypothesis,
  question: QuestionRow,
  answer: string,
): Found[] =>
  [style.id, kind.id].flatMap(
    (owner) => features.get(ownerKey(owner, question.id))?.get(answer) ?? [],
  );

/** Whether the tables say anything about a question for a part. */
const isKnown = ({ features }: LookModel, { style, kind }: Hypothesis, id: string): boolean =>
  features.has(ownerKey(style.id, id)) || features.has(ownerKey(kind.id, id));

const workOutShares = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
): Map<string, number> => {
  const answers = (model.answers.get(question.id) ?? []).map(({ id }) => id);
  const odds = answers.map((answer) =>
    Math.max(
      0,
      ...foundFor(model, hypothesis, question, answer).map(({ how }) => model.weight(how)),
    ),
  );
  const total = odds.reduce((sum, one) => sum + one, 0);
  const wrong = model.weight('wrong');
  return new Map(
    answers.map((answer, i) => [
      answer,
      ((1 - wrong) * (odds[i] ?? 0)) / total + wrong / answers.length,
    ]),
  );
};

/** Shares of the answers to a question of which a part gives one; nothing where none is known. */
export const sharesOfOne = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
): ReadonlyMap<string, number> | undefined => {
  if (!isKnown(model, hypothesis, question.id)) return undefined;
  const key = `${hypothesis.style.id} ${hypothesis.kind.id} ${question.id}`;
  const known = model.known.shares.get(key) ?? workOutShares(model, hypothesis, question);
  model.known.shares.set(key, known);
  return known;
};

/** Share of parts that show a mark. */
export const shareOfMark = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  mark: string,
): number => {
  const without = foundFor(model, hypothesis, question, mark)
    .map(({ how }) => 1 - model.weight(`mark-${how}`))
    .reduce((all, one) => all * one, 1);
  return Math.max(model.weight('mark-stray'), 1 - without);
};

/** Likelihood of the ticked answers; nothing where the tables say nothing. */
export const choiceLikelihood = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  ticked: readonly string[],
): number | undefined => {
  if (question.kind === 'any') {
    return ticked
      .map((mark) => shareOfMark(model, hypothesis, question, mark))
      .reduce((all, one) => all * one, 1);
  }
  const shares = sharesOfOne(model, hypothesis, question);
  return shares && ticked.reduce((sum, answer) => sum + (shares.get(answer) ?? 0), 0);
};
