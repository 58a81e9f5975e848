import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allSums } from '../../../src/engine/sums/index.ts';

test.each(allSums)('the page of $id finds its file by group and id', ({ group, id }) => {
  expect(existsSync(`src/engine/sums/${group}/${id}.ts`)).toBe(true);
  expect(existsSync(`src/browser/sum-groups/${group}.ts`)).toBe(true);
});
