import { expect, test } from 'vitest';
import { lastFew } from '../../src/building/last-few.ts';

test('what was asked for longest ago is worked out again, the rest is not', () => {
  const worked: string[] = [];
  const remembered = lastFew<string | undefined>(2);
  const ask = (key: string): string | undefined =>
    remembered(key, () => {
      worked.push(key);
      return key === 'nothing' ? undefined : key.toUpperCase();
    });
  expect([ask('a'), ask('b'), ask('a'), ask('c'), ask('a'), ask('b')]).toEqual([
    'A',
    'B',
    'A',
    'C',
    'A',
    'B',
  ]);
  expect(worked).toEqual(['a', 'b', 'c', 'b']);
  expect([ask('nothing'), ask('nothing')]).toEqual([undefined, undefined]);
  expect(worked.filter((key) => key === 'nothing')).toHaveLength(1);
});
