import type { TableName } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'out-of-bounds';

/** Farads: below it the leads are the part, above it there are only stores of energy, which back no memory up. */
const CAPACITANCE = { smallest: 1e-13, largest: 10 };

/** Columns that hold a capacitance in farad. */
export const capacitances: readonly { file: TableName; columns: readonly string[] }[] = [
  { file: 'types.csv', columns: ['old_c_min', 'old_c_max'] },
  { file: 'market.csv', columns: ['c_min', 'c_max'] },
  { file: 'bodies.csv', columns: ['c_min', 'c_max'] },
  { file: 'pulse-ratings.csv', columns: ['c_min', 'c_max'] },
  { file: 'series-resistance.csv', columns: ['capacitance'] },
  { file: 'value-lists.csv', columns: ['value'] },
  { file: 'positions.csv', columns: ['reference_c', 'roomy_c', 'usual_c_min', 'usual_c_max'] },
];

export const capacitanceBounds: Check = {
  id: rule,
  about: 'A capacitance is one that capacitors are made in.',
  needs: [],
  check: (tables) =>
    capacitances.flatMap(({ file, columns }) =>
      tables[file].rows.flatMap((row) => {
        const value: Readonly<Record<string, unknown>> = row.value ?? {};
        return columns.flatMap((column) => {
          const farads = value[column];
          if (typeof farads !== 'number') return [];
          if (farads >= CAPACITANCE.smallest && farads <= CAPACITANCE.largest) return [];
          return [
            cellFault(rule, file, row, column, {
              wrong: 'a capacitance that no part has',
              expected: `${CAPACITANCE.smallest} to ${CAPACITANCE.largest} F`,
            }),
          ];
        });
      }),
    ),
};
