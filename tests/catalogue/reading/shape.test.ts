import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { inReadingOrder, printFault, type Fault } from '../../../src/catalogue/fault.ts';
import { readTable } from '../../../src/catalogue/read-table.ts';
import { splitLine, splitLines } from '../../../src/catalogue/split-line.ts';
import { text } from '../../../src/schemas/cells.ts';

const read = (lines: string) =>
  readTable(
    'things.csv',
    new TextEncoder().encode(lines),
    z.strictObject({
      id: text,
      kind: z.union([z.literal(''), z.enum(['tin', 'can'])]),
      url: z.union([z.literal(''), z.url({ protocol: /^https?$/ })]),
      link: z.string().pipe(z.url().or(z.literal('none'))),
    }),
  );

const HEADER = 'id,kind,url,link\n';

/** Place and rule of each fault, and what stood there. */
const faultsOf = (lines: string): string[] =>
  read(lines).faults.map(
    ({ line, column, rule, got }) => `${String(line)}:${String(column)} ${rule} ${got}`,
  );

describe('the shape of a table', () => {
  test.each([
    ['columns in another order', 'id,url,kind,link\n', ['1:4 column-order url']],
    ['a column more, at the end', 'id,kind,url,link,more\n', ['1:18 extra-column more']],
    ['the last column left out, after the end', 'id,kind,url\n', ['1:12 missing-column ']],
    ['one left out, at the one in its place', 'id,url,link\n', ['1:4 missing-column url']],
    ['a quoted column name before it', '"id",url,link\n', ['1:6 missing-column url']],
    [
      'an empty line, and one of spaces',
      `${HEADER}\na,,,none\n  \n`,
      ['2:1 blank-line ', '4:1 blank-line   '],
    ],
    ['a cell too few, after the end', `${HEADER}a,tin,\n`, ['2:7 cell-count a,tin,']],
    [
      'cells too many, at the first of them',
      `${HEADER}a,,,none,x,y\n`,
      ['2:10 cell-count a,,,none,x,y'],
    ],
    ['a comma inside quotes, and a fault after it', `${HEADER}"a,b",pot,,none\n`, ['2:7 cell pot']],
    [
      'quotes inside quotes, and a fault after them',
      `${HEADER}"a""b,""c",pot,,none\n`,
      ['2:12 cell pot'],
    ],
    ['nothing where something must be', `${HEADER},,,none\n`, ['2:1 empty-cell ']],
    [
      'a tab, and the same cell not named twice',
      `${HEADER}a,t\tn,,none\n`,
      ['2:3 control-character t\tn'],
    ],
    [
      'a space before, behind, and within',
      `${HEADER} a,,,none\nb ,,,none\nc d,,,none\n`,
      ['2:1 space-around  a', '3:1 space-around b '],
    ],
    ['a quote within a cell without quotes', `${HEADER}a,t"n,,none\n`, ['2:3 quotes tn,,none']],
    ['a quote that is closed too early', `${HEADER}a,"t"n,,none\n`, ['2:3 quotes tn']],
  ])('%s', (_what, lines, faults) => {
    expect(faultsOf(lines)).toEqual(faults);
  });

  test('the words of a header', () => {
    const { faults } = read('id,url,kind,link\n');
    expect(faults).toMatchObject([{ file: 'things.csv', expected: 'kind' }]);
    const { faults: short } = read('id,kind,url\n');
    expect(short).toMatchObject([{ wrong: 'no column link', expected: 'link' }]);
  });

  test('what a row has in its header is what it is read by', () => {
    const { table, faults } = read('id,kind,url,more\na,b,c,d\n');
    expect(faults.map(({ rule }) => rule)).toEqual(['missing-column', 'extra-column']);
    expect(table).toEqual({
      file: 'things.csv',
      readable: false,
      rows: [
        {
          line: 2,
          cells: { id: 'a', kind: 'b', url: 'c', more: 'd' },
          columns: { id: 1, kind: 3, url: 5, more: 7 },
        },
      ],
    });
  });

  test('a row that is too short is there, with what it lacks empty', () => {
    expect(read(`${HEADER}a,tin\n`).table.rows).toEqual([
      {
        line: 2,
        cells: { id: 'a', kind: 'tin', url: '', link: '' },
        columns: { id: 1, kind: 3, url: 1, link: 1 },
      },
    ]);
  });

  test('a row with a fault has no value, and the others have', () => {
    const { rows } = read(`${HEADER}a,pot,,none\nb,,,none\n`).table;
    expect(rows.map((row) => 'value' in row)).toEqual([false, true]);
  });

  test('the last line is read though it is not ended', () => {
    expect(read(`${HEADER}a,,,none`).table.rows).toHaveLength(1);
  });

  /** A cell that runs on over some lines, and a row after it. */
  const runsOn = (more: number, end = '",,none'): string =>
    `${HEADER}a,"x\n${'y\n'.repeat(more - 1)}y${end}\nb,pot,,none\n`;

  test.each([
    ['one line more', runsOn(1), ['2:3 newline-in-cell x', '4:3 cell pot']],
    ['twenty lines more', runsOn(20), ['2:3 newline-in-cell x', '23:3 cell pot']],
  ])('a cell that runs on: %s', (_what, lines, faults) => {
    expect(faultsOf(lines)).toEqual(faults);
  });

  test.each([
    ['over more lines than anybody means', runsOn(21)],
    ['to an end after which cells are missing', runsOn(2, '",')],
    ['to a quote that may not be there', runsOn(2, '"z,,none')],
    ['to the end of the table', `${HEADER}a,"x\ny\n`],
  ])('a cell that runs on %s is a forgotten quote, and each line is a row', (_what, lines) => {
    const [first, second] = faultsOf(lines);
    expect(first).toBe('2:3 quotes x');
    expect(second).toMatch(/^3:\d+ (cell-count|quotes)/);
  });

  test('what a cell should have held', () => {
    const expected = (row: string) =>
      read(`${HEADER}${row}\n`).faults.map((fault) => fault.expected);
    expect(expected('a,pot,,none')).toEqual(['nothing or tin or can']);
    expect(expected('a,,ftp://x,none')).toEqual(['an http or https address']);
    expect(expected(',,,none')).toEqual(['some text']);
    expect(expected('a,,,here')).toEqual(['an http or https address']);
  });
});

