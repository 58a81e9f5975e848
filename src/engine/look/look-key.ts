import type { Catalogue } from '../catalogue.ts';
import { groundsOf, type Ground } from './grounds.ts';
import { lookModel, type KindId, type LookAnswers, type StyleId } from './model.ts';
import { nextQuestions, type NextQuestion } from './next.ts';
import { posterior } from './posterior.ts';
import { lossSign, type LossSign } from './signs.ts';
import { tellApart, type Apart } from './apart.ts';

/** A style that the part may be. */
export interface LikelyStyle {
  id: StyleId;
  /** 0 to 1; those of all styles sum to one. */
  likelihood: number;
  /** What may be inside, with its part of the likelihood, likeliest first. */
  kinds: { id: KindId; likelihood: number }[];
  /** Answers that speak for it, the weightiest first. */
  for: Ground[];
  against: Ground[];
}

/** What the answers come to. */
export interface LookResult {
  /** Every style, likeliest first. */
  styles: LikelyStyle[];
  /** What it is made of, over all styles, likeliest first; sums to one. */
  kinds: { id: KindId; likelihood: number }[];
  /** Open questions, the most useful first. */
  next: NextQuestion[];
  /** What would tell the two likeliest apart. */
  apart?: Apart;
  /** What the loss at two frequencies says. */
  sign?: LossSign;
}

const byLikelihood = (a: { likelihood: number }, b: { likelihood: number }): number =>
  b.likelihood - a.likelihood;

/**
 * Names a part by its look and by simple bench readings.
 *
 * Each style, with each kind that may be inside it, is a hypothesis. Every answer multiplies its
 * share by how likely such a part gives that answer, as the look tables have it: answers that are
 * usual, met sometimes or seldom; years, values, sizes and readings inside a range or beyond it. One
 * answer in twenty is taken to be wrong, so that none rules a style out; questions that repeat one
 * another count with a power below one. The figures for that are rules of thumb and stand in
 * `look/weights.csv` and `look/questions.csv`.
 *
 * Answers that are not given change nothing, nor does the order of those that are. Never throws;
 * questions and answers that the tables do not have are passed over.
 */
export const lookKey = (catalogue: Catalogue, answers: LookAnswers): LookResult => {
  const model = lookModel(catalogue);
  const shares = posterior(model, answers);
  const grounds = groundsOf(model, answers);
  const placed = model.hypotheses.map((hypothesis, place) => ({
    ...hypothesis,
    place,
    likelihood: shares[place] ?? 0,
  }));
  const styles = [...Map.groupBy(placed, ({ style }) => style.id)].map(([id, members]) => {
    const ranked = members.toSorted(byLikelihood);
    const all = grounds(ranked[0]?.place ?? -1);
    return {
      id,
      likelihood: ranked.reduce((sum, { likelihood }) => sum + likelihood, 0),
      kinds: ranked.map(({ kind, likelihood }) => ({ id: kind.id, likelihood })),
      for: all.filter(({ bits }) => bits > 0),
      against: all.filter(({ bits }) => bits < 0),
    };
  });
  const kinds = [...Map.groupBy(placed, ({ kind }) => kind.id)].map(([id, members]) => ({
    id,
    likelihood: members.reduce((sum, { likelihood }) => sum + likelihood, 0),
  }));
  const apart = tellApart(model, catalogue.look.disguises, answers, shares);
  const sign = lossSign(catalogue, answers);
  return {
    styles: styles.toSorted(byLikelihood),
    kinds: kinds.toSorted(byLikelihood),
    next: nextQuestions(model, answers, shares),
    ...(apart && { apart }),
    ...(sign && { sign }),
  };
};
