import type { Range } from '../quantities/range.ts';
import type { LookRangeRow, QuestionRow } from '../../schemas/look.ts';
import { areaOf, fitsSpan, scaleOf, spanOf, type Scale, type Span } from './span.ts';
import { ownerKey, type Hypothesis, type LookAnswers, type LookModel } from './model.ts';

/** A reading is taken at so many places between its ends. */
const PLACES = 5;

/** Likelihood of a number against ranges. */
export interface Read {
  /** Per length of the scale. */
  likelihood: number;
  /** How usual the number is for the range that it fits best, 0 to 1. */
  fit: number;
  row: LookRangeRow;
}

/**
 * What makes a number of a row one of the question's SI unit. A resistance times a capacitance is
 * divided by the part's own capacitance; nothing where that is not known.
 */
const toSi = (
  { factor, si }: LookModel,
  question: QuestionRow,
  row: LookRangeRow,
  capacitance: number | undefined,
): number | undefined => {
  if (si(row.unit) === si(question.unit)) return factor(row.unit);
  return capacitance === undefined ? undefined : factor(row.unit) / capacitance;
};

/** The ranges of a part that a question can be held against, and how many rows have no span. */
export interface Spans {
  spans: readonly Span[];
  without: number;
}

const spansFor = (
  model: LookModel,
  { style, kind }: Hypothesis,
  question: QuestionRow,
  scale: Scale,
  answers: LookAnswers,
): Spans => {
  const capacitance = answers.numbers?.['capacitance']?.typ;
  const key = `${style.id} ${kind.id} ${question.id} ${capacitance ?? ''}`;
  const known = model.known.spans.get(key);
  if (known !== undefined) return known;
  const rows = [style.id, kind.id].flatMap(
    (owner) => model.ranges.get(ownerKey(owner, question.id)) ?? [],
  );
  const spans = rows.flatMap((row) => {
    const size = toSi(model, question, row, capacitance);
    return size === undefined ? [] : [spanOf(row, scale, size)];
  });
  const found = { spans, without: rows.length - spans.length };
  model.known.spans.set(key, found);
  return found;
};

const placesOf = ({ min, max }: Range, scale: Scale): number[] => {
  const [from, to] = [scale.at(min), scale.at(max)];
  return from === to
    ? [from]
    : Array.from({ length: PLACES }, (_, i) => from + ((to - from) * i) / (PLACES - 1));
};

/** The scale of a question in SI units. */
const questionScale = (model: LookModel, question: QuestionRow): Scale =>
  scaleOf(question, model.factor(question.unit));

/** How a number sits in the ranges of a part; nothing where it has none. */
export const readNumber = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  number: Range,
  answers: LookAnswers,
): Read | undefined => {
  const scale = questionScale(model, question);
  const { spans, without } = spansFor(model, hypothesis, question, scale, answers);
  const [wrong, edge] = [model.weight('wrong'), model.weight('edge')];
  const places = placesOf(number, scale);
  const reads = spans.map((span) => {
    const fits = places.map((place) => fitsSpan(span, place, scale.near, edge));
    const mean = fits.reduce((sum, fit) => sum + fit, 0) / fits.length;
    return {
      row: span.row,
      fit: Math.max(...fits),
      density: mean / areaOf(span, scale.near, edge),
    };
  });
  const [best] = reads.toSorted((a, b) => b.density - a.density || b.fit - a.fit);
  if (best === undefined) return undefined;
  // What lies outside the ranges at hand may lie inside one that wants the capacitance.
  if (best.fit === 0 && without > 0) return undefined;
  // Ranges of one question are alternatives, each as likely as the next.
  const density = reads.reduce((sum, read) => sum + read.density, 0) / reads.length;
  const anywhere = 1 / (scale.high - scale.low);
  return {
    likelihood: (1 - wrong) * density + wrong * anywhere,
    fit: best.fit,
    row: best.row,
  };
};

/** A score as the number that it counts as; several that are ticked reach from least to most. */
export const scoreNumber = (ticked: readonly string[]): Range => {
  const steps = ticked.map(Number);
  const [min, max] = [Math.min(...steps), Math.max(...steps)];
  return { min, typ: (min + max) / 2, max };
};

/** The first range of a part, and the number in the middle of what is usual; nothing without one. */
export const usualNumber = (
  model: LookModel,
  hypothesis: Hypothesis,
  question: QuestionRow,
  answers: LookAnswers,
): { number: number; row: LookRangeRow } | undefined => {
  const scale = questionScale(model, question);
  const [span] = spansFor(model, hypothesis, question, scale, answers).spans;
  return span && { number: scale.value((span.from + span.to) / 2), row: span.row };
};
