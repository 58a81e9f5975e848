import type { JobRecord } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { cardTable } from './table.ts';

const timeOf = (at: string): string =>
  at === '' ? '' : `${at.slice(0, 16).replace('T', ' ')} UTC`;
const joined = (...texts: string[]): string => texts.filter((text) => text !== '').join('. ');

/** All that was found, fitted, measured and left alone, and why. */
export const recordMarkup = (record: JobRecord): Element[] => [
  h('h3', {}, record.title || 'Job without a title'),
  ...(record.invented === '' ? [] : [h('p', {}, h('strong', {}, sentence(record.invented)))]),
  ...[record.equipment, record.note].filter((text) => text !== '').map((text) => h('p', {}, text)),
  record.entries.length === 0
    ? h('p', {}, 'Nothing to record yet.')
    : cardTable(
        'What was done',
        ['Part', 'Was', 'Decision and why', 'To fit', 'Done', 'Before, after', 'Note'],
        record.entries.map((entry) => [
          entry.designator,
          joined(entry.old, entry.found),
          `${capital(entry.decision)}: ${entry.why}`,
          joined(entry.fit, entry.verdict, entry.chosenWhy, entry.adjusted),
          entry.done.done ? `yes ${timeOf(entry.done.at)}` : 'no',
          [entry.done.before, entry.done.after].filter((text) => text !== '').join(' → '),
          joined(entry.done.note, entry.note),
        ]),
      ),
  ...(record.badRows.length === 0
    ? []
    : [
        h('h3', {}, 'Rows that could not be read'),
        h(
          'ul',
          {},
          record.badRows.map(({ row, cells, reason }) =>
            h('li', {}, `Row ${String(row)}: ${cells.join(' | ')}. ${sentence(reason)}`),
          ),
        ),
      ]),
  ...(record.checks.length === 0
    ? []
    : [
        h('h3', {}, 'Closing checks'),
        cardTable(
          'What was checked',
          ['Check', 'Done', 'Reading', 'Note', 'When'],
          record.checks.map(({ title, done, reading, note, at }) => [
            capital(title),
            done ? 'yes' : 'no',
            reading,
            note,
            timeOf(at),
          ]),
        ),
      ]),
];
