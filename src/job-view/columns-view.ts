import type { ColumnField, LinesIn, Mapping, Row } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';
import { countOf, sentence } from '../text/words.ts';
import { cardTable } from './table.ts';

/** What a column may hold, as it is offered. */
export const COLUMN_WORDS: Readonly<Record<ColumnField, string>> = {
  designators: 'designators',
  quantity: 'quantity',
  kind: 'kind',
  marking: 'marking',
  type: 'type',
  value: 'value',
  tolerance: 'tolerance',
  volts: 'rated voltage',
  position: 'position',
  note: 'note',
};

const PREVIEW = 5;
const MOST_SAID = 20;

const columnChoice = (at: number, head: string, chosen: ColumnField | undefined): Element =>
  h(
    'label',
    {},
    `Column ${String(at + 1)}${head === '' ? '' : `, “${head.slice(0, 40)}”`} `,
    h(
      'select',
      { 'data-column': at },
      h('option', { value: '', selected: chosen === undefined }, 'kept beside'),
      Object.entries(COLUMN_WORDS).map(([field, word]) =>
        h('option', { value: field, selected: chosen === field }, word),
      ),
    ),
  );

/** What columns to take a table's cells for: the guess, to be changed, the first rows, the bad ones. */
export const columnsMarkup = (
  rows: readonly Row[],
  { hasHeader, fields }: Mapping,
  { lines, badRows, said }: LinesIn,
): Element[] => [
  h('h3', { id: 'table-title', tabindex: -1 }, 'What do the columns hold?'),
  h(
    'label',
    { class: 'tick' },
    h('input', { type: 'checkbox', 'data-header': true, checked: hasHeader }),
    ' The first row names the columns',
  ),
  h(
    'div',
    { class: 'job-bar' },
    fields.map((field, at) => columnChoice(at, hasHeader ? (rows[0]?.cells[at] ?? '') : '', field)),
  ),
  cardTable(
    'First rows',
    fields.map((field, at) =>
      field === undefined ? `column ${String(at + 1)}` : COLUMN_WORDS[field],
    ),
    rows
      .slice(hasHeader ? 1 : 0, PREVIEW + 1)
      .map(({ cells }) => fields.map((_, at) => cells[at] ?? '')),
  ),
  h('p', {}, `${countOf(lines.length, 'row')} to add, ${String(badRows.length)} not understood.`),
  h(
    'ul',
    { class: 'small' },
    [
      ...badRows.map(({ row, reason }) => `Row ${String(row)}: ${sentence(reason)}`),
      ...said.map(sentence),
    ]
      .slice(0, MOST_SAID)
      .map((text) => h('li', {}, text)),
  ),
  h(
    'p',
    { class: 'actions' },
    h('button', { type: 'button', 'data-table': 'take' }, 'Add these rows'),
    h('button', { type: 'button', 'data-table': 'drop' }, 'Leave it'),
  ),
];
