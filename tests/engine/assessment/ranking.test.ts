import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { assess, findStandIns, rankStandIns } from '../../../src/engine/index.ts';
import { spreadPairs } from './spread-pairs.ts';

const catalogue = loadCatalogue();

test.each(spreadPairs(catalogue, 17))(
  '%s in %s is ranked as it is found, and explained alike',
  (type, position) => {
    const request = { original: { type }, position };
    const ranking = rankStandIns(catalogue, request);
    const found = findStandIns(catalogue, request);
    expect(ranking.standIns.map(({ explain }) => explain())).toEqual(found);
    expect(
      ranking.standIns.map(({ candidate, verdict, style }) => [candidate, verdict, style]),
    ).toEqual(found.map(({ candidate, verdict, buy }) => [candidate, verdict, buy?.style ?? '']));
    expect(ranking.assess({ type })).toEqual(assess(catalogue, request, { type }));
  },
);
