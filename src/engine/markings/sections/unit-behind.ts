import { unitsFoundAt, type Scan } from '../lexicon/scan.ts';
import { isFigure, isLetter, skipBlanks } from '../text/text.ts';
import type { Use } from '../meanings/token.ts';

/** A unit of capacitance behind several numbers, in full or as a letter, and where it ends. */
export interface UnitBehind {
  factor: number;
  name: string;
  use: Use;
  bodies: number;
  origins: number;
  source: string;
  end: number;
}

/** A unit of several numbers, with how readily they are believed with it. */
export interface BelievedUnit extends Omit<UnitBehind, 'use'> {
  weight: number;
}

/** A unit in full; the longest where several begin alike. */
const fullUnitAt = (scan: Scan, at: number): UnitBehind[] => {
  const units = unitsFoundAt(scan, at).flatMap(({ item, end, sameCase, assumed }) =>
    item.row.quantity === 'capacitance' &&
    assumed.length === 0 &&
    (sameCase || !item.row.exact_case) &&
    !isLetter(scan.marking.text.charAt(end))
      ? [
          {
            ...item.row,
            name: ` (${item.row.name})`,
            bodies: item.bodies,
            origins: item.origins,
            end,
          },
        ]
      : [],
  );
  const longest = Math.max(...units.map(({ end }) => end));
  return units.filter(({ end }) => end === longest);
};

/** A letter for the unit, as in `50µ+50µ`. */
const letterUnitAt = ({ lexicon, marking: { text } }: Scan, at: number): UnitBehind[] => {
  if (isLetter(text.charAt(at + 1)) || isFigure(text.charAt(at + 1))) return [];
  const rows = lexicon.values.points.get(text.charAt(at)) ?? [];
  // Thousands behind several numbers are the ohms of potentiometers on one shaft.
  const isOfOhms = rows.some(
    ({ quantity, factor }) => quantity === 'resistance' && factor === 1000,
  );
  if (isOfOhms) return [];
  return rows
    .filter(
      ({ quantity, use, places }) =>
        quantity === 'capacitance' && use === 'usual' && places.includes('end'),
    )
    .map((row) => ({
      ...row,
      name: '',
      bodies: row.bodyBits,
      origins: row.originBits,
      end: at + 1,
    }));
};

/** The units that may stand at an index for all the numbers before it; a letter where none is in full. */
export const unitAt = (scan: Scan, at: number): UnitBehind[] => {
  const full = fullUnitAt(scan, at);
  return full.length > 0 ? full : letterUnitAt(scan, at);
};

/** Index after a unit of capacitance, or the same index where there is none. */
export const behindUnit = (scan: Scan, at: number): number => {
  const start = skipBlanks(scan.marking, at);
  return unitAt(scan, start)[0]?.end ?? at;
};
