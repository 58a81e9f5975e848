import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findStandIns } from '../../src/engine/index.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import { answeredFirst } from '../../src/substitution/strangeness.ts';

const catalogue = loadCatalogue();

describe('the list begins with what the answer names, and keeps its ranking behind it', () => {
  test.each([
    // A Y2 film where a Y2 film was, though a ceramic disc has more to spare.
    ['film-y2', 'mains-y', 'film-y2'],
    // Film with leads of the old part's family before a ceramic that does as well.
    ['pet-metallized', 'interstage-coupling', 'pp-metallized'],
    // Film for paper, which was wound as film is, before a ceramic of its value.
    ['paper-wax', 'interstage-coupling', 'pp-metallized'],
    // What everybody stocks before what some do, here mica.
    ['pet-metallized', 'vco-timing', 'ceramic-c0g'],
  ])('%s in %s', (original, position, first) => {
    const ranked = findStandIns(catalogue, { original: { type: original }, position });
    const listed = answeredFirst(catalogue, original, ranked);
    expect(listed[0]?.candidate.type).toBe(first);
    expect(listed.slice(1)).toEqual(ranked.filter((one) => one !== listed[0]));
    const { short_name: name } = catalogue.types[first] ?? { short_name: '' };
    const sentence = answerSentence(catalogue, original, ranked);
    expect(sentence.toLowerCase().startsWith(name.toLowerCase())).toBe(true);
  });

  test('where nothing fits, nothing is moved', () => {
    const ranked = findStandIns(catalogue, {
      original: { type: 'film-y2' },
      position: 'mains-y',
    }).filter(({ verdict }) => verdict === 'keep-out');
    expect(answeredFirst(catalogue, 'film-y2', ranked)).toEqual(ranked);
    expect(answeredFirst(catalogue, 'film-y2', [])).toEqual([]);
  });
});
