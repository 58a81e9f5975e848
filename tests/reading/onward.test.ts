import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceColours, sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import { readMarking } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { replaceLinks } from '../../src/reading/onward.ts';
import { asFetched } from '../catalogue/slices/as-fetched.ts';

const catalogue = loadCatalogue();

const linksOf = (marking: string): string => {
  const [reading] = readMarking(catalogue, marking);
  const links = reading && replaceLinks(catalogue, reading);
  return links === undefined ? '' : toHtml(links);
};

const queriesOf = (html: string): Set<string> =>
  new Set(
    [...html.matchAll(/href="[^"?]*\/replace\/[^"?]*\?([^"]*)"/g)].map((found) => found[1] ?? ''),
  );

/** Markings, the names of the sections that are led on from, and how many parts that comes to. */
test.each([
  ['40 µF 450V 20 µF 25V', ['40 µF, 450 V', '20 µF, 25 V'], 2],
  ['▲40-■20-20 MFD 450V', ['40 µF, 450 V', '20 µF, 450 V'], 2],
  ['16+16 µF 450 V', [], 1],
  ['22 µF 25V', [], 1],
])('%s leads on from each different section', (marking, sections, parts) => {
  const html = linksOf(marking);
  const headings = [...html.matchAll(/<h4>(.*?)<\/h4>/g)].map((found) => found[1]);
  expect(headings.map((heading) => heading?.replaceAll('\u00a0', ' '))).toEqual(
    sections.map((section) => `Section of ${section}`),
  );
  expect(queriesOf(html).size).toBe(parts);
});

test.each([
  ['R47 5W', 'value=470m&amp;rating=5', ['wirewound', 'fusible-wirewound'], ['carbon-film']],
  ['4.7 kΩ ±5 %', 'value=4.7k&amp;tol=5', ['carbon-film', 'cermet-preset'], ['high-voltage-glaze']],
])('%s leads on to what it may be made of, with its numbers', (marking, query, made, not) => {
  const html = linksOf(marking);
  for (const type of made) expect(html).toContain(`/types/${type}/?${query}#positions`);
  for (const type of not) expect(html).not.toContain(`/types/${type}/`);
});

test.each([
  ['4R7D NP0', 'ceramic-c0g', 'c=4.7p&amp;tol=10.6383'],
  ['X2 0.1 275V~ 630V-', 'film-x2', 'c=100n&amp;v=275'],
  ['0.1 X2 630VDC', 'film-x2', 'c=100n'],
  ['MKP 0.1 630- 250~', 'pp-metallized', 'c=100n&amp;v=630'],
  // Marked for AC alone, it is not rated for as much DC.
  ['MKT 0.1 250V~', 'pet-metallized', 'c=100n&amp;v=250+VAC'],
])('%s leads on with the tolerance and the rating that its pages count in', (mark, type, query) => {
  expect(linksOf(mark)).toContain(`/replace/${type}/in/`);
  expect([...queriesOf(linksOf(mark))]).toEqual([query]);
});

test('of a mark that tells no type, each type takes the rating that it counts in', () => {
  const html = linksOf('0.1uF 250VAC/630VDC');
  expect(html).toContain('/replace/film-x2/?c=100n&amp;v=250"');
  expect(html).toContain('/replace/pet-metallized/?c=100n&amp;v=630"');
});

// No bead of tantalum was made for more than 150 V, nor an electrolytic for more than 600 V (bodies.csv).
test.each([
  ['1 µF 63V', true, true],
  ['1 µF 250V', false, true],
  ['1 µF 1000V', false, false],
])('%s is offered as a tantalum: %s, as an electrolytic: %s', (marking, isBead, isCan) => {
  const html = linksOf(marking);
  expect(html).toContain('/replace/film-unknown/');
  expect(html.includes('/replace/ta-mno2-solid/')).toBe(isBead);
  expect(html.includes('/replace/al-electrolytic-wet/')).toBe(isCan);
});

test.each([
  ['of reading', sliceReading],
  ['of colours', sliceColours],
])('the slice %s leads on as all of the catalogue does', (_, slice) => {
  const fetched = asFetched(slice(catalogue));
  for (const marking of ['103M 1KV Z5U', '22 µF 25V', '27 nF 20%', '4.7 kΩ ±5 %']) {
    const [reading] = readMarking(catalogue, marking);
    if (reading === undefined) throw new Error(`${marking} is not read`);
    const links = replaceLinks(fetched, reading);
    expect(links && toHtml(links), marking).toBe(linksOf(marking));
  }
});
