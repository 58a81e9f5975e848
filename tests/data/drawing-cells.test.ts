import { describe, expect, test } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import { newFaults, realText, type Pick } from './broken-copy.ts';

const any: Pick = () => true;

const of =
  (type: string): Pick =>
  (row) =>
    row['type'] === type;

const cells: BrokenCell[] = [
  {
    what: 'a form that is not drawn',
    file: 'type-looks.csv',
    pick: any,
    column: 'form',
    to: 'pyramid',
    rule: 'drawing',
  },
  {
    what: 'a form of a style that is not drawn',
    file: 'look/drawings.csv',
    pick: any,
    column: 'form',
    to: 'pyramid',
    rule: 'drawing',
  },
  {
    what: 'a colour that there is not',
    file: 'type-looks.csv',
    pick: of('pet-metallized'),
    column: 'colour',
    to: 'plaid',
    rule: 'reference',
  },
  {
    what: 'a band of a colour that there is not',
    file: 'type-looks.csv',
    pick: (row) => row['bands'] !== '',
    column: 'bands',
    to: (old) => `${old};plaid`,
    rule: 'reference',
  },
  {
    what: 'a finish that there is not',
    file: 'type-looks.csv',
    pick: any,
    column: 'finish',
    to: 'velvet',
    rule: 'cell',
  },
  {
    what: 'a length of nothing',
    file: 'type-looks.csv',
    pick: any,
    column: 'length_mm',
    to: '0',
    rule: 'cell',
  },
];

describe('one wrong cell of a drawing', () => {
  testBrokenCells(cells);
});

describe('a look too few', () => {
  const without = (lost: (line: string) => boolean): string[] =>
    newFaults({
      'type-looks.csv': realText('type-looks.csv')
        .split('\n')
        .filter((line) => !lost(line))
        .join('\n'),
    });

  test('of a type', () => {
    expect(without((line) => line.startsWith('glass,'))).toEqual([
      expect.stringMatching(/^types\.csv:\d+:1: drawing$/),
    ]);
  });

  test('of a style that has a size', () => {
    expect(without((line) => line.startsWith('ta-mno2-solid,chip,'))).toEqual([
      expect.stringMatching(/^bodies\.csv:\d+:\d+: drawing$/),
    ]);
  });
});
