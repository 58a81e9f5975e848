import { findingModels } from '../../engine/findings/index.ts';
import { kindModels } from '../../engine/kinds/findings/index.ts';
import { cellFault, type Check } from './check.ts';

const rule = 'finding';

const models = { ...findingModels, ...kindModels };

export const findingsKnown: Check = {
  id: rule,
  about: 'Every finding is one that the engine works out, and some demand asks for it.',
  needs: ['findings.csv', 'demands.csv'],
  check: (tables) => {
    const asked = new Set(tables['demands.csv'].rows.map(({ cells }) => cells['finding']));
    return tables['findings.csv'].rows.flatMap((row) => {
      const id = row.cells['id'] ?? '';
      const fault = (wrong: string, expected: string) =>
        cellFault(rule, 'findings.csv', row, 'id', { wrong, expected });
      return [
        ...(Object.hasOwn(models, id)
          ? []
          : [
              fault(
                'the engine does not work this out',
                `one of ${Object.keys(models).join(', ')}`,
              ),
            ]),
        ...(asked.has(id) ? [] : [fault('no demand asks for it', 'a row in demands.csv')]),
      ];
    });
  },
};
