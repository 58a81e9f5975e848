import { expect, test } from 'vitest';
import { hitsOf, type FoundPage } from '../../src/search/hits.ts';

const page = (title: string, excerpt: string): FoundPage => ({
  url: '/a/',
  meta: { title },
  excerpt,
  plain_excerpt: excerpt.replaceAll(/<\/?mark>/g, ''),
});

test.each([
  ['leakage', 'Much <mark>leakage</mark>.', 1],
  ['leaking', 'Much <mark>leakage</mark>.', 1],
  // The library falls back on words that begin with fewer letters than were asked for.
  ['lexicon', 'A <mark>level</mark>.', 0],
  ['paper lexicon', 'A <mark>paper</mark> tube.', 1],
  ['4066', 'The “<mark>4066</mark>”.', 1],
])('%j in %j: %i', (text, excerpt, count) => {
  expect(hitsOf(text, [page('A page', excerpt)])).toHaveLength(count);
});

test('what is shown reads as the page does, without its title twice', () => {
  expect(hitsOf('dries', [page('Wet․', 'Wet․ It <mark>dries</mark> out․')])).toEqual([
    { url: '/a/', title: 'Wet.', excerpt: 'It dries out.' },
  ]);
});
