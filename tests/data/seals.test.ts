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
    ['a carriage return', 'a\nb\n', 'a\r\nb\n', { changed: [1], gone: [] }],
  ])('tells %s', (_what, old, now, expected) => {
    expect(broken(old, now)).toEqual(expected);
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