describe('one line taken apart', () => {
  test.each([
    ['plain cells', 'a,bc,', ['a', 'bc', ''], [0, 2, 5]],
    ['quoted ones', '"a,b","c ""d""",e', ['a,b', 'c "d"', 'e'], [0, 6, 16]],
    ['letters beyond the first plane', '𝄞,𝄞𝄞,x', ['𝄞', '𝄞𝄞', 'x'], [0, 2, 5]],
    ['nothing', '', [''], [0]],
  ])('%s', (_what, line, cells, starts) => {
    expect(splitLine(line)).toEqual({ ok: true, cells, starts });
  });

  test.each([
    ['left open', 'a,"b,c', { reason: 'open', cells: ['a', 'b,c'], starts: [0, 2], cell: 1 }],
    [
      'in the middle',
      'ab,c"d,e',
      { reason: 'stray', cells: ['ab', 'cd,e'], starts: [0, 3], cell: 1 },
    ],
    ['after the end', '"a"b,c', { reason: 'stray', cells: ['ab', 'c'], starts: [0, 5], cell: 0 }],
    [
      'twice',
      'x,a"b"c,d',
      { reason: 'stray', cells: ['x', 'abc', 'd'], starts: [0, 2, 8], cell: 1 },
    ],
  ])('a quote %s', (_what, line, broken) => {
    expect(splitLine(line)).toEqual({ ok: false, ...broken });
  });

  test.each([
    ['all in order', ['a,b', '"c,d",e', '']],
    ['one more cell in one', ['a,b', 'c,d,e']],
    ['one that is broken', ['a,b', 'c,"d', 'e,f']],
    ['two that would be one cell together', ['a,"b', 'c",d', 'e,f']],
    ['none', []],
  ])('many lines come to the same as each: %s', (_what, lines) => {
    expect(splitLines(lines)).toEqual(lines.map(splitLine));
  });
});

describe('a fault as a line', () => {
  const fault: Fault = {
    file: 'a.csv',
    line: 3,
    column: 5,
    rule: 'cell',
    wrong: 'no number',
    got: 'x "y"',
    expected: 'a number',
  };

  test('says where, what, and how to mend it', () => {
    const said = 'a.csv:3:5: cell: no number; got "x \\"y\\""; expected a number';
    expect(printFault(fault)).toBe(said);
    expect(printFault({ ...fault, how: 'leave it out' })).toBe(`${said}; leave it out`);
  });

  test.each([
    [80, `${'x'.repeat(80)}`],
    [81, `${'x'.repeat(79)}…`],
  ])('quotes a cell of %i characters', (length, quoted) => {
    expect(printFault({ ...fault, got: 'x'.repeat(length) })).toContain(`got "${quoted}"`);
  });

  test('stands in the order in which one reads the files', () => {
    const at = (file: string, line: number, column: number): Fault => ({
      ...fault,
      file,
      line,
      column,
    });
    const order = [at('a.csv', 2, 9), at('a.csv', 10, 1), at('a.csv', 10, 2), at('b.csv', 1, 1)];
    expect(inReadingOrder(order.toReversed())).toEqual(order);
    expect(inReadingOrder([...order.slice(2), ...order.slice(0, 2)])).toEqual(order);
  });
});
