import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { askedMark } from '../../src/search/asked-mark.ts';
import { answerHtml } from '../search/answer-html.ts';

const catalogue = loadCatalogue();

test.each([
  ['473K', '473K'],
  ['what is 473K', '473K'],
  ['What is 473K?', '473K'],
  ['what does 473K mean', '473K'],
  ['tolerance K', 'K'],
  ['letter K', 'K'],
  ['Z5U capacitor', 'Z5U'],
  ['what', 'what'],
  ['ceramic disc in audio path', 'ceramic disc in audio path'],
  ['8uF 450V replacement', '8uF 450V'],
  ['AC128 equivalent?', 'AC128'],
  ['replacement for 8uF 450V', '8uF 450V'],
  ['what can I use instead of 8uF 450V?', '8uF 450V'],
  ['what replaces 2SC1815', '2SC1815'],
  ['Substitute for a 47n', '47n'],
  ['what replaces my 2SC1815', '2SC1815'],
  ['replacement', 'replacement'],
  ['replaces', 'replaces'],
])('%s asks about %s', (text, mark) => {
  expect(askedMark(text)).toBe(mark);
});

test.each([
  ['473K', ['473', 'letter-k']],
  ['what is 473K', ['473', 'letter-k']],
  ['2A474J', ['2a', '474', 'letter-j']],
  ['Z5U', ['z5u']],
  ['1H', ['1h']],
  ['N750', ['n750']],
  ['tolerance K', ['letter-k']],
  ['npo', ['np0']],
])('%s leads to the pages of its codes', (text, slugs) => {
  const html = answerHtml(catalogue, text);
  for (const slug of slugs) expect(html).toContain(`/read/codes/${slug}/"`);
});
