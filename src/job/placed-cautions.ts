import type { CautionRow } from '../schemas/cautions.ts';

/** A caution where the work is. */
export interface PlacedCaution {
  row: CautionRow;
  /** Whether it stands here for the first time on the sheet, with all its words. */
  isFirst: boolean;
}

const GRAVITY: readonly CautionRow['severity'][] = ['danger', 'care'];

/** Each caution once, the gravest first. */
export const gravestFirst = (cautions: Iterable<CautionRow>): CautionRow[] =>
  [...new Map([...cautions].map((row) => [row.id, row])).values()].toSorted(
    (a, b) => GRAVITY.indexOf(a.severity) - GRAVITY.indexOf(b.severity),
  );

/** Places cautions from the top of a sheet to its end, and knows which stood before. */
export const newPlacing = (): ((rows: readonly CautionRow[]) => PlacedCaution[]) => {
  const seen = new Set<string>();
  return (rows) =>
    gravestFirst(rows).map((row) => {
      const isFirst = !seen.has(row.id);
      seen.add(row.id);
      return { row, isFirst };
    });
};
