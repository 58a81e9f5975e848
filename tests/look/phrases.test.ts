import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { lookKey } from '../../src/engine/index.ts';
import { readLook } from '../../src/look/address.ts';
import {
  groundText,
  likelihoodPercent,
  likelihoodWord,
  rangeText,
} from '../../src/look/phrases.ts';
import { disguisesOf, styleFacts } from '../../src/look/style-facts.ts';

const catalogue = loadCatalogue();
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

test.each([
  { likelihood: 0.9999, word: 'very likely', percent: 'over 95 %' },
  { likelihood: 0.93, word: 'very likely', percent: 'about 95 %' },
  { likelihood: 0.72, word: 'likely', percent: 'about 70 %' },
  { likelihood: 0.3, word: 'possible', percent: 'about 30 %' },
  { likelihood: 0.08, word: 'unlikely', percent: 'about 10 %' },
  { likelihood: 0.01, word: 'very unlikely', percent: 'under 5 %' },
  { likelihood: 0, word: 'very unlikely', percent: 'under 5 %' },
])('$likelihood is $word, $percent', ({ likelihood, word, percent }) => {
  expect(likelihoodWord(likelihood)).toBe(word);
  expect(plain(likelihoodPercent(likelihood))).toBe(percent);
});

describe('ranges as people read them', () => {
  const rangeOf = (owner: string, question: string): string => {
    const row = catalogue.look.ranges.find(
      (range) => [range.style, range.kind].includes(owner) && range.question === question,
    );
    return row === undefined ? '' : plain(rangeText(catalogue, row));
  };
  test.each([
    { owner: 'paper-wax-tubular', question: 'year', text: '1930–1959' },
    { owner: 'pet-boxed', question: 'year', text: 'from 1975 on' },
    { owner: 'paper-wax-tubular', question: 'capacitance', text: '1–470 nF' },
    { owner: 'r-carbon-composition', question: 'resistance', text: '10 Ω to 10 MΩ' },
    { owner: 'pet-metallized', question: 'd-1khz', text: '0.3–1 %' },
    { owner: 'pp-metallized', question: 'warm-c', text: '−0.64 to −0.24 %' },
    { owner: 'pet-metallized', question: 'insulation', text: 'from 3000 MΩ·µF' },
    { owner: 'pet-metallized', question: 'tap', text: 'nothing or rings a little' },
  ])('$question of $owner: $text', ({ owner, question, text }) => {
    expect(rangeOf(owner, question)).toBe(text);
  });
});

test('a ground says the question, the answer, and how that stands to the style', () => {
  const { answers } = readLook(
    catalogue,
    new URLSearchParams('form=tube&finish=wax&ends=wax-plug&year=1985'),
  );
  const [wax] = lookKey(catalogue, answers).styles;
  expect(wax?.id).toBe('paper-wax-tubular');
  const said = [...(wax?.for ?? []), ...(wax?.against ?? [])].map((ground) =>
    plain(groundText(catalogue, ground)),
  );
  expect(said).toContain('Surface: wax, or waxed card; usual');
  expect(said).toContain('Year: 1985; outside (1930–1959)');
});

test('a style says first what is usual of it', () => {
  const shape = styleFacts(catalogue, 'paper-oil-can').find(
    ({ question }) => question.id === 'form',
  );
  expect(shape?.said).toMatch(/^flat-sided metal can; now and then round can/);
});

test('a disguise is seen from both sides', () => {
  const others = (style: string): string[] =>
    disguisesOf(catalogue, style).map(({ other }) => other);
  expect(others('mica-moulded-dots')).toContain('paper-moulded-flat');
  expect(others('paper-moulded-flat')).toContain('mica-moulded-dots');
});
