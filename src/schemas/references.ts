import type { Reference } from './table.ts';

/** Columns that many tables have, and what they name. */

export const source: Reference = { column: 'source', table: 'sources.csv' };
export const unit: Reference = { column: 'unit', table: 'units.csv' };
export const bodies: Reference = { column: 'bodies', table: 'markings/bodies.csv', many: true };
