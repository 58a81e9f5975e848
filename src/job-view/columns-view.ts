import {
  isDecimalAsked,
  type ColumnField,
  type DecimalSign,
  type LinesIn,
  type Mapping,
  type Row,
} from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
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

/** Asked where numbers such as 1.000 mean something else with the other sign. */
const decimalChoice = (decimal: DecimalSign | undefined): Element =>
  h(
    'p',
    { class: 'job-bar' },
    h(
      'label',
      {},
      'Decimal sign ',
      h(
        'select',
        { 'data-decimal': true },
        [
          ['', 'either: 1.000 and 1,000 are one'],
          ['point', 'point: 4.7, and 1,000 is a thousand'],
          ['comma', 'comma: 4,7, and 1.000 is a thousand'],
        ].map(([value, word]) => h('option', { value, selected: value === (decimal ?? '') }, word)),
      ),
    ),
  );

/** What columns to take a table's cells for: the guess, to be changed, the first rows, the bad ones. */
export const columnsMarkup = (
  rows: readonly Row[],
  mapping: Mapping,
  { lines, badRows, said }: LinesIn,
): Element[] => [
  h('h3', { id: 'table-title', tabindex: -1 }, 'What do the columns hold?'),
  h(
    'label',
    { class: 'tick' },
    h('input', { type: 'checkbox', 'data-header': true, checked: mapping.hasHeader }),
    ' The first row names the columns',
  ),
  ...(isDecimalAsked(rows, mapping) ? [decimalChoice(mapping.decimal)] : []),
  h(
    'div',
    { class: 'job-bar' },
    mapping.fields.map((field, at) =>
      columnChoice(at, mapping.hasHeader ? (rows[0]?.cells[at] ?? '') : '', field),
    ),
  ),
  cardTable(
    'First rows',
    mapping.fields.map((field, at) =>
      field === undefined ? `column ${String(at + 1)}` : COLUMN_WORDS[field],
    ),
    rows
      .slice(mapping.hasHeader ? 1 : 0, PREVIEW + 1)
      .map(({ cells }) => mapping.fields.map((_, at) => cells[at] ?? '')),
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
