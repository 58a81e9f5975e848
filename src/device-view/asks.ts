import { demandList } from '../components/demand-list.ts';
import type { Catalogue } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import type { DemandRow } from '../schemas/positions.ts';
import type { UseRow } from '../schemas/devices.ts';
import { demandLimit } from '../text/demands.ts';
import { deviceFindingPath } from '../text/finding-path.ts';
import { printNumber } from '../text/numbers.ts';

const byId = <Row extends { id: string }>(rows: readonly Row[]): Record<string, Row> =>
  Object.fromEntries(rows.map((row) => [row.id, row]));

/** Everything that a use asks of a device; each leads to how it is reckoned. */
export const asksList = (catalogue: Catalogue, use: UseRow): Markup[] => {
  const findings = byId(catalogue.devices.findings);
  const worded = {
    ...catalogue,
    findings,
    conditionDefinitions: byId(catalogue.devices.conditionDefinitions),
  };
  const limitOf = (demand: DemandRow): string => {
    if (demand.limit_of !== 'old') return demandLimit(worded, demand);
    const bound = findings[demand.finding]?.better === 'high' ? 'at least' : 'at most';
    return `${bound} ${printNumber(demand.limit ?? 1)} × the old part’s`;
  };
  return demandList(
    catalogue.devices.demands.filter((demand) => demand.position === use.id),
    (demand) => ({
      id: `ask-${demand.id}`,
      name: findings[demand.finding]?.name ?? demand.finding,
      path: deviceFindingPath(demand.finding),
      limit: limitOf(demand),
    }),
  );
};
