import type { EsrOfNewRow } from '../../schemas/triage.ts';
import { logBetween, logShare, TABLE_ROUNDING } from '../sizes/interpolate.ts';

/** A row at or below and a row at or above a value, the same one where it is tabulated. */
const around = <Row>(
  rows: readonly Row[],
  value: number,
  at: (row: Row) => number,
): [Row, Row] | undefined => {
  const sorted = rows.toSorted((a, b) => at(a) - at(b));
  const below = sorted.findLast((row) => at(row) <= value * (1 + TABLE_ROUNDING));
  const above = sorted.find((row) => at(row) >= value * (1 - TABLE_ROUNDING));
  return below === undefined || above === undefined ? undefined : [below, above];
};

/** Series resistance (ohm) at one tabulated rating, on logarithmic scales between its values. */
const atRating = (rows: readonly EsrOfNewRow[], farad: number): number | undefined => {
  const pair = around(rows, farad, (row) => row.capacitance);
  if (pair === undefined) return undefined;
  const [below, above] = pair;
  return logBetween(below.esr, above.esr, logShare(farad, below.capacitance, above.capacitance));
};

/**
 * What a meter reads (ohm) on a new wet aluminium part, of esr-of-new.csv. Read on logarithmic
 * scales between tabulated values and ratings; ratings beyond the table take its first or last one.
 * Nothing where no rating is tabulated at the value.
 *
 * @param farad marked value, F
 * @param volt rated voltage, V
 */
export const esrOfNew = (
  table: readonly EsrOfNewRow[],
  grade: EsrOfNewRow['grade'],
  farad: number,
  volt: number,
): number | undefined => {
  const byRating = Map.groupBy(
    table.filter((row) => row.grade === grade),
    (row) => row.rated_voltage,
  );
  const read = [...byRating].flatMap(([rating, rows]) => {
    const esr = atRating(rows, farad);
    return esr === undefined ? [] : [{ rating, esr }];
  });
  const ratings = read.map(({ rating }) => rating);
  const within = Math.min(Math.max(volt, Math.min(...ratings)), Math.max(...ratings));
  const pair = around(read, within, ({ rating }) => rating);
  if (pair === undefined) return undefined;
  const [below, above] = pair;
  return logBetween(below.esr, above.esr, logShare(within, below.rating, above.rating));
};
