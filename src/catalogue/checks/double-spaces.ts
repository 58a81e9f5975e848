import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'double-space';

export const doubleSpaces: Check = {
  id: rule,
  about: 'No cell has two spaces together.',
  needs: [],
  check: ofEachTable((tables, file) =>
    tables[file].rows.flatMap((row) =>
      Object.entries(row.cells)
        .filter(([, cell]) => /\s\s/.test(cell))
        .map(([column]) =>
          cellFault(rule, file, row, column, {
            wrong: 'two spaces together',
            expected: 'one space between words',
          }),
        ),
    ),
  ),
};
