import { href } from '../components/links.ts';
import type { Catalogue } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { UseRow } from '../schemas/devices.ts';
import { demandLimit } from '../text/demands.ts';
import { deviceFindingPath } from '../text/finding-path.ts';
import { sentence } from '../text/words.ts';

const byId = <Row extends { id: string }>(rows: readonly Row[]): Record<string, Row> =>
  Object.fromEntries(rows.map((row) => [row.id, row]));

const WEIGHTS = { hard: 'Must', strong: 'Should', mild: 'Better if' } as const;

const COLUMNS = ['Asked', 'Weight', 'Limit', 'Why'];

/** Everything that a use asks of a device; each leads to how it is reckoned. */
export const asksTable = (catalogue: Catalogue, use: UseRow): Markup => {
  const findings = byId(catalogue.devices.findings);
  const worded = {
    ...catalogue,
    findings,
    conditionDefinitions: byId(catalogue.devices.conditionDefinitions),
  };
  const rows = catalogue.devices.demands
    .filter((demand) => demand.position === use.id)
    .map((demand) => {
      const finding = findings[demand.finding];
      const limit =
        demand.limit_of === 'old'
          ? `${demand.limit ?? 1} × the old part’s`
          : demandLimit(worded, demand);
      return h(
        'tr',
        { id: `ask-${demand.id}` },
        h(
          'th',
          { scope: 'row' },
          h(
            'a',
            { href: href(deviceFindingPath(demand.finding)) },
            finding?.name ?? demand.finding,
          ),
        ),
        h('td', {}, WEIGHTS[demand.weight]),
        h('td', {}, limit),
        h('td', {}, sentence(demand.why)),
      );
    });
  return h(
    'div',
    {
      class: 'table-scroll',
      tabindex: 0,
      role: 'region',
      'aria-label': 'Each demand, its weight and limit',
    },
    h(
      'table',
      { class: 'asked' },
      h('thead', {}, h('tr', {}, ...COLUMNS.map((word) => h('th', { scope: 'col' }, word)))),
      h('tbody', {}, ...rows),
    ),
  );
};
