import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { guessColumns } from '../../../src/job/list/columns.ts';
import { readDelimited } from '../../../src/job/list/delimited.ts';
import { linesFromRows } from '../../../src/job/list/lines-in.ts';
import { tableOut } from '../../../src/job/list/table-out.ts';
import { emptyLine } from '../../../src/job/model/job.ts';
import { anyLine } from '../any-job.ts';

const { columnWords: words, kindWords } = loadCatalogue().job;

const rowsOf = (text: string) => {
  const read = readDelimited(text);
  if (!read.ok) throw new Error(read.message);
  return read.rows;
};
const linesOf = (text: string) => linesFromRows(rowsOf(text), guessColumns(rowsOf(text), words));

describe('columns', () => {
  test.each([
    ['TL072\nNE5532\n4066\nBC109\n2N3904\n7815'],
    ['BC107\nBC108\nBC109'],
    ['TL072'],
    ['104K\n47n\n223J'],
    ['100n 63V\n10uF 25V'],
  ])('that stand alone and hold no designators are what is printed: %j', (text) => {
    expect(guessColumns(rowsOf(text), words, kindWords)).toMatchObject({
      hasHeader: false,
      fields: ['marking'],
    });
  });

  test('that hold values and type numbers are values', () => {
    const list = 'C1\t100n\t63V\nR1\t4k7\t\nIC1\tTL072\t\nQ1\tBC109\t';
    expect(guessColumns(rowsOf(list), words, kindWords).fields).toEqual([
      'designators',
      'value',
      'volts',
    ]);
  });

  test.each(['C1\nC2\nC3', 'IC101\nIC102', 'C1-C4\nR1'])('that are designators: %j', (text) => {
    expect(guessColumns(rowsOf(text), words, kindWords).fields).toEqual(['designators']);
  });

  test.each([
    [
      'Ref Des,Qty,VALUE,Tol.,Rated voltage',
      ['designators', 'quantity', 'value', 'tolerance', 'volts'],
    ],
    ['Value,Colour,value', ['value', undefined, undefined]],
  ])('by their words: %s', (head, fields) => {
    expect(guessColumns(rowsOf(`${head}\nx,y,z`), words)).toMatchObject({ hasHeader: true });
    expect(guessColumns(rowsOf(head), words).fields).toEqual(fields);
  });

  test.each([
    // A word that heads designators in one list heads kinds in another.
    ['Pos.,Bauteil,Wert', ['designators', 'kind', 'value']],
    ['Bauteil,Art,Wert', ['designators', 'kind', 'value']],
    ['Bauteil,Bez.,Wert', ['designators', undefined, 'value']],
    ['Position,Bauteil,Wert', ['designators', 'kind', 'value']],
    ['Position,Part Number,Value', ['designators', undefined, 'value']],
  ])('by both where a word may mean two things: %s', (head, fields) => {
    const body = 'C1,Elko,10 µF\nR1-R4,Widerstand,4k7\nC2,Folie,22 nF';
    expect(guessColumns(rowsOf(`${head}\n${body}`), words).fields).toEqual(fields);
  });

  test.each([
    // One word that is misspelt is no reason to leave the column out.
    ['Ref,Part,Value', 'C1,Elko,10 µF\nR1,resistor,4k7\nU1,op amp,TL072\nC2,polyster,22 nF'],
    ['Ref,Description,Value', 'C1,capacitor,10 µF\nRV1,trimmer,10k'],
  ])('by the words for kinds of part in them: %s', (head, body) => {
    const { fields } = guessColumns(rowsOf(`${head}\n${body}`), words, kindWords);
    expect(fields).toEqual(['designators', 'kind', 'value']);
  });

  test.each([
    ['Description,Ref', 'Tantalum 10 µF 16 V,C1\nCA3140E,U1', ['marking', 'designators']],
    // What is printed on a part tells more of it than what a list says of it.
    ['Description,Ref,Marking', 'film cap 10n,C1,103K', [undefined, 'designators', 'marking']],
  ])('that describe parts are read as what is printed on them: %s', (head, body, fields) => {
    expect(guessColumns(rowsOf(`${head}\n${body}`), words, kindWords).fields).toEqual(fields);
  });

  test.each([
    ['1,C1-C2,10 µF\n2,C3,1 µF\n3,C4,4n7', [undefined, 'designators', 'value']],
    // Two rows may need one part and two.
    ['1,C1,10 µF\n2,C3-C4,1 µF', ['quantity', 'designators', 'value']],
    ['1,C1,10 µF\n2,C3-C4,1 µF\n1,C5,1 µF', ['quantity', 'designators', 'value']],
  ])('that count the rows are no quantities: %s', (body, fields) => {
    expect(guessColumns(rowsOf(body), words).fields).toEqual(fields);
    expect(guessColumns(rowsOf(`Item,Ref,Value\n${body}`), words).fields).toEqual(fields);
  });

  test('by their contents', () => {
    const rows = rowsOf('C1-C4\t4\t4n7\t10 %\t63 V\nC5\t1\t10 µF\t20%\t25V');
    expect(guessColumns(rows, words)).toEqual({
      hasHeader: false,
      fields: ['designators', 'quantity', 'value', 'tolerance', 'volts'],
    });
  });
});

