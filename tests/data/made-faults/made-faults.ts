import { tableNames } from '../../../src/catalogue/index.ts';
import { cellsOf, realText } from '../broken-copy.ts';
import { SLIPS } from './cell-slips.ts';
import { drawFrom, some } from './draw.ts';
import { fileFaults, rowFaults, type Intact, type MadeFault } from './file-slips.ts';

/** Of each kind of slip, so many cells of each table. */
const CELLS_OF_A_KIND = 1;
const ROWS_OF_A_TABLE = 1;

const intact: readonly Intact[] = tableNames.map((file) => {
  const text = realText(file);
  return { file, text, rows: cellsOf(text) };
});

const cellFaults = (table: Intact, draw: () => number): MadeFault[] =>
  SLIPS.flatMap(({ kind, slip }) => {
    const possible = table.rows.flatMap((row) =>
      Object.entries(row).flatMap(([column, cell]) => {
        const to = slip(cell.text, { file: table.file, column, row });
        return to === undefined || to === cell.text ? [] : [{ column, cell, to }];
      }),
    );
    return some(possible, CELLS_OF_A_KIND, draw).map(({ column, cell, to }) => ({
      kind,
      file: table.file,
      line: cell.line,
      what: `${column}: ${JSON.stringify(cell.text)} as ${JSON.stringify(to)}`,
      text: `${table.text.slice(0, cell.from)}${to}${table.text.slice(cell.to)}`,
    }));
  });

/** Faults made in the real tables, of every kind in every table where it makes sense. */
export const madeFaults = (seed: number): MadeFault[] => {
  const draw = drawFrom(seed);
  return intact.flatMap((table) => [
    ...fileFaults(table),
    ...some(table.rows, ROWS_OF_A_TABLE, draw).flatMap((row) => rowFaults(table, row)),
    ...cellFaults(table, draw),
  ]);
};
