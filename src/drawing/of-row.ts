import type { DrawingRow } from '../schemas/drawings.ts';
import { isForm } from './forms/index.ts';
import type { PartSpec } from './spec.ts';

const orNothing = <Cell extends string>(cell: Cell): Exclude<Cell, ''> | undefined =>
  cell === '' ? undefined : (cell as Exclude<Cell, ''>);

/**
 * The drawing that a row of a table asks for; nothing where its form is not known, which the check
 * of the data reports.
 */
export const specOfRow = (row: DrawingRow): PartSpec | undefined =>
  isForm(row.form)
    ? {
        form: row.form,
        length: row.length_mm,
        width: row.width_mm,
        height: row.height_mm,
        pitch: row.pitch_mm,
        leadWire: row.lead_mm,
        pins: row.pins,
        colour: orNothing(row.colour),
        finish: orNothing(row.finish),
        tip: orNothing(row.tip),
        bands: row.bands,
        dots: row.dots,
        polarity: orNothing(row.polarity),
        marking: row.marking,
      }
    : undefined;
