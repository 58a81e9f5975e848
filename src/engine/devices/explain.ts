import type { DeviceRow } from '../../schemas/devices.ts';
import type { DemandRow, FindingRow } from '../../schemas/positions.ts';
import { ExplainedFinding, siUnitOf } from '../assessment/explained.ts';
import { weakestOf } from '../assessment/basis.ts';
import type { SourceId } from '../catalogue.ts';
import type { Finding, Judged } from '../assessment/finding.ts';
import type { WithRules } from '../rule-of-thumb.ts';
import { sureBy, timesApart, type Sureness } from '../assessment/sureness.ts';
import type { Limit, Outcome } from '../findings/model.ts';
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

const surenessOf = (rules: WithRules, outcome: Outcome, limit: Limit, unit: string): Sureness => {
  if (outcome.status === 'unknown')
    return { sure: 'possible', basis: 'memory', weakest: outcome.missing };
  const apart = unit === 'grade' ? undefined : timesApart(rules, outcome.value, limit);
  return { ...sureBy(rules, weakestOf(outcome.bases ?? []), apart), weakest: outcome.properties };
};

class DeviceFinding extends ExplainedFinding {
  readonly #model: DeviceModel;
  readonly #judged: Judged;
  readonly #device: DeviceRow;
  readonly #circumstances: DeviceCircumstances;

  constructor(
    { model, before }: Prepared,
    judged: Judged,
    device: DeviceRow,
    circumstances: DeviceCircumstances,
  ) {
    super(judged, before, siUnitOf(circumstances.catalogue, judged.row));
    this.#model = model;
    this.#judged = judged;
    this.#device = device;
    this.#circumstances = circumstances;
  }

  protected override workOut(): string {
    const { outcome } = this.#judged;
    return outcome.status === 'known'
      ? this.#model.working(this.#device, this.#circumstances, outcome.value)
      : '';
  }

  protected override cite(): SourceId[] {
    const { outcome, demand } = this.#judged;
    const own = outcome.status === 'known' ? (outcome.sources ?? []) : [];
    return [...new Set([...own, demand.source])];
  }

  protected override rate(): Sureness {
    const { outcome, limit, row } = this.#judged;
    return surenessOf(this.#circumstances.catalogue, outcome, limit, row.unit);
  }
}

/** A judged demand with everything that a reader needs to check it. */
export const explain = (
  prepared: Prepared,
  judged: Judged,
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): Finding => new DeviceFinding(prepared, judged, device, circumstances);
