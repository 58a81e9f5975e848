import { expect, test } from 'vitest';
import type { Tried } from '../../../src/engine/assessment/rank.ts';
import { bestOf, servesBetter, settingFor, tryPart } from '../../../src/engine/assessment/trial.ts';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import { catalogue } from './setting.ts';
import { spreadPairs } from './spread-pairs.ts';

const pairs = spreadPairs(catalogue, 37);

test('the pairs have every position and many types among them', () => {
  expect(new Set(pairs.map(([, position]) => position)).size).toBe(
    Object.keys(catalogue.positions).length,
  );
  expect(new Set(pairs.map(([type]) => type)).size).toBeGreaterThan(30);
});

test.each(pairs)(
  'for %s in %s a part given up early would not have been the best',
  (type, position) => {
    const setting = settingFor(catalogue, { original: { type }, position });
    let givenUp = 0;
    for (const stand of Object.keys(catalogue.types)) {
      const [first, ...rest] = offeredParts(catalogue, stand, setting.circumstances);
      if (first === undefined) continue;
      const start = tryPart(first, setting);
      if (start.verdict === 'fits') continue;
      let best: Tried = start;
      for (const part of rest) {
        if (best.verdict === 'fits') break;
        const next = tryPart(part, setting);
        if (servesBetter(next, best)) best = next;
        else givenUp += 1;
      }
      // Demands are tried in another order, so that sums may differ in their last digit.
      const short = best.short.map((decades): unknown => expect.closeTo(decades, 9));
      expect(bestOf(start, rest, setting, servesBetter)).toEqual({ ...best, short });
    }
    expect(givenUp).toBeGreaterThan(0);
  },
);
