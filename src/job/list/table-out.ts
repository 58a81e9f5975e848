import type { Line } from '../model/job.ts';
import { safeTable } from './safe-cell.ts';

/** Columns of a line, with the words that head them; each of them is in `column-words.csv`. */
const COLUMNS = [
  ['designators', 'designators'],
  ['kind', 'kind'],
  ['marking', 'marking'],
  ['type', 'type'],
  ['value', 'value'],
  ['tolerance', 'tolerance'],
  ['volts', 'voltage'],
  ['position', 'position'],
  ['note', 'note'],
] as const satisfies readonly (readonly [keyof Line, string])[];

/**
 * The lines as comma-separated values: what was typed of each part and the cells of its other
 * columns. Safe in a spreadsheet, and read back exactly by `readDelimited` and `linesFromRows`.
 */
export const tableOut = (lines: readonly Line[]): string => {
  const others = [...new Set(lines.flatMap(({ rest }) => Object.keys(rest)))];
  return safeTable([
    [...COLUMNS.map(([, word]) => word), ...others],
    ...lines.map((line) => [
      ...COLUMNS.map(([field]) => line[field]),
      ...others.map((name) => (Object.hasOwn(line.rest, name) ? (line.rest[name] ?? '') : '')),
    ]),
  ]);
};
