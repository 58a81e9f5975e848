import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  brokenSeals,
  readSeals,
  sealFaults,
  sealOf,
  writeSeals,
} from '../../src/catalogue/seals.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

const broken = (old: string, now: string) => brokenSeals(sealOf(bytes(old)), sealOf(bytes(now)));

describe('a seal', () => {
  test.each([
    ['nothing changed', 'a\nb\nc\n', 'a\nb\nc\n', { changed: [], gone: [] }],
    ['one line changed', 'a\nb\nc\n', 'a\nB\nc\n', { changed: [2], gone: [] }],
    ['a line added', 'a\nb\nc\n', 'a\nb\nx\nc\n', { changed: [3], gone: [] }],
    ['a line gone', 'a\nb\nc\n', 'a\nc\n', { changed: [], gone: [2] }],
    ['lines turned', 'a\nb\nc\n', 'b\na\nc\n', { changed: [2], gone: [1] }],
    ['one changed and one added', 'a\nb\nc\n', 'A\nb\nx\nc\n', { changed: [1, 3], gone: [] }],
    ['all of it gone', 'a\nb\n', '', { changed: [], gone: [1] }],
    [
      'two changed and one added',
      'a\nb\nc\nd\n',
      'a\nB\nc\nx\nD\n',
      { changed: [2, 4, 5], gone: [] },
    ],
    ['the same line once more', 'a\na\n', 'a\na\na\n', { changed: [3], gone: [] }],
    ['the same line once less, without an end', 'a\na\na', 'a\na', { changed: [], gone: [3] }],
    ['the first turned to the end: most stays', 'a\nb\nc', 'b\nc\na', { changed: [3], gone: [1] }],
    // Of old only b and d are left, in lines 3 and 5; a and c are gone, of which x stands for c.
    [
      'lines about what stays',
      'p\nq\na\nb\nc\nd',
      'p\nq\nb\nx\nd\na',
      { changed: [4, 6], gone: [3] },
    ],
    ['two gone, with one in their place', 'a\nb\nc\nd\n', 'a\nx\nd\n', { changed: [2], gone: [3] }],
    // a and c are left; b and y stand for each other, z for one of d and e.
    ['one before what stays', 'a\nb\nc\nd\ne', 'x\na\ny\nc\nz', { changed: [1, 3, 5], gone: [6] }],
    ['one before it gone', 'x\na\ny\nc\nz', 'a\nb\nc\nd\ne', { changed: [2, 4, 5], gone: [1] }],
    ['some at each end', 'a\nb\nc\nd\ne', 'x\nb\nc\nd', { changed: [1], gone: [5] }],
    ['a carriage return', 'a\nb\n', 'a\r\nb\n', { changed: [1], gone: [] }],
  ])('tells %s', (_what, old, now, expected) => {
    expect(broken(old, now)).toEqual(expected);
  });

  // SHA-256 of `abc` as FIPS 180-2 has it, and of nothing.
  test('is the first six digits of SHA-256 of each line', () => {
    expect(sealOf(bytes('abc\n'))).toEqual(['ba7816', 'e3b0c4']);
    expect(writeSeals(new Map([['x.csv', ['ba7816', 'e3b0c4']]]))).toBe('x.csv ba7816 e3b0c4\n');
  });

  test('that is broken is told by its line', () => {
    const faults = sealFaults('x.csv', bytes('é\nb\n'), sealOf(bytes('a\nb\nc\n')));
    expect(faults).toMatchObject([
      { file: 'x.csv', line: 1, column: 1, rule: 'seal', got: 'é' },
      { file: 'x.csv', line: 3, column: 1, rule: 'seal', got: '' },
    ]);
    expect(faults[0]?.wrong).not.toBe(faults[1]?.wrong);
    expect(sealFaults('x.csv', bytes('a\n'), sealOf(bytes('a\n')))).toEqual([]);
  });

  test('of a table that has none is missing', () => {
    expect(sealFaults('x.csv', bytes('a\n'), undefined)).toMatchObject([{ rule: 'seal', line: 1 }]);
  });

  test('is read back as it was written', () => {
    const seals = new Map([
      ['a.csv', sealOf(bytes('a,b\n1,2\n'))],
      ['b/c.csv', sealOf(bytes(''))],
    ]);
    expect(readSeals(writeSeals(seals))).toEqual(seals);
  });

  const lines = fc.array(fc.constantFrom('a', 'b', 'c', 'd'), { maxLength: 12 });

  test('breaks where and only where a table changed', () => {
    fc.assert(
      fc.property(lines, lines, (old, now) => {
        const { changed, gone } = broken(old.join('\n'), now.join('\n'));
        expect(changed.length + gone.length > 0).toBe(old.join('\n') !== now.join('\n'));
        for (const line of changed) expect(line).toBeLessThanOrEqual(Math.max(now.length, 1));
      }),
    );
  });
});
