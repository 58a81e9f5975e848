import type { z } from 'zod';

/** A cell that must name a row of another table. */
export interface Reference {
  column: string;
  table: string;
  /** Other tables that the row may be in instead. */
  orTable?: string | readonly string[];
  /** The cell holds several, joined by `;`. */
  many?: true;
  /** What is named in order may be named twice, such as the colours of bands. */
  inOrder?: true;
}

/** One CSV of `data/`: what its rows look like, what makes a row unique, what it points at. */
export interface Table {
  row: z.ZodObject;
  /** Columns that together are unique. */
  key: string[];
  references: Reference[];
  about: string;
}
