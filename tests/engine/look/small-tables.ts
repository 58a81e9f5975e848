import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Catalogue } from '../../../src/engine/catalogue.ts';
import type {
  AnswerRow,
  FeatureRow,
  KindRow,
  LookRangeRow,
  LookTables,
  QuestionRow,
  StyleRow,
  WeightRow,
} from '../../../src/schemas/look.ts';

const provenance = { source: 'trade', locator: '', basis: 'common-practice', note: '' } as const;

export const style = (id: string, kinds: string[], met: StyleRow['met']): StyleRow => ({
  ...{ id, name: id, group: 'invented', kinds, met, recognise: 'invented' },
  ...provenance,
});

export const kind = (id: string, is: KindRow['is'] = 'capacitor'): KindRow => ({
  ...{ id, name: id, is, type: '' },
});

export const question = (
  id: string,
  asked: QuestionRow['kind'],
  more: Partial<QuestionRow> = {},
): QuestionRow => ({
  ...{ id, name: id, text: id, kind: asked, part: '', unit: 'grade', scale: '', sign: '' },
  ...{ lowest: undefined, highest: undefined, near: undefined, effort: 1, counts: 1 },
  ...{ unless: '', bare: '', hint: '', how: '', cautions: [] },
  ...more,
});

export const answersTo = (asked: string, ...ids: string[]): AnswerRow[] =>
  ids.map((id) => ({ question: asked, id, name: id, meaning: '', drawn: '' }));

/** Whose a row is: a style's, or that of what is inside. */
export type Owner = string | { kind: string };

const owned = (owner: Owner) =>
  typeof owner === 'string' ? { style: owner, kind: '' } : { style: '', kind: owner.kind };

export const feature = (
  owner: Owner,
  asked: string,
  answers: string[],
  how: FeatureRow['how'],
): FeatureRow => ({ ...owned(owner), question: asked, answers, how, ...provenance });

export const span = (owner: Owner, asked: string, ends: Partial<LookRangeRow>): LookRangeRow => ({
  ...owned(owner),
  ...{ question: asked, low: undefined, usual_low: undefined, usual_high: undefined },
  ...{ high: undefined, unit: 'grade', conditions: '' },
  ...provenance,
  ...ends,
});

/** Round figures to reckon with by hand. */
const WEIGHTS: Record<WeightRow['id'], number> = {
  usual: 1,
  sometimes: 0.5,
  seldom: 0.25,
  'mark-usual': 0.8,
  'mark-sometimes': 0.4,
  'mark-seldom': 0.1,
  'mark-stray': 0.02,
  common: 1,
  met: 0.5,
  rare: 0.25,
  'next-kind': 0.5,
  wrong: 0.1,
  edge: 0.5,
  foreign: 0.1,
};

const catalogue = loadCatalogue();

/** The catalogue with an invented key of few styles. */
export const small = (tables: Partial<LookTables>): Catalogue => ({
  ...catalogue,
  look: {
    ...{ styles: [], kinds: [], questions: [], answers: [], features: [], ranges: [] },
    ...{ disguises: [], drawings: [], signs: [] },
    weights: Object.entries(WEIGHTS).map(([id, value]) => ({
      ...{ id: id as WeightRow['id'], value, meaning: 'invented' },
      ...provenance,
    })),
    ...tables,
  },
});
