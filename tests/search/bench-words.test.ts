import { globSync } from 'node:fs';
import { sep } from 'node:path';
import { expect, test } from 'vitest';
import { loadCatalogue, tableNames } from '../../src/catalogue/index.ts';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { groupPath, groupsOfStyles } from '../../src/look/groups.ts';
import { pageOf } from '../../src/text/open-data.ts';
import { codeTables } from '../../src/reading/code-tables.ts';
import type { BenchWordRow } from '../../src/schemas/bench-words.ts';
import { benchPages } from '../../src/search/bench-words.ts';
import { answerHtml } from './answer-html.ts';

/** What one says at the bench, by `bench-words.csv`, and where the box of the first page leads with it. */

const catalogue = loadCatalogue();
const slice = sliceReading(catalogue);

test.each([
  ['LDR', '/read/numbers/'],
  ['hum', '/positions/reservoir/'],
  ['hum', '/positions/bulk-rail/'],
  ['reform', '/sums/reforming/'],
  ['Re-forming', '/sums/reforming/'],
  ['ESR', '/data/esr-of-new/'],
  ['ESR', '/look/readings/'],
  ['crackle', '/positions/volume-control/'],
  ['crackle', '/positions/interstage-coupling/'],
  ['scratchy pot', '/positions/volume-control/'],
  ['motorboating', '/positions/bulk-rail/'],
  ['hiss', '/sums/resistor-noise/'],
  ['NTC', '/look/thermistor/'],
  ['VDR', '/look/varistor-disc/'],
  ['recap', '/job/'],
  ['how do I test a capacitor', '/look/readings/'],
  ['which side is negative on axial electrolytic', '/cautions/#electrolytic-reverse'],
  ['should I replace all electrolytics', '/job/'],
  ['two electrolytics back to back', '/sums/back-to-back/'],
  ['X2 capacitor smoking', '/cautions/#old-paper-mains'],
  ['X capacitor', '/positions/mains-x/'],
  ['y caps', '/positions/mains-y/'],
  ['is my capacitor bad', '/look/readings/'],
  ['multi section can capacitor', '/read/section-symbols/'],
  ['film cap polarity outer foil', '/look/paper-wax-tubular/'],
  ['tantalum exploded', '/cautions/#tantalum-fire'],
  ['how long do electrolytics last', '/sums/electrolytic-life/'],
  ['temperature 85 or 105', '/sums/electrolytic-life/'],
  ['cap size too big lead spacing', '/findings/#lead-pitch'],
  ["new cap doesn't fit", '/findings/#lead-pitch'],
  ['new can too tall', '/findings/#height'],
  ['tropical fish capacitor', '/look/pet-colour-banded/'],
  ['are tantalums dangerous', '/cautions/#tantalum-fire'],
  ['what does MFD mean', '/read/unit-words/'],
  ['5 band resistor', '/read/colours/'],
  ['negative temperature coefficient', '/read/class1-codes/'],
  ['bulging cap', '/cautions/#electrolytic-vent'],
  ['corroded board', '/cautions/#leaked-electrolyte'],
  ['axial to radial', '/findings/#lead-pitch'],
  ['silver mica disease', '/look/mica-in-if-can/'],
  ['doorknob capacitor', '/look/ceramic-doorknob/'],
  ['electrolytic 50 years old still ok', '/look/readings/'],
  ['leakage current limit 100uF 63V', '/data/leakage-limits/'],
  ['how hot may a resistor get', '/sums/resistor-limits/'],
  ['parallel caps', '/sums/two-together/'],
])('“%s” leads to %s', (text, path) => {
  expect(answerHtml(slice, text)).toContain(`href="${path}"`);
});

const row = (page: `/${string}`, ...words: string[]): BenchWordRow => ({
  ...{ page, title: page, words, source: 'trade', locator: '' },
  ...{ basis: 'common-practice', note: '' },
});
const rows = [row('/a/', 'hum', 'scratchy'), row('/b/', 'scratchy pot'), row('/c/', 're-form')];

test.each([
  ['hum', ['/a/']],
  ['loud hum', ['/a/']],
  ['HUM!', ['/a/']],
  // The longest phrase first, and each in its order.
  ['scratchy pot', ['/b/', '/a/']],
  ['pot scratchy', ['/a/']],
  ['scratchy dual pot', ['/a/']],
  ['re form', ['/c/']],
  // Words within others are none, save the beginning of a phrase while it is typed.
  ['human', []],
  ['scr', ['/a/']],
  ['scratchy p', ['/a/']],
  ['re for', ['/c/']],
  ['re forms', []],
  ['a scr', []],
  ['hu', []],
  ['scr pot', []],
  ['reform', []],
  ['', []],
])('of “%s” the words lead to %j', (text, pages) => {
  expect(benchPages(rows, text).map(({ page }) => page)).toEqual(pages);
});

/** Pages that stand by themselves: those whose source is no pattern of an address. */
const pagesByThemselves = globSync('**/*.astro', { cwd: 'src/pages' })
  .map((file) => `/${file.split(sep).join('/')}`)
  .filter((file) => !file.includes('['))
  .map((file) => file.replace(/(?:index)?\.astro$/u, '').replace(/(?<!\/)$/u, '/'));

test('every page that words, or more or less than the old part has, lead to is there', () => {
  const { positions, kindPositions, cautions, look, benchWords, inPlaceOf } = catalogue;
  const pages = new Set<string>([
    ...[...Object.keys(positions), ...Object.keys(kindPositions)].map((id) => `/positions/${id}/`),
    ...allSums.map(({ id }) => `/sums/${id}/`),
    ...look.styles.map(({ id }) => `/look/${id}/`),
    ...cautions.map(({ id }) => `/cautions/#${id}`),
    ...Object.keys(catalogue.findings).map((id) => `/findings/#${id}`),
    ...pagesByThemselves,
    ...tableNames.map(pageOf),
    ...codeTables(catalogue).map(({ id }) => `/read/${id}/`),
    ...groupsOfStyles(catalogue).map(([group]) => groupPath(group)),
  ]);
  expect(benchWords.length * inPlaceOf.length).toBeGreaterThan(0);
  const ledTo = [...benchWords, ...inPlaceOf].map(({ page }) => page);
  expect(ledTo.filter((one) => !pages.has(one))).toEqual([]);
});
