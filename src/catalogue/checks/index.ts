import type { Fault } from '../fault.ts';
import type { Tables } from '../read-folder.ts';
import type { Check } from './check.ts';

/** Every rule that tables keep among themselves. */
export const checks: readonly Check[] = [];

/** Runs every rule whose tables could be read, and returns every fault that they find. */
export const checkTables = (tables: Tables): Fault[] =>
  checks
    .filter(({ needs }) => needs.every((file) => tables[file].readable))
    .flatMap(({ check }) => check(tables));
