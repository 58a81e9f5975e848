import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import {
  assess,
  findStandIns,
  rankStandIns,
  verdictOrder,
  type RankedStandIn,
} from '../../../src/engine/index.ts';
import { strangeness, strangenessOfType } from '../../../src/substitution/strangeness.ts';
import { spreadPairs } from './spread-pairs.ts';

const catalogue = loadCatalogue();

test.each(spreadPairs(catalogue, 17))(
  '%s in %s is ranked as it is found, and explained alike',
  (type, position) => {
    const request = { original: { type }, position };
    const ranking = rankStandIns(catalogue, request);
    const found = findStandIns(catalogue, request);
    expect(ranking.standIns().map(({ explain }) => explain())).toEqual(found);
    expect(
      ranking.standIns().map(({ candidate, verdict, style }) => [candidate, verdict, style]),
    ).toEqual(found.map(({ candidate, verdict, buy }) => [candidate, verdict, buy?.style ?? '']));
    expect(ranking.asked({ type }).explain()).toEqual(assess(catalogue, request, { type }));
  },
);

test.each(spreadPairs(catalogue, 7))(
  'what stands first for %s in %s is known without the rest',
  (type, position) => {
    const request = { original: { type }, position };
    const ranking = rankStandIns(catalogue, request);
    const lean = (one: RankedStandIn): number =>
      strangeness(catalogue, request, { candidate: one.candidate, buy: { style: one.style } });
    const first = ranking.first({
      ofType: (other) => strangenessOfType(catalogue, request, other),
      ofPart: (candidate, style) => strangeness(catalogue, request, { candidate, buy: { style } }),
    });
    const [expected] = ranking
      .standIns()
      .toSorted(
        (a, b) =>
          verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) || lean(a) - lean(b),
      );
    expect(first?.explain()).toEqual(expected?.explain());
  },
);
