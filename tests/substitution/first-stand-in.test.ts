import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import { partPhrase } from '../../src/substitution/phrases.ts';
import { firstStandIn, pairPaths, referenceStandIns } from '../../src/substitution/reference.ts';

/** A list that names one stand-in a page must name what the answer of that page names. */
describe('the stand-in that is named first', () => {
  const catalogue = loadCatalogue();
  const EVERY = 7;
  const pairs = pairPaths()
    .filter(({ props }) => props.pairing.met)
    .filter((_, at) => at % EVERY === 0)
    .map(({ params }) => params);

  test.each(pairs)('$type in $position', ({ type, position }) => {
    const answer = answerSentence(
      catalogue,
      { original: { type }, position },
      referenceStandIns(type, position),
    );
    const first = firstStandIn(type, position);
    if (first === undefined || first.verdict === 'keep-out')
      expect(answer).toMatch(/^No part made today fits/);
    else expect(answer).toContain(partPhrase(first.candidate));
  });
});
