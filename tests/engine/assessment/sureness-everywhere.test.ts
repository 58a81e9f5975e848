import { describe, expect, test } from 'vitest';
import { allPairings, findStandIns } from '../../../src/engine/index.ts';
import { catalogue } from './setting.ts';

describe('in every position', () => {
  const PLACES = { published: 0, 'common-practice': 1, memory: 2 } as const;
  const WORDS = ['sure', 'likely', 'possible'];

  test.each(Object.keys(catalogue.positions))(
    '%s: no finding is surer than its basis',
    (position) => {
      const type = allPairings(catalogue).find(
        (pair) => pair.position === position && pair.pairing.met,
      )?.type;
      const all = findStandIns(catalogue, {
        original: { type: type ?? 'glass' },
        position,
      }).flatMap(({ findings }) => findings);
      for (const { demand, sure, basis, apart, standIn, missing } of all) {
        const place = WORDS.indexOf(sure);
        expect(place, demand).toBeGreaterThanOrEqual(PLACES[basis]);
        // Less sure than its basis only by a spread, which is then named.
        expect(place > PLACES[basis], demand).toBe(apart !== undefined);
        if (standIn === undefined) expect(missing.length, demand).toBeGreaterThan(0);
      }
    },
  );
});
