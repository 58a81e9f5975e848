import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import { kindLinks } from '../../src/search/kinds.ts';
import { answerHtml } from './answer-html.ts';

const slice = sliceReading(loadCatalogue());

describe('resistors and trimmers in the box of the first page', () => {
  test.each(['ripple current', 'self healing', 'hum in the power supply'])(
    '%s, of which one word names something, leads to none',
    (text) => {
      expect(kindLinks(slice, text)).toEqual([]);
    },
  );

  test.each([
    ['carbon composition plate load', '/resistors/carbon-composition/in/plate-load/'],
    ['grid stopper', '/positions/grid-stopper/'],
    ['fusible resistor', '/types/fusible-film/'],
    ['trimmers', '/trimmers/'],
    ['idle current preset', '/positions/bias-trim/'],
  ])('%s leads to %s', (text, path) => {
    expect(kindLinks(slice, text).map(([to]) => to)).toContain(path);
  });
});

test.each([
  ['4.7k 5% carbon film', '/types/carbon-film/?value=4.7k&amp;tol=5'],
  [
    '4k7 1/4W carbon film plate load',
    '/resistors/carbon-film/in/plate-load/?value=4.7k&amp;rating=0.25',
  ],
])('%s leads on with its numbers', (text, address) => {
  const html = answerHtml(slice, text);
  expect(html).toContain(`href="${address}"`);
});

describe('what is called so comes before what only has its words in part', () => {
  const firstOf = (text: string): string => {
    const html = answerHtml(slice, text);
    return html.slice(0, html.indexOf('</section>'));
  };

  test.each([
    ['grid leak', '/positions/grid-leak/'],
    ['Grid stopper', '/positions/grid-stopper/'],
    ['volume control', '/positions/volume-control/'],
  ])('%s, of resistors or pots', (text, path) => {
    expect(firstOf(text)).toContain(path);
  });

  test.each(['wax paper', 'reservoir', 'polystyrene'])('%s, of capacitors', (text) => {
    expect(firstOf(text)).not.toContain('Resistors, trimmers and pots');
  });
});
