import { deviceModels } from '../../engine/devices/models/index.ts';
import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'device-demand';

export const deviceDemands: Check = {
  id: rule,
  about: 'Every demand on a device can be worked out, with numbers that its use gives.',
  needs: ['devices/demands.csv', 'devices/findings.csv', 'devices/conditions.csv'],
  check: (tables) => {
    const findings = byId(valuesOf(tables, 'devices/findings.csv'));
    const conditions = valuesOf(tables, 'devices/conditions.csv');
    const file = 'devices/demands.csv';
    return goodRows(tables, file).flatMap((row) => {
      const { position, finding, limit_of: of } = row.value;
      const has = (id: string): boolean =>
        conditions.some((one) => one.position === position && one.condition === id);
      const fault = (column: string, wrong: string, expected: string) =>
        cellFault(rule, file, row, column, { wrong, expected });
      const asked = findings.get(finding);
      if (asked === undefined) return [];
      if (deviceModels[finding] === undefined)
        return [fault('finding', 'the engine has no such finding', 'a finding with a model')];
      const missing = asked.conditions.filter((id) => !has(id));
      return [
        ...missing.map((id) =>
          fault('finding', `the use gives no ${id}`, 'a row in devices/conditions.csv'),
        ),
        ...(of === '' || of === 'old' || has(of)
          ? []
          : [fault('limit_of', 'the use has no such condition', 'one of its conditions, or old')]),
      ];
    });
  },
};
