import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textOfBytes } from '../../../src/job/list/bytes.ts';
import { DELIMITERS, readDelimited, type Delimiter } from '../../../src/job/list/delimited.ts';
import { LARGEST_FILE, LONGEST_TEXT } from '../../../src/job/model/job.ts';

const cellsOf = (text: string, delimiter?: Delimiter) => {
  const read = readDelimited(text, delimiter);
  if (!read.ok) throw new Error(read.message);
  return { ...read, cells: read.rows.map(({ cells }) => cells) };
};

describe('delimited text', () => {
  test.each([
    [
      'tabs',
      'C1\t10 µF\nC2\t4,7 µF',
      '\t',
      [
        ['C1', '10 µF'],
        ['C2', '4,7 µF'],
      ],
    ],
    [
      'commas',
      'a,b\r\n1,2\r\n',
      ',',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'decimal comma',
      'a;b\nC1;4,7 nF\nC2;2,2 nF',
      ';',
      [
        ['a', 'b'],
        ['C1', '4,7 nF'],
        ['C2', '2,2 nF'],
      ],
    ],
    [
      'bars',
      'a|b\n1|2',
      '|',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'quotes',
      'a,b\n"x, ""y""\nz",2',
      ',',
      [
        ['a', 'b'],
        ['x, "y"\nz', '2'],
      ],
    ],
    [
      'a quote inside',
      'a,b\n3" pipe,2',
      ',',
      [
        ['a', 'b'],
        ['3" pipe', '2'],
      ],
    ],
    [
      'mark and empty rows',
      '\uFEFFa,b\n\n1,2\n',
      ',',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'an empty cell at the end',
      'a,b\n1,',
      ',',
      [
        ['a', 'b'],
        ['1', ''],
      ],
    ],
    [
      'old line ends',
      'a,b\r1,2',
      ',',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['one column', 'C1\nC2', '\t', [['C1'], ['C2']]],
  ])('%s', (_, text, delimiter, cells) => {
    const read = cellsOf(text);
    expect([read.delimiter, read.cells, read.said]).toEqual([delimiter, cells, []]);
  });

  test('a quote that nothing closes loses no row', () => {
    const read = cellsOf('a,b\n"x,1\ny,2');
    expect(read.cells).toEqual([
      ['a', 'b'],
      ['"x', '1'],
      ['y', '2'],
    ]);
    expect(read.said[0]).toMatch(/row 2/);
  });

  test('what is cut is said', () => {
    const read = cellsOf(`a,b\n${'x'.repeat(3000)},\0`);
    expect(read.cells[1]?.[0]).toHaveLength(LONGEST_TEXT);
    expect(read.said).toHaveLength(2);
    const long = cellsOf('a,b\n'.repeat(30_000));
    expect(long.cells).toHaveLength(20_001);
    expect(long.said[0]).toMatch(/20,000/);
    expect(readDelimited(' '.repeat(LARGEST_FILE + 1)).ok).toBe(false);
  });

  test('reads well-formed tables as another reader does', () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', '1', ' ', '"', ',', ';', '|', '\t', '\n', 'µ'),
    });
    const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1 });
    fc.assert(
      fc.property(table, fc.constantFrom(...DELIMITERS), (rows, delimiter) => {
        const text = rows
          .map((cells) => cells.map((each) => `"${each.replaceAll('"', '""')}"`).join(delimiter))
          .join('\r\n');
        const other = parse(text, { delimiter }) as string[][];
        const said = other.filter((cells) => cells.some((each) => each.trim() !== ''));
        expect(cellsOf(text, delimiter).cells).toEqual(said);
      }),
    );
  });
});

describe('bytes', () => {
  const text = 'C1;4,7 µF\nC2;1 nF';
  const wide = Buffer.from(text, 'utf16le');
  test.each([
    ['UTF-8', Buffer.from(text), 0],
    ['UTF-16, low byte first, with its mark', Buffer.from(`\uFEFF${text}`, 'utf16le'), 1],
    ['UTF-16, low byte first', wide, 1],
    ['UTF-16, high byte first', Buffer.from(wide).swap16(), 1],
    ['Windows-1252', Buffer.from(text, 'latin1'), 1],
  ])('%s', (_, bytes, said) => {
    const read = textOfBytes(bytes);
    if (!read.ok) throw new Error(read.message);
    expect(read.text).toBe(text);
    expect(read.said).toHaveLength(said);
  });
});
