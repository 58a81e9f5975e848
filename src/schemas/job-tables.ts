import { closingCheckRow, fittingOrderRow, leadFormingRow, type JobTables } from './job.ts';
import type { Reference, Table } from './tables.ts';

/** A table of `data/job/`, and the property of the job tables that it fills. */
export interface JobTable extends Table {
  name: keyof JobTables;
}

const source: Reference = { column: 'source', table: 'sources.csv' };

/** Every table that work on a whole board goes by, by file name. */
export const jobTables = {
  'job/fitting-order.csv': {
    name: 'fittingOrder',
    row: fittingOrderRow,
    key: ['id'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'In which order parts are fitted, and why.',
  },
  'job/closing-checks.csv': {
    name: 'closingChecks',
    row: closingCheckRow,
    key: ['id'],
    references: [
      source,
      { column: 'positions', table: 'positions.csv', many: true },
      { column: 'cautions', table: 'cautions.csv', many: true },
    ],
    about: 'Checks of a board after its parts are in.',
  },
  'job/lead-forming.csv': {
    name: 'leadForming',
    row: leadFormingRow,
    key: ['id'],
    references: [source],
    about: 'How leads are bent to another pitch.',
  },
} as const satisfies Record<string, JobTable>;
