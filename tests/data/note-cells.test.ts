import { describe, expect, test } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import { findRow, newFaults, realText, type Pick } from './broken-copy.ts';

const file = 'position-notes.csv';

const ofKind =
  (kind: string): Pick =>
  (row) =>
    row['kind'] === kind;

const withFigure: Pick = (row) => row['kind'] === 'limit' && row['min'] !== '' && row['max'] !== '';

const cells: BrokenCell[] = [
  {
    what: 'an equation without its equation',
    file,
    pick: ofKind('equation'),
    column: 'equation',
    to: '',
    rule: 'note-figure',
  },
  {
    what: 'an equation in a symptom',
    file,
    pick: ofKind('symptom'),
    column: 'equation',
    to: 'f = 1/(2*pi*R*C)',
    rule: 'note-figure',
  },
  {
    what: 'a figure without its unit',
    file,
    pick: withFigure,
    column: 'unit',
    to: '',
    rule: 'note-figure',
  },
  {
    what: 'a unit without a figure',
    file,
    pick: ofKind('symptom'),
    column: 'unit',
    to: 'mV',
    rule: 'note-figure',
  },
  {
    what: 'a unit that there is not',
    file,
    pick: withFigure,
    column: 'unit',
    to: 'furlong',
    rule: 'reference',
  },
  {
    what: 'a least above the most',
    file,
    pick: withFigure,
    column: 'min',
    to: '1e12',
    rule: 'number-order',
    at: 'max',
  },
  {
    what: 'a position that there is not',
    file,
    // One of several of its kind, so that the position does not go without.
    pick: (row, rows) =>
      row['kind'] === 'symptom' &&
      rows.filter((other) => other['position'] === row['position'] && other['kind'] === 'symptom')
        .length > 1,
    column: 'position',
    to: 'nowhere',
    rule: 'reference',
  },
];

describe('a wrong cell of a note', () => {
  testBrokenCells(cells);
});

test('a position without a trap is reported where the position stands', () => {
  const notes = realText(file)
    .split('\n')
    .filter((line) => !line.startsWith('noise-generator,trap,'))
    .join('\n');
  const { id } = findRow(realText('positions.csv'), (row) => row['id'] === 'noise-generator');
  expect(newFaults({ [file]: notes })).toEqual([
    `positions.csv:${id?.line}:${id?.column}: missing-note`,
  ]);
});
