import { describe } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import type { Pick } from './broken-copy.ts';

const shape =
  (wanted: string): Pick =>
  (row) =>
    row['shape'] === wanted;

const bodies: BrokenCell[] = [
  {
    what: 'no height',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'height_mm',
    to: '0',
    rule: 'cell',
  },
  {
    what: 'a height in micrometres',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'height_mm',
    to: '9000',
    rule: 'body-shape',
  },
  {
    what: 'a can that is not round',
    file: 'bodies.csv',
    pick: shape('can'),
    column: 'width_mm',
    to: (old) => `${Number(old) + 1}`,
    rule: 'body-shape',
  },
  {
    what: 'a tube that is not round',
    file: 'bodies.csv',
    pick: shape('tube'),
    column: 'height_mm',
    to: (old) => `${Number(old) + 1}`,
    rule: 'body-shape',
  },
  {
    what: 'leads further apart than a box is long',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'pitch_mm',
    to: '90',
    rule: 'body-shape',
  },
  {
    what: 'pitches that fall',
    file: 'bodies.csv',
    pick: shape('drop'),
    column: 'pitch_mm',
    to: '5;2.5',
    rule: 'body-shape',
  },
  {
    what: 'a tube with a pitch',
    file: 'bodies.csv',
    pick: shape('tube'),
    column: 'pitch_mm',
    to: '10',
    rule: 'body-shape',
  },
  {
    what: 'leads thicker than the body',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'lead_mm',
    to: '80',
    rule: 'body-shape',
  },
  {
    what: 'a chip with leads',
    file: 'bodies.csv',
    pick: shape('chip'),
    column: 'lead_mm',
    to: '0.5',
    rule: 'body-shape',
  },
  {
    what: 'a voltage that is not rated',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'voltage',
    to: '111',
    rule: 'size-of-offer',
  },
  {
    what: 'a style that is not offered',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'style',
    to: 'brick',
    rule: 'size-of-offer',
  },
  {
    what: 'a type that there is not',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'type',
    to: 'film-of-no-kind',
    rule: 'reference',
  },
  {
    what: 'a value in picofarad',
    file: 'bodies.csv',
    pick: shape('box'),
    column: 'c_max',
    to: '1000',
    rule: 'out-of-bounds',
  },
  {
    what: 'the smallest value above the largest',
    file: 'bodies.csv',
    pick: (row) => row['shape'] === 'drop' && row['c_min'] !== row['c_max'],
    column: 'c_min',
    to: '0.1',
    rule: 'number-order',
    at: 'c_max',
  },
];

const resistances: BrokenCell[] = [
  {
    what: 'a typical above the largest',
    file: 'series-resistance.csv',
    pick: (row) => row['esr_min'] !== '',
    column: 'esr_max',
    to: '0.000001',
    rule: 'number-order',
  },
  {
    what: 'a voltage band upside down',
    file: 'series-resistance.csv',
    pick: (row) => row['v_min'] !== row['v_max'],
    column: 'v_max',
    to: '1',
    rule: 'number-order',
  },
  {
    what: 'a ripple current at no temperature',
    file: 'series-resistance.csv',
    pick: (row) => row['ripple_a'] !== '',
    column: 'ripple_c',
    to: '',
    rule: 'ripple-at',
  },
  {
    what: 'a temperature for no ripple current',
    file: 'series-resistance.csv',
    pick: (row) => row['ripple_a'] === '',
    column: 'ripple_c',
    to: '85',
    rule: 'ripple-at',
  },
  {
    what: 'a resistance of nothing',
    file: 'series-resistance.csv',
    pick: () => true,
    column: 'esr_typ',
    to: '0',
    rule: 'cell',
  },
];

const ripples: BrokenCell[] = [
  {
    what: 'a factor of nothing',
    file: 'ripple-by-frequency.csv',
    pick: () => true,
    column: 'factor',
    to: '0',
    rule: 'cell',
  },
  {
    what: 'a band of values upside down',
    file: 'ripple-by-frequency.csv',
    pick: () => true,
    column: 'c_max',
    to: '1e-9',
    rule: 'number-order',
  },
  {
    what: 'a type that there is not',
    file: 'ripple-by-temperature.csv',
    pick: () => true,
    column: 'type',
    to: 'film-of-no-kind',
    rule: 'reference',
  },
];

const edges: BrokenCell[] = [
  {
    what: 'an edge of nothing',
    file: 'pulse-ratings.csv',
    pick: () => true,
    column: 'dvdt',
    to: '0',
    rule: 'cell',
  },
  {
    what: 'a style that is not offered',
    file: 'pulse-ratings.csv',
    pick: () => true,
    column: 'style',
    to: 'brick',
    rule: 'size-of-offer',
  },
];

describe('one wrong cell', () => {
  describe('of a body', () => testBrokenCells(bodies));
  describe('of a series resistance', () => testBrokenCells(resistances));
  describe('of a ripple current', () => testBrokenCells(ripples));
  describe('of a steepest edge', () => testBrokenCells(edges));
});
