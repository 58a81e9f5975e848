import type { UnitRow } from '../schemas/values.ts';

/** Units by name. */
export type Units = Readonly<Record<string, UnitRow>>;

/** Brings a number to SI; nothing where the unit is not in the table. */
export const toSi = (value: number, unit: string, units: Units): number | undefined => {
  const row = units[unit];
  return row === undefined ? undefined : value * row.factor;
};
