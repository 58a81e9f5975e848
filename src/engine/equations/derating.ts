import type { DeratingRow } from '../../schemas/derating.ts';

/** The straight line of one derating row at a temperature (degC) inside its span. */
const shareIn = (row: DeratingRow, temperature: number): number =>
  row.to_c === row.from_c
    ? Math.min(row.share, row.end_share)
    : row.share +
      ((row.end_share - row.share) * (temperature - row.from_c)) / (row.to_c - row.from_c);

/**
 * Share of the rated voltage that a guideline lets stand across a type at a temperature (degC).
 * Below the first span the first share holds; above the last nothing is allowed. `undefined`
 * where the guideline does not speak of the type.
 */
export const allowedShare = (
  rows: readonly DeratingRow[],
  guideline: string,
  type: string,
  temperature: number,
): { share: number; row: DeratingRow } | undefined => {
  const own = rows
    .filter((row) => row.guideline === guideline && row.types.includes(type))
    .sort((a, b) => a.from_c - b.from_c);
  const first = own[0];
  if (first === undefined) return undefined;
  if (temperature < first.from_c) return { share: first.share, row: first };
  // At the border of two spans the stricter one holds.
  const holding = own.filter((row) => temperature >= row.from_c && temperature <= row.to_c);
  const shares = holding.map((row) => ({ share: shareIn(row, temperature), row }));
  const strictest = shares.sort((a, b) => a.share - b.share)[0];
  return strictest ?? { share: 0, row: own.at(-1) ?? first };
};
