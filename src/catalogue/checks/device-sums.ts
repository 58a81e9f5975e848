import { allSums } from '../../engine/sums/index.ts';
import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { fillsNoNumber } from './filled-words.ts';

const rule = 'device-sum';

/** Tables in which the name of a row stands that a field is filled with. */
const NAMED = {
  condition: 'devices/condition-definitions.csv',
  property: 'devices/properties.csv',
  'property-if-known': 'devices/properties.csv',
  'warm-leakage': 'devices/properties.csv',
  bias: 'devices/properties.csv',
  'old-bias': 'devices/properties.csv',
} as const;

export const deviceSums: Check = {
  id: rule,
  about:
    'A bench sum that a finding about a device leads to is one that there is, with its fields.',
  needs: [
    'devices/findings.csv',
    'devices/sum-inputs.csv',
    'devices/condition-definitions.csv',
    'devices/properties.csv',
  ],
  check: (tables) => {
    const [findings, inputs] = [tables['devices/findings.csv'], tables['devices/sum-inputs.csv']];
    const filled = new Set(inputs.rows.map(({ cells }) => cells['sum']));
    const led = new Set(findings.rows.map(({ cells }) => cells['sum']));
    return [
      ...findings.rows.flatMap((row): Fault[] => {
        const { sum = '' } = row.cells;
        if (sum === '' || filled.has(sum)) return [];
        const wrong = 'nothing says what its fields are filled with';
        const expected = 'rows in devices/sum-inputs.csv';
        return [cellFault(rule, 'devices/findings.csv', row, 'sum', { wrong, expected })];
      }),
      ...inputs.rows.flatMap((row): Fault[] => {
        const { sum: id = '', input = '', takes = '', of: name = '' } = row.cells;
        const fault = (column: string, wrong: string, expected: string): Fault[] => [
          cellFault(rule, 'devices/sum-inputs.csv', row, column, { wrong, expected }),
        ];
        const sum = allSums.find((one) => one.id === id);
        if (sum === undefined) return fault('sum', 'there is no such sum', 'a bench sum');
        if (!led.has(id))
          return fault('sum', 'no finding leads to it', 'a row in devices/findings.csv');
        if (!Object.hasOwn(sum.inputs, input))
          return fault('input', 'the sum has no such field', Object.keys(sum.inputs).join(', '));
        if (fillsNoNumber(sum.inputs[input], takes, name))
          return fault('of', 'the field asks for a number', 'a number such as 0.05 or 1e-9');
        const table = takes in NAMED ? NAMED[takes as keyof typeof NAMED] : undefined;
        return table === undefined || tables[table].rows.some(({ cells }) => cells['id'] === name)
          ? []
          : fault('of', `not found in ${table}`, `one id of ${table}`);
      }),
    ];
  },
};
