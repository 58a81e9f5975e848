import { expect, test } from 'vitest';
import { shareOfBorne, timesAsked } from '../../../src/engine/equations/beyond-telling.ts';

test.each([
  ['a half of it', 1, 2, 0.5],
  ['as much', 2, 2, 1],
  ['nothing of something', 0, 2, 0],
  ['nothing of nothing', 0, 0, 0],
  ['something of what bears nothing', 1e-9, 0, 1000],
])('%s', (_what, asked, borne, share) => {
  expect(shareOfBorne(asked, borne)).toBe(share);
});

test('what a part gives goes by what is asked, and is plenty where nothing is', () => {
  const gives = { min: 1, typ: 2, max: 4 };
  expect(timesAsked(gives, 2)).toEqual({ min: 0.5, typ: 1, max: 2 });
  expect(timesAsked(gives, 0)).toEqual({ min: 1000, typ: 1000, max: 1000 });
});
