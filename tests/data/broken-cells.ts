import { expect, test } from 'vitest';
import { findRow, newFaults, realText, type Pick } from './broken-copy.ts';

/** One cell of the real data made wrong. */
export interface BrokenCell {
  what: string;
  file: string;
  pick: Pick;
  column: string;
  to: string | ((old: string) => string);
  rule: string;
  /** Column that the fault stands in, where it is not the one that was changed. */
  at?: string;
}

/** One test a cell: the fault is found, at its place, and nothing else is. */
export const testBrokenCells = (cells: readonly BrokenCell[]): void => {
  test.each(cells)('$file: $what', ({ file, pick, column, to, rule, at }) => {
    const text = realText(file);
    const row = findRow(text, pick);
    const cell = row[column];
    const blamed = row[at ?? column];
    if (cell === undefined || blamed === undefined) throw new Error(`no column ${column}`);
    const now = typeof to === 'string' ? to : to(cell.text);
    const broken = `${text.slice(0, cell.from)}${now}${text.slice(cell.to)}`;
    // A cell after the changed one on its line moves with it.
    const longer = [...now].length - [...text.slice(cell.from, cell.to)].length;
    const place = blamed.column + (blamed.column > cell.column ? longer : 0);
    expect(newFaults({ [file]: broken })).toEqual([`${file}:${blamed.line}:${place}: ${rule}`]);
  });
};
