import { describe } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import type { Pick } from './broken-copy.ts';

const any: Pick = () => true;

/** The only row about its type and property, so that no other figure can contradict it. */
const alone: Pick = (row, rows) =>
  rows.filter((other) => other['type'] === row['type'] && other['property'] === row['property'])
    .length === 1;

/** The only number of its row. */
const lone =
  (column: string): Pick =>
  (row, rows) =>
    alone(row, rows) &&
    row[column] !== '' &&
    ['min', 'typ', 'max'].filter((name) => row[name] !== '').length === 1;

const of =
  (property: string, more: Pick = () => true): Pick =>
  (row, rows) =>
    row['property'] === property && row['status'] === 'known' && more(row, rows);

const figures: Omit<BrokenCell, 'file'>[] = [
  {
    what: 'a unit of another kind',
    pick: of('temperature-max', alone),
    column: 'unit',
    to: 'V',
    rule: 'unit-kind',
  },
  {
    what: 'a unit that there is not',
    pick: of('temperature-max', alone),
    column: 'unit',
    to: 'degF',
    rule: 'reference',
  },
  {
    what: 'a sign that cannot be',
    pick: of('insulation-halving', lone('typ')),
    column: 'typ',
    to: (old) => `-${old}`,
    rule: 'out-of-bounds',
  },
  {
    what: 'a decimal point slipped to the right',
    pick: of('temperature-max', lone('typ')),
    column: 'typ',
    to: (old) => `${old}0`,
    rule: 'out-of-bounds',
  },
  {
    what: 'a least value above the greatest',
    pick: of(
      'insulation-rc',
      (row, rows) =>
        alone(row, rows) && row['min'] !== '' && row['typ'] === '' && row['max'] !== '',
    ),
    column: 'min',
    to: '99000000',
    rule: 'number-order',
    at: 'max',
  },
  {
    what: 'a decimal comma',
    pick: of('temperature-max', lone('typ')),
    column: 'typ',
    to: '"8,5"',
    rule: 'cell',
  },
  {
    what: 'a source that there is not',
    pick: (row) => row['source'] === 'trade',
    column: 'source',
    to: 'trades',
    rule: 'reference',
  },
  {
    what: 'a property that there is not',
    pick: of('dvdt', alone),
    column: 'property',
    to: 'dvdtt',
    rule: 'reference',
  },
  {
    what: 'a known figure without a number',
    pick: of('temperature-max', lone('typ')),
    column: 'typ',
    to: '',
    rule: 'figure-status',
    at: 'status',
  },
  {
    what: 'an unknown figure with a number',
    pick: (row) => row['status'] === 'unknown' && row['property'] === 'dielectric-absorption',
    column: 'max',
    to: '5',
    rule: 'figure-status',
    at: 'status',
  },
  {
    what: 'a status that there is not',
    pick: any,
    column: 'status',
    to: 'guessed',
    rule: 'cell',
  },
  {
    what: 'no status',
    pick: any,
    column: 'status',
    to: '',
    rule: 'empty-cell',
  },
  {
    what: 'an absorption figure without its test',
    pick: of('dielectric-absorption', (row) => row['test'] === 'not-stated'),
    column: 'test',
    to: '',
    rule: 'absorption-test',
  },
  {
    what: 'a test beside another property',
    pick: of('temperature-max'),
    column: 'test',
    to: 'not-stated',
    rule: 'absorption-test',
  },
  {
    what: 'a test that there is not',
    pick: of('dielectric-absorption', (row) => row['test'] === 'not-stated'),
    column: 'test',
    to: 'unstated',
    rule: 'reference',
  },
  {
    what: 'published from common practice',
    pick: (row) => row['source'] === 'trade',
    column: 'basis',
    to: 'published',
    rule: 'basis',
  },
  {
    what: 'published, without a place in the source',
    pick: (row) => row['basis'] === 'published',
    column: 'locator',
    to: '',
    rule: 'locator',
  },
  {
    what: 'a basis that there is not',
    pick: any,
    column: 'basis',
    to: 'measured',
    rule: 'cell',
  },
  {
    what: 'space before a text',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: ' 25 degC',
    rule: 'space-around',
  },
  {
    what: 'a tab',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '25\tdegC',
    rule: 'control-character',
  },
  {
    what: 'a NUL',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '25 \0degC',
    rule: 'control-character',
  },
  {
    what: 'two spaces',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '25  degC',
    rule: 'double-space',
  },
  {
    what: 'a stray quote',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '25 "degC"',
    rule: 'quotes',
  },
  {
    what: 'text after a quoted text',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '"25" degC',
    rule: 'quotes',
  },
  {
    what: 'a line feed in a cell',
    pick: (row) => row['conditions'] === '25 degC',
    column: 'conditions',
    to: '"25\ndegC"',
    rule: 'newline-in-cell',
  },
];

describe('one cell of the figures made wrong is found, at its place, and nothing else', () => {
  testBrokenCells(figures.map((fault) => ({ file: 'figures.csv', ...fault })));
});
