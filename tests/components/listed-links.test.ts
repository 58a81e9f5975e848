import { expect, test } from 'vitest';
import { listedLinks } from '../../src/components/listed-links.ts';

test.each([
  ['nothing', [], ''],
  ['one word', [{ word: 'a & b' }], 'a &amp; b'],
  [
    'words and links',
    [{ word: 'a', path: '/a/' as const }, { word: 'b' }],
    '<a href="/a/">a</a>, b',
  ],
])('%s', (_what, words, html) => {
  expect(listedLinks(words)).toBe(html);
});
