import { expect, test } from 'vitest';
import { readable } from '../../src/search/full-stops.ts';
import { indexedHtml } from '../../src/search/indexed-html.ts';

/** What stands between tags, run together as the library does. */
const textOf = (html: string): string =>
  readable(indexedHtml(html))
    .replaceAll(/<[^>]*>/g, '')
    .trim();

test.each([
  ['a term and what is said of it', '<dl><dt>Ages</dt><dd>It dries</dd></dl>', 'Ages: It dries.'],
  ['a question', '<dt>Looks like?</dt><dd>Blue.</dd>', 'Looks like? Blue.'],
  [
    'a table',
    '<caption>Marks</caption><tr><th>Code</th><th>Means</th></tr><tr><th>0G</th><td>4 V</td></tr>',
    'Marks. Code · Means · 0G · 4 V',
  ],
  ['a fold', '<details><summary>All 25</summary><p>Here</p></details>', 'All 25. Here'],
  ['choices', '<option>One</option><option>Two</option>', 'One. Two.'],
  ['a drawing between', '<p>Bar <svg><text>0.1</text><text>1</text></svg>of it</p>', 'Bar of it'],
  [
    'a drawing in a drawing',
    '<svg><text>a</text><svg><path></path></svg><text>b</text></svg><p>c</p><svg></svg>',
    'c',
  ],
  ['a formula', '<p>So <math><mi>C</mi><mi>V</mi></math> is it.</p>', 'So  is it.'],
  [
    'a mark of a basis',
    '<td>15 % <a class="basis" href="/x/"><span aria-hidden="true">pub.</span><span class="hidden-text">published, source</span></a></td>',
    '15 %',
  ],
  [
    'a mark beside its source',
    '<p>15 % <span class="basis"><span aria-hidden="true">pub.</span><span class="hidden-text">published</span></span> <b>Sheet</b></p>',
    '15 %  Sheet',
  ],
  ['room before the end', '<dd>It dries </dd><dd>Or vents. </dd><p>x</p>', 'It dries. Or vents. x'],
  [
    'a mark at the end',
    '<dd>little <span class="basis"><span aria-hidden="true">mem.</span><span class="hidden-text">from memory</span></span></dd><p>x</p>',
    'little. x',
  ],
  ['an abbreviation that has its own end', '<caption>Kept.</caption><p>x</p>', 'Kept. x'],
])('%s', (_, html, text) => {
  expect(textOf(html)).toBe(text);
});
