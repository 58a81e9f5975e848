import { describe } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';

const SCHEMES = 'markings/colour-schemes.csv';
const MEANINGS = 'markings/colour-meanings.csv';

const idIs = (id: string) => (row: Record<string, string>) => row['id'] === id;

const roleIs = (role: string) => (row: Record<string, string>) => row['role'] === role;

const cells: BrokenCell[] = [
  {
    what: 'a scheme with a place too few',
    file: SCHEMES,
    pick: idIs('resistor-5'),
    column: 'places',
    to: 'digit;digit;multiplier;tolerance',
    rule: 'colour-code',
  },
  {
    what: 'a place without a colour that means something',
    file: SCHEMES,
    pick: idIs('mica-6'),
    column: 'places',
    to: (old) => old.replace('characteristic', 'vibration'),
    rule: 'colour-code',
  },
  {
    what: 'nothing said of what is absent',
    file: SCHEMES,
    pick: idIs('resistor-3'),
    column: 'absent',
    to: 'tolerance;voltage',
    rule: 'colour-code',
  },
  {
    what: 'a code without use',
    file: SCHEMES,
    pick: idIs('resistor-4'),
    column: 'codes',
    to: (old) => `${old};film-stripes-of-no-kind`,
    rule: 'colour-code',
  },
  {
    what: 'a place that no drawing has',
    file: 'markings/colour-layouts.csv',
    pick: idIs('resistor-4'),
    column: 'painted',
    to: 'bands-0;bands-1;bands-2',
    rule: 'colour-code',
  },
  {
    what: 'a colour that there is not',
    file: MEANINGS,
    pick: roleIs('digit'),
    column: 'colour',
    to: 'mauve',
    rule: 'reference',
  },
  {
    what: 'a figure that is none',
    file: MEANINGS,
    pick: (row) => row['role'] === 'digit' && row['value'] === '9',
    column: 'value',
    to: '10',
    rule: 'colour-meaning',
  },
  {
    what: 'a tolerance without a unit',
    file: MEANINGS,
    pick: roleIs('tolerance'),
    column: 'unit',
    to: '',
    rule: 'colour-meaning',
  },
  {
    what: 'a span upside down',
    file: MEANINGS,
    pick: (row) => row['role'] === 'vibration' && row['low'] === '10',
    column: 'low',
    to: '3000',
    rule: 'number-order',
    at: 'high',
  },
];

describe('colours', () => testBrokenCells(cells));
