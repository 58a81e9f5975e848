import { drawingReferences } from './drawings.ts';
import {
  answerRow,
  disguiseRow,
  featureRow,
  kindRow,
  lookRangeRow,
  questionRow,
  signRow,
  styleDrawingRow,
  styleRow,
  weightRow,
  type LookTables,
} from './look.ts';
import { source, unit } from './references.ts';
import type { Reference, Table } from './table.ts';

/** A table of `data/look/`, and the property of the look tables that it fills. */
export interface LookTable extends Table {
  name: keyof LookTables;
}

const style: Reference = { column: 'style', table: 'look/styles.csv' };
const kind: Reference = { column: 'kind', table: 'look/kinds.csv' };
const question: Reference = { column: 'question', table: 'look/questions.csv' };

/** Every table that a part is named with by its look, by file name. */
export const lookTables = {
  'look/styles.csv': {
    name: 'styles',
    row: styleRow,
    key: ['id'],
    references: [source, { column: 'kinds', table: 'look/kinds.csv', many: true }],
    about: 'Ways in which parts look, and what may be inside.',
  },
  'look/kinds.csv': {
    name: 'kinds',
    row: kindRow,
    key: ['id'],
    references: [{ column: 'type', table: 'types.csv', orTable: 'kinds/types.csv' }],
    about: 'What parts are made of, as far as a look and a test tell.',
  },
  'look/questions.csv': {
    name: 'questions',
    row: questionRow,
    key: ['id'],
    references: [
      unit,
      { column: 'unless', table: 'look/questions.csv' },
      { column: 'cautions', table: 'cautions.csv', many: true },
    ],
    about: 'What to look at and to measure, and how much it counts.',
  },
  'look/answers.csv': {
    name: 'answers',
    row: answerRow,
    key: ['question', 'id'],
    references: [question, { column: 'drawn', table: 'look/styles.csv' }],
    about: 'Answers to the questions that have fixed ones.',
  },
  'look/features.csv': {
    name: 'features',
    row: featureRow,
    key: ['style', 'kind', 'question', 'answers'],
    references: [source, style, kind, question],
    about: 'What each style answers, and how often.',
  },
  'look/ranges.csv': {
    name: 'ranges',
    row: lookRangeRow,
    key: ['style', 'kind', 'question', 'low', 'high', 'conditions'],
    references: [source, style, kind, question, unit],
    about: 'Years, values and sizes of each style; bench readings of each kind.',
  },
  'look/disguises.csv': {
    name: 'disguises',
    row: disguiseRow,
    key: ['style', 'other', 'words'],
    references: [source, style, { column: 'other', table: 'look/styles.csv' }],
    about: 'What is taken for what, and what settles it.',
  },
  'look/drawings.csv': {
    name: 'drawings',
    row: styleDrawingRow,
    key: ['style'],
    references: [style, ...drawingReferences],
    about: 'How each style is drawn, with an invented marking.',
  },
  'look/weights.csv': {
    name: 'weights',
    row: weightRow,
    key: ['id'],
    references: [source],
    about: 'Rules of thumb that likelihoods are calculated with.',
  },
  'look/signs.csv': {
    name: 'signs',
    row: signRow,
    key: ['id'],
    references: [source],
    about: 'What the loss at 120 Hz over that at 1 kHz says of a part.',
  },
} as const satisfies Record<string, LookTable>;
