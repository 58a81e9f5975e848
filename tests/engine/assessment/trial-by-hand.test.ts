import { describe, expect, test } from 'vitest';
import { emptyTally } from '../../../src/engine/assessment/rank.ts';
import {
  firstThatFits,
  servesBetter,
  settingFor,
  tryPart,
  type Standing,
} from '../../../src/engine/assessment/trial.ts';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import { single } from '../findings/by-hand.ts';
import { catalogue } from './setting.ts';

/** Which of two parts serves better, and the first of several that fits. */

const short = (decades: number, capacitance: number): Standing => ({
  ...emptyTally(),
  part: { ...single, capacitance },
  verdict: 'fits-if',
  short: [0, 0, decades],
});

describe('on a condition that both have, a part that falls less short of it serves', () => {
  test.each([
    ['better where it has the same value', 1e-6, true],
    ['no better where that is another: one would rather have the nearer value', 2e-6, false],
  ])('%s', (_what, capacitance, better) => {
    expect(servesBetter(short(0.5, capacitance), short(1, 1e-6))).toBe(better);
  });
});

describe('the first of the parts of a type that fits in coupling between stages', () => {
  const setting = settingFor(catalogue, {
    original: { type: 'pet-metallized' },
    position: 'interstage-coupling',
  });
  const all = setting.demands.map((_, place) => place);
  const find = (type: string, places: number[]) => {
    const parts = offeredParts(catalogue, type, setting.circumstances);
    return { parts, found: firstThatFits(parts, setting, places) };
  };

  test.each([
    ['in the order of the demands', all],
    ['in another', all.toReversed()],
  ])('is the one that all demands say fits, judged by them %s', (_what, order) => {
    const { parts, found } = find('pp-metallized', [...order]);
    const wanted = parts
      .map((part) => tryPart(part, setting))
      .find(({ verdict }) => verdict === 'fits');
    expect(wanted).toBeDefined();
    expect(found).toEqual(wanted);
  });

  test('is none where none does, and what rules parts out is asked first from then on', () => {
    const places = all.toReversed();
    const { parts, found } = find('ceramic-y5v', places);
    expect(parts.length).toBeGreaterThan(0);
    expect(found).toBeUndefined();
    expect(places.toSorted((a, b) => a - b)).toEqual(all);
    const last = parts.at(-1);
    const judged = last === undefined ? undefined : tryPart(last, setting).judged;
    expect(judged?.[places[0] ?? NaN]?.verdict).not.toBe('fits');
  });
});
