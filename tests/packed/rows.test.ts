import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceDevices } from '../../src/catalogue/slices/slice-devices.ts';
import { sliceJob } from '../../src/catalogue/slices/slice-job.ts';
import { sliceKindPosition } from '../../src/catalogue/slices/slice-kind.ts';
import { sliceLook } from '../../src/catalogue/slices/slice-look.ts';
import { slicePosition } from '../../src/catalogue/slices/slice-position.ts';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import type { Catalogue } from '../../src/engine/index.ts';
import { packRows, unpackRows } from '../../src/packed/rows.ts';

describe('tables of rows', () => {
  test.each<[name: string, plain: unknown, packed: unknown]>([
    ['no table', { a: 1, b: 'two', c: null }, { a: 1, b: 'two', c: null }],
    ['two rows', [{ a: 1 }, { a: 2 }], [{ a: 1 }, { a: 2 }]],
    ['three rows', [{ a: 1 }, { a: 2 }, { a: 3 }], { $rows: [[['a']], [0, 1], [0, 2], [0, 3]] }],
    [
      'a column that is left out',
      [{ a: 1, b: true }, { b: false }, { a: null, b: true }],
      {
        $rows: [
          [['a', 'b'], ['b']],
          [0, 1, true],
          [1, false],
          [0, null, true],
        ],
      },
    ],
    [
      'columns in another order',
      [{ a: 1, b: 2 }, { b: 2, a: 1 }, {}],
      { $rows: [[['a', 'b'], ['b', 'a'], []], [0, 1, 2], [1, 2, 1], [2]] },
    ],
    ['rows among others', [{ a: 1 }, { a: 2 }, 3], [{ a: 1 }, { a: 2 }, 3]],
    ['lists of lists', [[1], [2], [3]], [[1], [2], [3]]],
    [
      'a table in a row of one',
      { t: [{ u: [{ v: 1 }, { v: 2 }, { v: 3 }] }, {}, {}] },
      { t: { $rows: [[['u'], []], [0, { $rows: [[['v']], [0, 1], [0, 2], [0, 3]] }], [1], [1]] } },
    ],
  ])('%s', (_, plain, packed) => {
    expect(packRows(plain)).toEqual(packed);
    expect(JSON.stringify(unpackRows(packed))).toBe(JSON.stringify(plain));
  });

  test('what is not there is left out', () => {
    const rows = [{ a: 1, b: undefined }, { a: 2 }, { a: 3 }];
    expect(unpackRows(packRows(rows))).toStrictEqual([{ a: 1 }, { a: 2 }, { a: 3 }]);
    expect(packRows({ a: undefined })).toStrictEqual({});
  });

  test('a column may not be called as packed tables are', () => {
    expect(() => packRows({ $rows: [] })).toThrow('$rows is no name for a column');
  });

  test('any plain data come back as they were', () => {
    const key = fc.oneof(fc.constantFrom('id', 'text', 'note', ''), fc.string());
    const isFree = (name: string): boolean => name !== '$rows' && name !== '__proto__';
    const { any } = fc.letrec<{ any: unknown }>((tie) => ({
      any: fc.oneof(
        { maxDepth: 4 },
        fc.constantFrom(null, true, false),
        fc.integer(),
        fc.string(),
        fc.array(tie('any'), { maxLength: 5 }),
        fc.dictionary(key.filter(isFree), tie('any'), { maxKeys: 4 }),
        fc.array(fc.dictionary(fc.constantFrom('id', 'text', 'note'), tie('any')), {
          minLength: 3,
          maxLength: 6,
        }),
      ),
    }));
    fc.assert(
      fc.property(any, (plain) => {
        const sent = JSON.stringify(packRows(plain));
        expect(JSON.stringify(unpackRows(JSON.parse(sent)))).toBe(JSON.stringify(plain));
      }),
    );
  });

  test.each<[name: string, slice: (catalogue: Catalogue) => Catalogue]>([
    ['what reads markings', sliceReading],
    ['what plans a job', sliceJob],
    ['what knows looks', sliceLook],
    ['a position', (catalogue) => slicePosition(catalogue, 'interstage-coupling')],
    ['a position of resistors', (catalogue) => sliceKindPosition(catalogue, 'plate-load')],
    ['a family of devices', (catalogue) => sliceDevices(catalogue, 'amplifier')],
    ['the whole catalogue', (catalogue) => catalogue],
  ])('%s is shorter by a tenth at least, and the same', (_, slice) => {
    const part = slice(loadCatalogue());
    const plain = JSON.stringify(part);
    const sent = JSON.stringify(packRows(part));
    expect(sent.length).toBeLessThan(0.9 * plain.length);
    expect(JSON.stringify(unpackRows(JSON.parse(sent)))).toBe(plain);
  });
});
