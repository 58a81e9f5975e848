import type { DeviceRow } from '../../schemas/devices.ts';
import type { DemandRow, FindingRow } from '../../schemas/positions.ts';
import { ExplainedFinding, siUnitOf } from '../assessment/explained.ts';
import type { Finding, Judged } from '../assessment/finding.ts';
import { timesApart, type Sureness } from '../assessment/sureness.ts';
import type { Limit, Outcome } from '../findings/model.ts';
import { weakestOf } from './known.ts';
import type { DeviceCircumstances, DeviceModel } from './model.ts';

/** A demand of a use with all that is needed to judge devices by it. */
export interface Prepared {
  demand: DemandRow;
  row: FindingRow;
  model: DeviceModel;
  /** What the old device comes to. */
  before: Outcome;
  limit: Limit;
}

/** From this ratio between its ends on, a finding is likely at best, and possible at its square. */
const WIDE = 10;

const SURE = ['sure', 'likely', 'possible'] as const;

const surenessOf = (outcome: Outcome, limit: Limit, unit: string): Sureness => {
  if (outcome.status === 'unknown')
    return { sure: 'possible', basis: 'memory', weakest: outcome.missing };
  const basis = weakestOf(outcome.bases ?? []);
  const apart = unit === 'grade' ? undefined : timesApart(outcome.value, limit);
  const bySpread = apart === undefined || apart < WIDE ? 0 : apart < WIDE ** 2 ? 1 : 2;
  const byBasis = ['published', 'common-practice', 'memory'].indexOf(basis);
  return {
    sure: SURE[Math.max(byBasis, bySpread)] ?? 'possible',
    basis,
    weakest: outcome.properties,
    ...(apart !== undefined && bySpread > byBasis ? { apart } : {}),
  };
};

/** A judged demand with everything that a reader needs to check it. */
export const explain = (
  { model, before }: Prepared,
  judged: Judged,
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): Finding => {
  const { demand, row, outcome, limit } = judged;
  return new ExplainedFinding(judged, before, siUnitOf(circumstances.catalogue, row), {
    working: () =>
      outcome.status === 'known' ? model.working(device, circumstances, outcome.value) : '',
    sources: () =>
      outcome.status === 'known'
        ? [...new Set([...(outcome.sources ?? []), demand.source])]
        : [demand.source],
    sureness: () => surenessOf(outcome, limit, row.unit),
  });
};
