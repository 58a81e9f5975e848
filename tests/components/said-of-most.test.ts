import { expect, test } from 'vitest';
import { saidOfMost } from '../../src/components/said-of-most.ts';

test.each<[remarks: string[], said: string | undefined]>([
  [[], undefined],
  [['a'], 'a'],
  [['a', 'b', 'a'], 'a'],
  [['a', 'b', 'b', 'a'], undefined],
  // Of a row without a remark nothing is said.
  [['', 'a', 'a'], undefined],
  [['', '', 'a'], undefined],
])('of %j is %j', (remarks, said) => {
  expect(saidOfMost(remarks)).toBe(said);
});
