import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { printFault } from '../../src/catalogue/index.ts';
import { readTable } from '../../src/catalogue/read-table.ts';
import { id, optionalNumber } from '../../src/schemas/cells.ts';

const schema = z.strictObject({ id, value: optionalNumber, note: z.string() });

const read = (text: string | Uint8Array) =>
  readTable('things.csv', typeof text === 'string' ? new TextEncoder().encode(text) : text, schema);

const faultsOf = (text: string | Uint8Array): string[] => read(text).faults.map(printFault);

describe('a table without a fault', () => {
  test('gives each row its values, its line and the place of each cell', () => {
    const { table, faults } = read('id,value,note\na,1.5,"x, ""y"""\nb,,Größe\n');
    expect(faults).toEqual([]);
    expect(table.readable).toBe(true);
    expect(table.rows).toEqual([
      {
        line: 2,
        cells: { id: 'a', value: '1.5', note: 'x, "y"' },
        columns: { id: 1, value: 3, note: 7 },
        value: { id: 'a', value: 1.5, note: 'x, "y"' },
      },
      {
        line: 3,
        cells: { id: 'b', value: '', note: 'Größe' },
        columns: { id: 1, value: 3, note: 4 },
        value: { id: 'b', value: undefined, note: 'Größe' },
      },
    ]);
  });

  const plain = fc
    .string({ unit: 'grapheme' })
    .filter((cell) => !/[\p{Cc}\uFFFD]/u.test(cell) && cell.trim() === cell);
  const quote = (cell: string): string =>
    /[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

  test('whatever its texts, reads back what was written, at the place where it was written', () => {
    fc.assert(
      fc.property(fc.array(plain, { minLength: 1 }), (notes) => {
        const lines = notes.map((note, index) => `n${index},${index},${quote(note)}`);
        const { table, faults } = read(`id,value,note\n${lines.join('\n')}\n`);
        expect(faults).toEqual([]);
        expect(table.rows.map((row) => row.value?.note)).toEqual(notes);
        const starts = notes.map((_, index) => `n${index},${index},`.length + 1);
        expect(table.rows.map((row) => row.columns['note'])).toEqual(starts);
      }),
    );
  });

  test('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const { faults } = read(bytes);
        expect(faults.length).toBeGreaterThan(0);
      }),
    );
  });
});

describe('a faulty table', () => {
  const header = 'id,value,note\n';
  const cases: [string, string, string[]][] = [
    [
      'nothing at all',
      '',
      [
        'things.csv:1:1: missing-column: no column id; got ""; expected id',
        'things.csv:1:1: missing-column: no column value; got ""; expected value',
        'things.csv:1:1: missing-column: no column note; got ""; expected note',
        'things.csv:1:1: extra-column: a column that the table does not have; got ""; expected only the columns of the schema',
      ],
    ],
    [
      'a column twice',
      'id,value,value,note\n',
      [
        'things.csv:1:10: extra-column: a column that the table does not have; got "value"; expected only the columns of the schema',
      ],
    ],
    [
      'a missing column, and rows that are judged by the header they have',
      'id,note\na,x\nb\n',
      [
        'things.csv:1:4: missing-column: no column value; got "note"; expected value',
        'things.csv:3:2: cell-count: 1 cells in this row; got "b"; expected 2 cells, as in the header',
      ],
    ],
    [
      'two bad cells in one row and one in the next',
      `${header}A,1,x\nb,1e,  y\n`,
      [
        'things.csv:2:1: cell: id is not as it should be; got "A"; expected lower-case letters and digits joined by hyphens',
        'things.csv:3:6: space-around: space before or after the text of a cell; got "  y"; expected a cell without space around it',
        'things.csv:3:3: cell: value is not as it should be; got "1e"; expected a number such as 0.05, without zeros that could be left out, or nothing',
      ],
    ],
    [
      'a number that a computer cannot hold',
      `${header}a,1e999,x\n`,
      [
        'things.csv:2:3: cell: value is not as it should be; got "1e999"; expected a number such as 0.05, without zeros that could be left out, or nothing',
      ],
    ],
    [
      'numbers with zeros that could be left out, such as 0.01 with its figures transposed',
      `${header}a,0.10,x\nb,01,x\nc,1e-09,x\nd,5.0,x\ne,0.05,x\n`,
      [
        'things.csv:2:3: cell: value is not as it should be; got "0.10"; expected a number such as 0.05, without zeros that could be left out, or nothing',
        'things.csv:3:3: cell: value is not as it should be; got "01"; expected a number such as 0.05, without zeros that could be left out, or nothing',
        'things.csv:4:3: cell: value is not as it should be; got "1e-09"; expected a number such as 0.05, without zeros that could be left out, or nothing',
        'things.csv:5:3: cell: value is not as it should be; got "5.0"; expected a number such as 0.05, without zeros that could be left out, or nothing',
      ],
    ],
    [
      'a cell over two lines, and a fault after it',
      `${header}a,1,"x\ny"\nB,2,z\n`,
      [
        'things.csv:2:5: newline-in-cell: a cell goes on over the end of its line; got "x"; expected every cell on one line',
        'things.csv:4:1: cell: id is not as it should be; got "B"; expected lower-case letters and digits joined by hyphens',
      ],
    ],
    [
      'a quote that is never closed, and a fault after it',
      `${header}a,1,"x\nB,2,z\n`,
      [
        'things.csv:2:5: quotes: quotes out of order; got "x"; expected a cell quoted from end to end, with each quote inside it doubled',
        'things.csv:3:1: cell: id is not as it should be; got "B"; expected lower-case letters and digits joined by hyphens',
      ],
    ],
    [
      'a byte order mark, carriage returns and no end',
      '\uFEFFid,value,note\r\na,1,x\r\nb,2,y',
      [
        'things.csv:1:1: byte-order-mark: the file starts with a byte order mark; got "\uFEFF"; expected the first column name at once',
        'things.csv:1:14: line-ending: a carriage return, first of 2; got "\\r"; expected lines that end in a line feed alone',
        'things.csv:3:6: end-of-file: the last line is not ended; got "b,2,y"; expected a line feed at the end of the file',
      ],
    ],
    [
      'text beyond the first plane before the fault',
      `${header}a,𝄞,"x"y\n`,
      [
        'things.csv:2:5: quotes: quotes out of order; got "xy"; expected a cell quoted from end to end, with each quote inside it doubled',
      ],
    ],
  ];
  test.each(cases)('%s', (_, text, expected) => {
    expect(faultsOf(text)).toEqual(expected);
  });

  test('bytes that are not UTF-8', () => {
    const bytes = new TextEncoder().encode(`${header}a,1,xy\n`);
    bytes[bytes.length - 2] = 0xff;
    expect(faultsOf(bytes)).toEqual([
      'things.csv:2:5: utf-8: bytes that are not UTF-8; got "x\uFFFD"; expected valid UTF-8',
    ]);
  });
});
