import type { Catalogue } from '../engine/index.ts';

/** What may be printed on a part. */
export interface Printed {
  type: string;
  /** F. */
  capacitance: number;
  /** V. */
  ratedVoltage?: number | undefined;
  voltageKind?: 'dc' | 'ac' | undefined;
  /** As fractions. */
  tolerance?: { minus: number; plus: number } | undefined;
  /** Code of its temperature characteristic. */
  characteristic?: string | undefined;
}

export const printedOn = (
  _catalogue: Catalogue,
  lines: readonly string[],
  _part: Printed,
): string[] => lines.map((l) => l.replace(/\{[^}]*\}/g, '').trim()).filter((l) => l !== '');
