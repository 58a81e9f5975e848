import { safeTable } from '../list/safe-cell.ts';
import type { JobRecord } from './record.ts';

const COLUMNS = [
  'Designator',
  'Old part',
  'Found',
  'Decision',
  'Decided by',
  'Why',
  'Fitted',
  'Verdict',
  'Why this part',
  'Adjusted',
  'Done',
  'Measured after',
  'At',
  'Note',
] as const;
type Column = (typeof COLUMNS)[number];

const rowOf = (cells: Readonly<Partial<Record<Column, string>>>): string[] =>
  COLUMNS.map((column) => cells[column] ?? '');

const yesOrNo = (is: boolean): string => (is ? 'yes' : 'no');

/**
 * The record as comma-separated values that are safe in a spreadsheet: parts, rows that could not be
 * read, adjustments in their order, checks.
 */
export const recordCsv = ({ entries, badRows, adjustments, checks }: JobRecord): string =>
  safeTable([
    [...COLUMNS],
    ...entries.map((entry) =>
      rowOf({
        Designator: entry.designator,
        'Old part': entry.old,
        Found: entry.found,
        Decision: entry.decision,
        'Decided by': entry.decidedBy,
        Why: entry.why,
        Fitted: entry.isDone ? entry.fit : '',
        Verdict: entry.verdict,
        'Why this part': entry.chosenWhy,
        Adjusted: entry.adjusted,
        Done: yesOrNo(entry.isDone),
        'Measured after': entry.measured,
        At: entry.done.at,
        Note: [entry.done.note, entry.note].filter((text) => text !== '').join('; '),
      }),
    ),
    ...badRows.map(({ row, cells, reason }) =>
      rowOf({ Designator: `row ${String(row)}`, 'Old part': cells.join(' | '), Why: reason }),
    ),
    ...adjustments.map(({ what, before, after, done, at }, index) =>
      rowOf({
        Designator: `adjustment ${String(index + 1)}`,
        'Old part': what,
        Found: before,
        Done: yesOrNo(done),
        'Measured after': after,
        At: at,
      }),
    ),
    ...checks.map(({ title, done, reading, note, at }) =>
      rowOf({
        Designator: 'check',
        'Old part': title,
        Done: yesOrNo(done),
        'Measured after': reading,
        At: at,
        Note: note,
      }),
    ),
  ]);
