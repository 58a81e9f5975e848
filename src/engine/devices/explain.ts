import type { DeviceRow } from '../../schemas/devices.ts';
import type { DemandRow, FindingRow } from '../../schemas/positions.ts';
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

/** A figure of nothing at all is this far inside its limit, so that a margin stays a number. */
const LEAST_BEYOND = 1e-12;

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
  { demand, row, outcome, limit, beyond, verdict }: Judged,
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): Finding => {
  const shared = {
    demand: demand.id,
    finding: row.id,
    name: row.name,
    weight: demand.weight,
    unit: circumstances.catalogue.units[row.unit]?.si ?? row.unit,
    ...(before.status === 'known' ? { original: before.value } : {}),
    limit,
    verdict,
    equation: row.equation,
    why: demand.why,
    ...surenessOf(outcome, limit, row.unit),
  };
  if (outcome.status === 'unknown') {
    const { missing } = outcome;
    const property = missing[0] ?? row.id;
    const sources = [demand.source];
    return { ...shared, property, margin: 0, missing, working: 'not known', sources };
  }
  return {
    ...shared,
    property: outcome.properties[0] ?? row.id,
    standIn: outcome.value,
    margin: 1 / Math.max(beyond.unfavourable, LEAST_BEYOND),
    missing: [],
    working: model.working(device, circumstances, outcome.value),
    sources: [...new Set([...(outcome.sources ?? []), demand.source])],
  };
};
