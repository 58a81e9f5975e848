import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'missing-figure-of-device';

export const devicesKnown: Check = {
  id: rule,
  about: 'Of every device, or of its series, there is a figure that assessments take.',
  needs: ['devices/devices.csv', 'devices/figures.csv'],
  check: (tables) => {
    const known = new Set(
      valuesOf(tables, 'devices/figures.csv').flatMap(({ of, use }) =>
        use === 'used' ? [of] : [],
      ),
    );
    return goodRows(tables, 'devices/devices.csv')
      .filter(({ value: { id, series } }) => ![id, ...series].some((one) => known.has(one)))
      .map((row) =>
        cellFault(rule, 'devices/devices.csv', row, 'id', {
          wrong: 'a device of which nothing is known',
          expected: `rows of ${row.value.id}, or of a series of its, in devices/figures.csv`,
        }),
      );
  },
};
