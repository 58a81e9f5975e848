import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { citedPages, type Citation } from '../../src/text/citations.ts';

const rowsOf = (count: number): Citation[] =>
  Array.from({ length: count }, (_, index) => ({
    table: 'demands.csv',
    what: `row ${String(index)}`,
    figure: '',
    locator: '',
    basis: 'common-practice',
    path: '/',
  }));

describe('rows of one table that rest on a source', () => {
  test.each([
    [1, [1]],
    [500, [500]],
    [501, [251, 250]],
    [1026, [342, 342, 342]],
    [1501, [376, 376, 376, 373]],
  ])('%i rows stand on pages of %j', (count, sizes) => {
    expect(citedPages(rowsOf(count)).map(({ cited }) => cited.length)).toEqual(sizes);
  });

  test('each stands on one of them, in order, and each page says how many are before it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (count) => {
        const rows = rowsOf(count);
        const pages = citedPages(rows);
        expect(pages.flatMap(({ cited }) => cited)).toEqual(rows);
        for (const { cited, before, number, of } of pages) {
          expect(rows[before]).toBe(cited[0]);
          expect([number <= of, of]).toEqual([true, pages.length]);
        }
      }),
    );
  });
});
