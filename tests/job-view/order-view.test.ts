import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { orderMarkup } from '../../src/job-view/order-view.ts';
import { orderOf } from '../../src/job/index.ts';
import { emptyJob } from '../../src/job/model/job.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const catalogue = loadCatalogue();

// What is not understood counts as no spares, which an order may not keep to itself.
test.each<[share: string, least: string, said: RegExp[]]>([
  ['10 %', '1', []],
  ['', '', []],
  ['a few', '1', [/share of spares.*10 %/]],
  ['10 %', 'two', [/least number of spares.*such as 1/]],
  ['a few', 'two', [/share of spares/, /least number of spares/]],
])(
  'of spares as “%s” and “%s” the order says what it does not understand',
  (share, least, said) => {
    const whole = { ...emptyJob('a', new Date(0)).whole, spareShare: share, spareLeast: least };
    const html = orderMarkup(orderOf({ lines: [], wanted: [] }, whole, catalogue))
      .map(toHtml)
      .filter((piece) => piece.includes('class="fault"'));
    expect(html).toHaveLength(said.length);
    for (const [index, pattern] of said.entries()) expect(html[index]).toMatch(pattern);
  },
);
