import type { SumInputRow } from '../../schemas/sums.ts';
import type { Catalogue } from '../catalogue.ts';
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

/** How each field of a sum is filled for a finding: by a row of its own, or by that for all. */
const rowsFor = ({ sumInputs }: Pick<Catalogue, 'sumInputs'>, sum: string, id: string) => {
  const fitting = sumInputs.filter(
    (row) => row.sum === sum && (row.for.length === 0 || row.for.includes(id)),
  );
  return [...Map.groupBy(fitting, ({ input }) => input).values()].flatMap(
    (rows) => rows.find((row) => row.for.length > 0) ?? rows,
  );
};

/**
 * The sum that a finding leads to, each field filled by its row. Nothing where there is none or where
 * one of its numbers is not known.
 * @param fill what a field is filled with: nothing for one that keeps its number, `undefined` where it
 * is not known
 */
export const fillSum = (
  catalogue: Pick<Catalogue, 'findings' | 'sumInputs'>,
  finding: Finding,
  fill: (row: SumInputRow) => string | undefined,
): FilledSum | undefined => {
  const sum = catalogue.findings[finding.finding]?.sum ?? '';
  if (sum === '' || finding.standIn === undefined) return undefined;
  const inputs: Record<string, string> = {};
  for (const row of rowsFor(catalogue, sum, finding.finding)) {
    const text = fill(row);
    if (text === undefined) return undefined;
    if (text !== '') inputs[row.input] = text;
  }
  return { sum, inputs };
};
