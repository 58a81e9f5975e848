import { describe, expect, test } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import { newFaults, realText, type Pick } from './broken-copy.ts';

const any: Pick = () => true;

const idIs =
  (id: string): Pick =>
  (row) =>
    row['id'] === id;

const rangeOf =
  (owner: string, question: string): Pick =>
  (row) =>
    [row['style'], row['kind']].includes(owner) && row['question'] === question;

const cells: BrokenCell[] = [
  {
    what: 'a kind that there is not',
    file: 'look/styles.csv',
    pick: idIs('pet-boxed'),
    column: 'kinds',
    to: 'pet-metalized',
    rule: 'reference',
  },
  {
    what: 'a type that there is not',
    file: 'look/kinds.csv',
    pick: idIs('vacuum'),
    column: 'type',
    to: 'vacuum',
    rule: 'reference',
  },
  {
    what: 'how often in a word of its own',
    file: 'look/features.csv',
    pick: any,
    column: 'how',
    to: 'often',
    rule: 'cell',
  },
  {
    what: 'a feature of nobody',
    file: 'look/features.csv',
    pick: (row) => row['kind'] !== '' && row['question'] === 'ohmmeter',
    column: 'kind',
    to: '',
    rule: 'look-owner',
    at: 'style',
  },
  {
    what: 'an answer to another question',
    file: 'look/features.csv',
    pick: (row) => row['question'] === 'form' && row['how'] === 'sometimes',
    column: 'answers',
    to: 'wax',
    rule: 'look-answer',
  },
  {
    what: 'a range for a question of looks',
    file: 'look/ranges.csv',
    pick: rangeOf('glass', 'warm-c'),
    column: 'question',
    to: 'ohmmeter',
    rule: 'look-answer',
  },
  {
    what: 'a loss in volt',
    file: 'look/ranges.csv',
    pick: rangeOf('glass', 'd-1khz'),
    column: 'unit',
    to: 'V',
    rule: 'look-unit',
  },
  {
    what: 'a change that no meter shows',
    file: 'look/ranges.csv',
    pick: rangeOf('vacuum', 'warm-c'),
    column: 'high',
    to: '200',
    rule: 'look-unit',
  },
  {
    what: 'a usual year after the last',
    file: 'look/ranges.csv',
    pick: rangeOf('paper-wax-tubular', 'year'),
    column: 'usual_high',
    to: '1990',
    rule: 'number-order',
    at: 'high',
  },
  {
    what: 'a weight above one',
    file: 'look/weights.csv',
    pick: idIs('wrong'),
    column: 'value',
    to: '5',
    rule: 'cell',
  },
  {
    what: 'a disguise of something that has no style',
    file: 'look/disguises.csv',
    pick: (row) => row['other'] !== '',
    column: 'other',
    to: 'sugar-cube',
    rule: 'reference',
  },
];

describe('a look that does not hold together', () => {
  testBrokenCells(cells);
});

/** A table without the rows of which one holds. */
const without = (file: string, isRow: (line: string) => boolean): string =>
  realText(file)
    .split('\n')
    .filter((line) => !isRow(line))
    .join('\n');

describe('a look that leaves something out', () => {
  test.each([
    {
      what: 'what colour a style is',
      file: 'look/features.csv',
      isRow: (line: string) => line.startsWith('ptfe-axial,,colour,'),
      faults: 1,
      blamed: 'look/styles.csv',
    },
    {
      what: 'when a style was made',
      file: 'look/ranges.csv',
      isRow: (line: string) => line.startsWith('glass,,year,'),
      faults: 1,
      blamed: 'look/styles.csv',
    },
    {
      what: 'a weight',
      file: 'look/weights.csv',
      isRow: (line: string) => line.startsWith('edge,'),
      faults: 1,
      blamed: 'look/weights.csv',
    },
  ])('$what', ({ file, isRow, faults, blamed }) => {
    const found = newFaults({ [file]: without(file, isRow) });
    expect(found).toHaveLength(faults);
    expect(found[0]).toMatch(new RegExp(`^${blamed}:.*: look-complete$`));
  });

  test('the style of a type', () => {
    const kinds = realText('look/kinds.csv').replace(',capacitor,niobium-oxide\n', ',capacitor,\n');
    const found = newFaults({ 'look/kinds.csv': kinds });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^types\.csv:\d+:1: look-complete$/);
  });
});
