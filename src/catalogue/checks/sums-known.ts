import type { Fault } from '../fault.ts';
import { allSums } from '../../engine/sums/index.ts';
import { cellFault, type Check } from './check.ts';
import { fillsNoNumber } from './filled-words.ts';

const rule = 'sum';

/** Tables in which the name of a row stands that a field is filled with. */
const NAMED = {
  condition: 'condition-definitions.csv',
  highest: 'condition-definitions.csv',
  peak: 'condition-definitions.csv',
  'with-own-resistance': 'condition-definitions.csv',
  'with-surge-resistance': 'condition-definitions.csv',
  property: 'properties.csv',
  'property-if-known': 'properties.csv',
  'by-wiring': 'properties.csv',
} as const;

export const sumsKnown: Check = {
  id: rule,
  about: 'A bench sum that is named is one that there is, with the fields that are filled in.',
  needs: [
    'findings.csv',
    'sum-inputs.csv',
    'condition-definitions.csv',
    'properties.csv',
    'kinds/properties.csv',
    'kinds/kinds.csv',
  ],
  check: (tables) => {
    const idsIn = (file: (typeof NAMED)[keyof typeof NAMED]): Set<string> => {
      const more = file === 'properties.csv' ? tables['kinds/properties.csv'].rows : [];
      return new Set([...tables[file].rows, ...more].map(({ cells }) => cells['id'] ?? ''));
    };
    const filled = new Set(tables['sum-inputs.csv'].rows.map(({ cells }) => cells['sum']));
    const fromFindings = tables['findings.csv'].rows.flatMap((row): Fault[] => {
      const { sum = '' } = row.cells;
      return sum === '' || filled.has(sum)
        ? []
        : [
            cellFault(rule, 'findings.csv', row, 'sum', {
              wrong: 'nothing says what its fields are filled with',
              expected: 'rows in sum-inputs.csv',
            }),
          ];
    });
    const led = new Set(tables['findings.csv'].rows.map(({ cells }) => cells['sum']));
    const known = new Set(allSums.map(({ id }) => id));
    const fromKinds = tables['kinds/kinds.csv'].rows
      .filter(({ cells }) =>
        (cells['sums'] ?? '').split(';').some((id) => id !== '' && !known.has(id)),
      )
      .map((row) =>
        cellFault(rule, 'kinds/kinds.csv', row, 'sums', {
          wrong: 'there is no such sum',
          expected: 'bench sums',
        }),
      );
    return [
      ...fromFindings,
      ...fromKinds,
      ...tables['sum-inputs.csv'].rows.flatMap((row): Fault[] => {
        const { sum: id = '', input = '', takes = '', of: name = '' } = row.cells;
        const fault = (column: string, wrong: string, expected: string): Fault[] => [
          cellFault(rule, 'sum-inputs.csv', row, column, { wrong, expected }),
        ];
        const sum = allSums.find((one) => one.id === id);
        if (sum === undefined) return fault('sum', 'there is no such sum', 'a bench sum');
        if (!led.has(id)) return fault('sum', 'no finding leads to it', 'a row in findings.csv');
        if (!Object.hasOwn(sum.inputs, input))
          return fault('input', 'the sum has no such field', Object.keys(sum.inputs).join(', '));
        if (fillsNoNumber(sum.inputs[input], takes, name))
          return fault('of', 'the field asks for a number', 'a number such as 0.05 or 1e-9');
        const table = takes in NAMED ? NAMED[takes as keyof typeof NAMED] : undefined;
        return table === undefined || name.split(';').every((one) => idsIn(table).has(one))
          ? []
          : fault('of', `not found in ${table}`, `one id of ${table}`);
      }),
    ];
  },
};
