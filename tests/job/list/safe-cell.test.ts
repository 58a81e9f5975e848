import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { safeCell } from '../../../src/job/list/safe-cell.ts';

describe('cells of a spreadsheet', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    [' =1', "' =1"],
    ['-5', "'-5"],
    ['a,b', '"a,b"'],
    ['+1,2', `"'+1,2"`],
    ['say "hi"', '"say ""hi"""'],
    ['plain', 'plain'],
  ])('%s', (text, expected) => {
    expect(safeCell(text)).toBe(expected);
  });

  test.each([
    ['a\tb', '"a\tb"'],
    ['a,b', 'a,b'],
    ['=1\t2', `"'=1\t2"`],
    ['\t=1', `"'\t=1"`],
    ['two\nlines', '"two\nlines"'],
  ])('%j between tabs', (text, expected) => {
    expect(safeCell(text, '\t')).toBe(expected);
  });

  test('none begins as a formula', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(safeCell(text)).not.toMatch(/^"?\s*[=+\-@]/u);
        expect(safeCell(text, '\t')).not.toMatch(/^"?\s*[=+\-@]/u);
      }),
    );
  });
});
