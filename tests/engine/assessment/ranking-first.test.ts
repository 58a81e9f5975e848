import { describe, expect, test } from 'vitest';
import type { Leaning, Ranking } from '../../../src/engine/assessment/assess.ts';
import {
  assess,
  findStandIns,
  rankStandIns,
  verdictOrder,
  type RankedStandIn,
  type Request,
} from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from './setting.ts';

/** What stands first by a leaning is what sorting all of them would put there, for a few requests. */

const old = (type: string, farad: number, volts: number): Request['original'] => ({
  type,
  capacitance: exactly(farad),
  ratedVoltage: exactly(volts),
});

const many: Request = { original: old('ceramic-z5u', 1e-7, 50), position: 'interstage-coupling' };

const requests: Record<string, Request> = {
  'many parts fit': many,
  'few parts fit': { original: old('ps-film-foil', 1e-9, 125), position: 'vco-timing' },
  'only pairs fit': { original: old('paper-wax', 50e-9, 100), position: 'active-filter' },
  'nothing fits': {
    original: old('al-electrolytic-wet', 1e-2, 400),
    position: 'reservoir',
    conditions: given({ vdc: 5000, 'v-surge': 6000 }),
  },
};

const byName =
  (letter: string) =>
  (name: string): number =>
    name.includes(letter) ? 0 : 1;

const leanings: Record<string, Leaning> = {
  'no leaning': { ofType: () => 0, ofPart: () => 0 },
  'a leaning to a kind of type': {
    ofType: byName('metallized'),
    ofPart: ({ type }) => byName('metallized')(type),
  },
  'a leaning from a kind of type': {
    ofType: (type) => 1 - byName('ceramic')(type),
    ofPart: ({ type }) => 1 - byName('ceramic')(type),
  },
  'a leaning to what is built in some way': {
    ofType: () => 0,
    ofPart: (part, style) => byName('box')(style) + (part.made === undefined ? 0 : 0.5),
  },
};

const firstOf = (ranking: Ranking, { ofPart }: Leaning): RankedStandIn | undefined => {
  const lean = ({ candidate, style }: RankedStandIn): number => ofPart(candidate, style);
  return ranking
    .standIns()
    .toSorted(
      (a, b) =>
        verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) || lean(a) - lean(b),
    )[0];
};

describe.each(Object.entries(requests))('where %s', (_what, request) => {
  test.each(Object.entries(leanings))('%s', (_name, leaning) => {
    const ranking = rankStandIns(catalogue, request);
    const wanted = firstOf(ranking, leaning);
    const found = rankStandIns(catalogue, request).first(leaning);
    expect(wanted).toBeDefined();
    expect([found?.candidate, found?.verdict, found?.style]).toEqual([
      wanted?.candidate,
      wanted?.verdict,
      wanted?.style,
    ]);
  });

  test('the ranking is what is found, part by part', () => {
    const ranking = rankStandIns(catalogue, request);
    const all = findStandIns(catalogue, request);
    expect(ranking.original).toMatchObject({ type: request.original.type });
    expect(ranking.standIns()).toBe(ranking.standIns());
    expect(
      ranking.standIns().map(({ candidate, verdict, style }) => [candidate, verdict, style]),
    ).toEqual(all.map(({ candidate, verdict, buy }) => [candidate, verdict, buy?.style ?? '']));
    expect(ranking.standIns()[0]?.explain()).toEqual(all[0]);
    const type = 'pp-metallized';
    expect(ranking.asked({ type }).explain()).toEqual(assess(catalogue, request, { type }));
  });
});

test('without any type on the market nothing stands first', () => {
  const types = Object.fromEntries(
    Object.entries(catalogue.types).map(([id, type]) => [id, { ...type, market: 'none' as const }]),
  );
  const ranking = rankStandIns({ ...catalogue, types }, many);
  expect(ranking.first({ ofType: () => 0, ofPart: () => 0 })).toBeUndefined();
  expect(ranking.standIns()).toEqual([]);
});