describe('lines', () => {
  test('what is not understood is kept', () => {
    const { lines, badRows, said } = linesOf(
      'Ref,Value,Qty,Shelf\nC1-C2,10 µF,3,A\nC3,4,7 nF,1,B\n,,,C',
    );
    expect(lines).toMatchObject([
      { designators: 'C1-C2', value: '10 µF', rest: { Qty: '3', Shelf: 'A' } },
    ]);
    expect(said).toEqual(['Row 2 says 3 parts and names 2.']);
    expect(badRows.map(({ row, cells }) => [row, cells.join('|')])).toEqual([
      [3, 'C3|4|7 nF|1|B'],
      [4, '|||C'],
    ]);
  });

  test('one part is told of in the singular', () => {
    const { said } = linesOf('Ref,Qty\nC1-C2,1');
    expect(said).toEqual(['Row 2 says 1 part and names 2.']);
  });

  test('prototype keys do no harm', () => {
    const { lines } = linesOf('Ref,__proto__,constructor,x,x\nC1,a,b,c,d');
    expect(Object.entries(lines[0]?.rest ?? {})).toEqual([
      ['column 2', 'a'],
      ['constructor', 'b'],
      ['x', 'c'],
      ['x (2)', 'd'],
    ]);
    expect(Object.hasOwn(Object.prototype, 'a')).toBe(false);
  });

  test('written, and read back exactly', () => {
    fc.assert(
      fc.property(fc.array(anyLine, { minLength: 1, maxLength: 5 }), (made) => {
        // Only what a table holds; an empty cell says as much as none.
        const lines = made.map((line, at) => ({
          ...emptyLine(`line-${String(at + 1)}`),
          ...Object.fromEntries(
            (['kind', 'marking', 'type', 'value', 'tolerance', 'volts', 'position'] as const).map(
              (field) => [field, line[field]],
            ),
          ),
          designators: 'C1',
          note: line.note.replaceAll('\0', ''),
          rest: Object.fromEntries(
            Object.entries(line.rest).filter(([key, text]) => key.trim() !== '' && text !== ''),
          ),
        }));
        const read = readDelimited(tableOut(lines), ',');
        if (!read.ok) throw new Error(read.message);
        const back = linesFromRows(read.rows, guessColumns(read.rows, words));
        expect(back.badRows).toEqual([]);
        expect(back.lines).toEqual(lines);
      }),
    );
  });

  test.each(['=1', '+1', '-1', '@a', '\ta', '\ra', ' =1', "'=1", "''=1"])(
    'no spreadsheet runs %j, and it comes back',
    (note) => {
      const text = tableOut([{ ...emptyLine('line-1'), designators: 'C1', note }]);
      expect(text).toMatch(/["',]'/u);
      expect(linesOf(text).lines[0]?.note).toBe(note);
    },
  );
});
