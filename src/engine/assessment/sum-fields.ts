import type { SumInputRow } from '../../schemas/sums.ts';
import type { Finding } from './finding.ts';

/** A bench sum with what a finding puts into its fields, as people write it. */
export interface FilledSum {
  sum: string;
  inputs: Readonly<Record<string, string>>;
}

/** What only parts of other kinds than capacitors fill in. */
const OF_KINDS = [
  'value',
  'mark',
  'mid-travel',
  'setting',
  'rating',
  'rms',
  'by-wiring',
  'wiring',
] as const;
export type KindTakes = (typeof OF_KINDS)[number];

/** Whether a field is one that only other parts than capacitors fill. */
export const isOfKind = (takes: SumInputRow['takes']): takes is KindTakes =>
  OF_KINDS.some((one) => one === takes);

/** What says how a field of a sum is filled: for the findings that it names, or for all. */
interface FieldRow {
  sum: string;
  input: string;
  for: readonly string[];
}

/** How each field of a sum is filled for a finding: by a row of its own, or by that for all. */
const rowsFor = <Row extends FieldRow>(rows: readonly Row[], sum: string, id: string): Row[] => {
  const fitting = rows.filter(
    (row) => row.sum === sum && (row.for.length === 0 || row.for.includes(id)),
  );
  return [...Map.groupBy(fitting, ({ input }) => input).values()].flatMap(
    (own) => own.find((row) => row.for.length > 0) ?? own,
  );
};

/**
 * A sum with each field filled by its row, for a finding. Nothing where the finding leads to no sum, is
 * not known itself, or needs a number that is not known.
 * @param sum id of the sum; empty for none
 * @param fill what a field is filled with: an empty text for one that keeps its number, `undefined`
 *   where it is not known
 */
export const fillSum = <Row extends FieldRow>(
  rows: readonly Row[],
  sum: string | undefined,
  finding: Finding,
  fill: (row: Row) => string | undefined,
): FilledSum | undefined => {
  if (sum === undefined || sum === '' || finding.standIn === undefined) return undefined;
  const inputs: Record<string, string> = {};
  for (const row of rowsFor(rows, sum, finding.finding)) {
    const text = fill(row);
    if (text === undefined) return undefined;
    if (text !== '') inputs[row.input] = text;
  }
  return { sum, inputs };
};
