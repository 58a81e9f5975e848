import type { MarkingTables } from '../../../schemas/markings.ts';
import type { Names } from './names.ts';

type Row<Table extends keyof MarkingTables> = MarkingTables[Table][number];
export type ResistorForm = Row<'resistorForms'> & { bodyBits: number; originBits: number };
export type Eia96MultiplierRow = Row<'eia96Multipliers'> & { bodyBits: number };
export type ResistorCodeRow = Row<'eia96Codes'>;

/** The rows that resistances without a unit are read by, under what they are looked up by. */
export interface ResistorRows {
  forms: readonly ResistorForm[];
  /** By two figures. */
  eia96: ReadonlyMap<string, ResistorCodeRow>;
  letterFirst: ReadonlyMap<string, ResistorCodeRow>;
  /** By letter. */
  multipliers: ReadonlyMap<string, readonly Eia96MultiplierRow[]>;
}

/** Sorts the rows for resistances by what they are looked up by. */
export const resistorRowsOf = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): ResistorRows => ({
  forms: tables.resistorForms.map((row) => ({
    ...row,
    bodyBits: bodies.bitsOf(row.bodies),
    originBits: origins.bitsOf(row.origins),
  })),
  eia96: new Map(tables.eia96Codes.map((row) => [row.code, row])),
  letterFirst: new Map(tables.letterFirstCodes.map((row) => [row.code, row])),
  multipliers: Map.groupBy(
    tables.eia96Multipliers.map((row) => ({ ...row, bodyBits: bodies.bitsOf(row.bodies) })),
    (row) => row.letter,
  ),
});
