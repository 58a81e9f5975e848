import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../src/catalogue/slices/slice-kind.ts';
import { readKindAddress } from '../../src/substitution/kind-address.ts';
import { kindJudged } from '../../src/substitution/kind-judged.ts';

/** Whether an old resistor, trimmer or control needs replacing, by the address of its page. */

const catalogue = loadCatalogue();

const judged = (type: string, position: string, query: string, from = catalogue) => {
  const asked = new URLSearchParams(query);
  return kindJudged(from, readKindAddress(from, type, position, asked).request, asked);
};

describe('what the address says that it reads', () => {
  test.each([
    ['carbon-composition', 'plate-load', 'value=100k&tol=10&reads=128k', 'replace', /126\.5/],
    ['carbon-composition', 'plate-load', 'value=100k&tol=10&reads=104k', 'leave', /90/],
    ['carbon-composition', 'plate-load', 'value=100k&tol=10&reads=104,5 k', 'leave', /104\.5/],
    ['carbon-composition', 'plate-load', 'value=100k&reads=OL', 'replace', /More than 20/],
    ['carbon-pot', 'panel-voltage', 'value=470k&tol=20&reads=640k', 'test', /564/],
    // The total of a trimmer stands among its numbers already; another reading comes before it.
    ['carbon-preset', 'pitch-trim', 'value=10k&tol=20&old-total=14k', 'test', /14/],
    ['carbon-preset', 'pitch-trim', 'value=10k&tol=20&old-total=14k&reads=OL', 'replace', /20/],
  ])('%s in %s, %s: %s', (type, position, query, advice, working) => {
    const { judgement, inputs } = judged(type, position, query);
    expect(judgement.advice).toBe(advice);
    expect(judgement.reasons[0]?.working).toMatch(working);
    expect(inputs.map(({ fault }) => fault)).toEqual([false]);
  });
});

describe('what it cannot be judged by', () => {
  test.each([
    ['reads=12 V', true, /resistance is wanted/],
    ['reads=lots', true, /lots/],
    ['reads=-', true, /no number to judge by/],
    // Nobody can be held to the mark of a part that is only usual in its place.
    ['reads=128k', false, /marked/],
  ])('%s', (query, fault, note) => {
    const { judgement, inputs } = judged('carbon-composition', 'plate-load', query);
    expect(judgement).toEqual(judged('carbon-composition', 'plate-load', '').judgement);
    expect(inputs).toEqual([expect.objectContaining({ fault, note: expect.stringMatching(note) })]);
  });
});

test.each([
  ['carbon-composition', 'plate-load', 'value=100k&tol=10&reads=128k'],
  ['carbon-composition', 'plate-load', ''],
  ['metal-film', 'plate-load', ''],
  ['carbon-preset', 'pitch-trim', ''],
])('%s in %s, %s, is judged alike by what a browser is sent', (type, position, query) => {
  const sent = JSON.parse(
    JSON.stringify(sliceKindPosition(catalogue, position)),
  ) as typeof catalogue;
  const { reasons } = judged(type, position, query).judgement;
  const before = reasons.map(({ why, working, note, source }) => ({ why, working, note, source }));
  expect(judged(type, position, query, sent).judgement.reasons).toMatchObject(before);
});
