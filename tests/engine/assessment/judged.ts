import type { Judged } from '../../../src/engine/assessment/finding.ts';
import { verdictFor } from '../../../src/engine/assessment/verdict.ts';
import type { DemandRow, FindingRow } from '../../../src/schemas/positions.ts';
import { catalogue } from './setting.ts';

export type Weight = DemandRow['weight'];

const demandRow = catalogue.demands[0];
const findingRow = catalogue.findings['droop'];
if (demandRow === undefined || findingRow === undefined) throw new Error('an empty catalogue');

/** One demand that a part is beyond by a ratio, or inside of below one. */
export const judged = (
  weight: Weight,
  unfavourable: number,
  { typical = unfavourable, graded = true, id = String(weight) } = {},
): Judged => {
  const demand: DemandRow = { ...demandRow, id, weight };
  const row: FindingRow = { ...findingRow, graded };
  const beyond = { unfavourable, typical };
  return {
    demand,
    row,
    outcome: { status: 'unknown', missing: [] },
    limit: {},
    beyond,
    verdict: verdictFor(catalogue.verdictRules, weight, beyond),
  };
};
