import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findKindStandIns } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { resultsMarkup } from '../../src/substitution/results.ts';

const catalogue = loadCatalogue();

const pageOf = (type: string, position: string): string => {
  const assessments = findKindStandIns(catalogue, { original: { type }, position });
  return resultsMarkup({ catalogue, position, assessments, isFull: () => false })
    .map(toHtml)
    .join('');
};

test.each([
  ['carbon-preset', 'pitch-trim', 0],
  ['carbon-composition', 'fusible-position', 1],
] as const)(
  'what is kept out for %s in %s is listed, or that nothing is',
  (type, position, some) => {
    const html = pageOf(type, position);
    expect(html).not.toContain('<ul class="stand-ins"></ul>');
    expect(html.includes('None of those that are made today')).toBe(some === 0);
    expect(html.split('id="keep-out"')[1]?.includes('<li')).toBe(some === 1);
  },
);
