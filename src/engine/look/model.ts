import type { Catalogue } from '../catalogue.ts';
import type { Range } from '../quantities/range.ts';
import type {
  AnswerRow,
  FeatureRow,
  KindRow,
  LookRangeRow,
  QuestionRow,
  StyleRow,
  WeightRow,
} from '../../schemas/look.ts';
import type { Spans } from './reading.ts';

export type StyleId = string;
export type KindId = string;
export type QuestionId = string;

/** What someone could see, knows or measured; what is not here changes nothing. */
export interface LookAnswers {
  /** Ticked answers by question. Of a question with one answer, several mean one of these. */
  chosen?: Readonly<Record<QuestionId, readonly string[]>>;
  /** Numbers by question, SI units; a year is a plain number. */
  numbers?: Readonly<Record<QuestionId, Range>>;
}

/** One thing that a part may be: a style with one of the kinds that may be inside. */
export interface Hypothesis {
  style: StyleRow;
  kind: KindRow;
  /** Share before anything is known; all of them sum to one. */
  prior: number;
}

/** A feature row as found for one answer. */
export interface Found {
  how: FeatureRow['how'];
  row: FeatureRow;
}

/** The look tables, arranged to be asked. */
export interface LookModel {
  hypotheses: readonly Hypothesis[];
  questions: QuestionRow[];
  answers: ReadonlyMap<QuestionId, AnswerRow[]>;
  /** Features by owner and question, then by answer. */
  features: ReadonlyMap<string, ReadonlyMap<string, Found>>;
  /** Ranges by owner and question. */
  ranges: ReadonlyMap<string, LookRangeRow[]>;
  weight: (id: WeightRow['id']) => number;
  /** What one of a unit is in SI. */
  factor: (unit: string) => number;
  si: (unit: string) => string | undefined;
  /** What was worked out before, by what it was worked out from. */
  known: { spans: Map<string, Spans>; shares: Map<string, Map<string, number>> };
}

/** The key under which rows of a style or a kind are kept. */
export const ownerKey = (owner: StyleId | KindId, question: QuestionId): string =>
  `${owner} ${question}`;

const hypothesesOf = (
  { styles, kinds }: Catalogue['look'],
  weight: LookModel['weight'],
): Hypothesis[] => {
  const byId = new Map(kinds.map((kind) => [kind.id, kind]));
  const loose = styles.flatMap((style) => {
    const inside = style.kinds.flatMap((id) => byId.get(id) ?? []);
    const odds = inside.map((_, i) => weight('next-kind') ** i);
    const all = odds.reduce((sum, one) => sum + one, 0);
    return inside.map((kind, i) => ({
      style,
      kind,
      prior: (weight(style.met) * (odds[i] ?? 0)) / all,
    }));
  });
  const total = loose.reduce((sum, { prior }) => sum + prior, 0);
  return loose.map((one) => ({ ...one, prior: one.prior / total }));
};

const featuresOf = (rows: readonly FeatureRow[]): LookModel['features'] => {
  const features = new Map<string, Map<string, Found>>();
  for (const row of rows) {
    const key = ownerKey(row.style || row.kind, row.question);
    const answers = features.get(key) ?? new Map<string, Found>();
    for (const answer of row.answers) answers.set(answer, { how: row.how, row });
    features.set(key, answers);
  }
  return features;
};

/** Arranges the look tables of a catalogue. */
export const lookModel = (catalogue: Catalogue): LookModel => {
  const { look, units } = catalogue;
  const weights = new Map(look.weights.map(({ id, value }) => [id, value]));
  // The check of the data holds every weight to be there.
  const weight: LookModel['weight'] = (id) => weights.get(id) ?? 1;
  return {
    hypotheses: hypothesesOf(look, weight),
    questions: look.questions,
    answers: Map.groupBy(look.answers, ({ question }) => question),
    features: featuresOf(look.features),
    ranges: Map.groupBy(look.ranges, (row) => ownerKey(row.style || row.kind, row.question)),
    weight,
    factor: (unit) => units[unit]?.factor ?? 1,
    si: (unit) => units[unit]?.si,
    known: { spans: new Map(), shares: new Map() },
  };
};
