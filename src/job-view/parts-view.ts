import { LONGEST_TEXT, type Line } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';

/** A column of the parts list that can be typed in. */
export interface Column {
  field:
    | 'designators'
    | 'kind'
    | 'marking'
    | 'type'
    | 'value'
    | 'tolerance'
    | 'volts'
    | 'position'
    | 'note';
  label: string;
  /** Id of the list of names that the column offers. */
  list?: string;
}

export const COLUMNS: readonly Column[] = [
  { field: 'designators', label: 'Designators' },
  { field: 'kind', label: 'Kind', list: 'kind-names' },
  { field: 'marking', label: 'Marking' },
  { field: 'type', label: 'Type', list: 'type-names' },
  { field: 'value', label: 'Value' },
  { field: 'tolerance', label: 'Tolerance' },
  { field: 'volts', label: 'Voltage or power' },
  { field: 'position', label: 'Position', list: 'position-names' },
  { field: 'note', label: 'Note' },
];

/** What a cell shows of a line; names stand for ids. */
export type CellText = (line: Line, field: Column['field']) => string;

/** A field of one line drops line breaks, and the words around them would run together. */
const onOneLine = (text: string): string => text.replaceAll(/\s*[\r\n]+\s*/gu, ' ');

/** A row of the parts list to type in; rows are counted from one. */
export const partRow = (line: Line, row: number, textOf: CellText): Element =>
  h(
    'tr',
    { 'data-line': line.id, 'aria-rowindex': row + 1 },
    h(
      'td',
      { class: 'pick-line', 'data-label': `Row ${String(row)}` },
      h(
        'label',
        {},
        h('input', { type: 'checkbox', 'data-pick': line.id }),
        h('span', { class: 'hidden-text' }, `Select row ${String(row)}`),
      ),
    ),
    COLUMNS.map(({ field, label, list }) =>
      h(
        'td',
        { 'data-label': label },
        h('input', {
          'data-field': field,
          'aria-label': `${label}, row ${String(row)}`,
          list,
          value: onOneLine(textOf(line, field)) || undefined,
          maxlength: LONGEST_TEXT,
          // Styles tell by it which fields are empty.
          placeholder: ' ',
          autocomplete: 'off',
          spellcheck: 'false',
        }),
      ),
    ),
  );

/** The same row for paper: a field would cut what is longer than itself. */
export const partRowOnPaper = (line: Line, textOf: CellText): Element =>
  h(
    'tr',
    {},
    COLUMNS.map(({ field }) => h('td', {}, textOf(line, field))),
  );
