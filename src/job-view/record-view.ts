import type { JobRecord, RecordEntry } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { printMoment } from '../text/moment.ts';
import { designatorsMarkup } from './designators-view.ts';
import { cardTable } from './table.ts';

const timeOf = (at: string): string => (at === '' ? '' : `${printMoment(at)} UTC`);

const joined = (...texts: string[]): string =>
  texts
    .filter((text) => text.trim() !== '')
    .map((text) => sentence(text))
    .join(' ');

interface RecordGroup {
  designators: readonly string[];
  entry: RecordEntry;
}

/** Designators of which the very same is to be said stand together. */
const grouped = (entries: readonly RecordEntry[]): RecordGroup[] =>
  [
    ...Map.groupBy(entries, (entry) => JSON.stringify({ ...entry, designator: '' })).values(),
  ].flatMap((alike) => {
    const [entry] = alike;
    return entry === undefined
      ? []
      : [{ entry, designators: alike.map(({ designator }) => designator) }];
  });

const namesOf = ({ designators }: RecordGroup): Element =>
  designatorsMarkup(
    designators.filter((name) => name !== ''),
    'No designator',
  );

const isPlanned = ({ entry }: RecordGroup): boolean => entry.decision !== 'leave';

/** What was done of what was decided: tested, fitted, or not yet. */
const doneOf = ({ isDone, decision, done }: RecordEntry): string => {
  if (isDone) return `yes, ${timeOf(done.at)}`;
  return done.done && decision === 'replace' ? 'tested, not replaced yet' : 'not yet';
};

const fittedOf = ({ isDone, fit, verdict, chosenWhy, adjusted }: RecordEntry): string =>
  joined(fit === '' || isDone ? fit : `to fit: ${fit}`, verdict, chosenWhy, adjusted);

const workTable = (groups: readonly RecordGroup[]): Element =>
  cardTable(
    'What was found, fitted and measured',
    ['Part', 'Was, and found', 'Decision and why', 'Fitted', 'Measured after', 'Done', 'Note'],
    groups.map((group) => {
      const { entry } = group;
      return [
        namesOf(group),
        joined(entry.old, entry.found),
        entry.why.trim() === ''
          ? sentence(entry.decision)
          : `${capital(entry.decision)}: ${sentence(entry.why)}`,
        fittedOf(entry),
        entry.measured,
        doneOf(entry),
        joined(entry.done.note, entry.note),
      ];
    }),
  );

const leftTable = (groups: readonly RecordGroup[]): Element =>
  cardTable(
    'What was left alone',
    ['Part', 'What it is, and found', 'Why it was left', 'Note'],
    groups.map((group) => {
      const { entry } = group;
      return [
        namesOf(group),
        joined(entry.old, entry.found, entry.measured),
        sentence(entry.why || 'no reason was given'),
        joined(entry.done.note, entry.note),
      ];
    }),
  );

const section = (title: string, isEmpty: boolean, ...content: Element[]): Element[] =>
  isEmpty ? [] : [h('h3', {}, title), ...content];

/** All that was found, fitted, measured, adjusted and left alone, and why. */
export const recordMarkup = (record: JobRecord): Element[] => {
  const groups = grouped(record.entries);
  const [work, left] = [groups.filter(isPlanned), groups.filter((group) => !isPlanned(group))];
  const { adjustments, checks, badRows } = record;
  return [
    // Paper has this at its head already.
    h('h3', { class: 'screen-only' }, record.title || 'Job without a title'),
    ...[record.equipment, record.note]
      .filter((text) => text !== '')
      .map((text) => h('p', { class: 'screen-only' }, text)),
    ...(groups.length === 0 ? [h('p', {}, 'Nothing to record yet.')] : []),
    ...section('Found, fitted and measured', work.length === 0, workTable(work)),
    ...section('Left alone, and why', left.length === 0, leftTable(left)),
    ...section(
      'Adjustments, in their order',
      adjustments.length === 0,
      cardTable(
        'What was adjusted',
        ['No.', 'What', 'Before', 'After', 'Done'],
        adjustments.map(({ what, before, after, done, at }, index) => [
          String(index + 1),
          what,
          before,
          after,
          done ? `yes, ${timeOf(at)}` : 'not yet',
        ]),
      ),
    ),
    ...section(
      'Closing checks',
      groups.length === 0 && checks.every(({ done }) => !done),
      cardTable(
        'What was checked',
        ['Check', 'Reading', 'Note', 'Done'],
        checks.map(({ title, done, reading, note, at }) => [
          capital(title),
          reading,
          note,
          done ? `yes, ${timeOf(at)}` : 'not yet',
        ]),
      ),
    ),
    ...section(
      'Rows that could not be read',
      badRows.length === 0,
      h(
        'ul',
        {},
        badRows.map(({ row, cells, reason }) =>
          h('li', {}, `Row ${String(row)}: ${cells.join(' | ')}. ${sentence(reason)}`),
        ),
      ),
    ),
  ];
};
