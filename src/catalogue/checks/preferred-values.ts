import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'preferred-value';

/** The number without its power of ten: from 1 up to 10. */
const mantissa = (value: number): number => {
  const within = value / 10 ** Math.floor(Math.log10(value));
  return within >= 10 - FLOAT_ERROR ? within / 10 : within;
};

/** Columns with a value that a page shows. */
const SHOWN = ['reference_c', 'roomy_c'] as const;

export const preferredValues: Check = {
  id: rule,
  about: 'The value that a page shows is a preferred one, of E24.',
  needs: ['positions.csv', 'e-series.csv'],
  check: (tables) => {
    const preferred = valuesOf(tables, 'e-series.csv').flatMap((row) =>
      row.series === 'E24' ? [row.value] : [],
    );
    return goodRows(tables, 'positions.csv').flatMap((row) =>
      SHOWN.flatMap((column) => {
        const shown = row.value[column];
        if (shown === undefined) return [];
        const own = mantissa(shown);
        if (preferred.some((value) => Math.abs(value - own) <= FLOAT_ERROR * value)) return [];
        return [
          cellFault(rule, 'positions.csv', row, column, {
            wrong: 'not a preferred value',
            expected: 'a value of E24',
          }),
        ];
      }),
    );
  },
};
