import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceReading } from '../../src/catalogue/slices/slice-reading.ts';
import { answerHtml } from './answer-html.ts';

/** A part that is told with its place, and where the box of the first page leads with it. */

const catalogue = loadCatalogue();
const slice = sliceReading(catalogue);

/** Addresses of what stands in, in the order of the page. */
const ledTo = (text: string): string[] => {
  const html = answerHtml(slice, text);
  const place = /<h2>Where it sits<\/h2>(.*?)<\/section>/su.exec(html)?.[1] ?? '';
  return [...place.matchAll(/href="([^"]*\/in\/[^"]*)"/gu)].map(([, path]) =>
    (path ?? '').replaceAll('&amp;', '&'),
  );
};

describe('a part with its place', () => {
  test.each([
    ['47uF 25V cathode bypass', '/replace/al-electrolytic-wet/in/cathode-bypass/?c=47u&v=25'],
    ['cathode bypass 47uF 25V', '/replace/al-electrolytic-wet/in/cathode-bypass/?c=47u&v=25'],
    ['10nF polyester in tone stack', '/replace/pet-metallized/in/tone-stack/?c=10n'],
    ['10nF polyester in the tone stack', '/replace/pet-film-foil/in/tone-stack/?c=10n'],
    ['470uF 16V reservoir', '/replace/al-electrolytic-wet/in/reservoir/?c=470u&v=16'],
    ['0,1 µF 400 V coupling', '/replace/paper-wax/in/interstage-coupling/?c=100n&v=400'],
    ['100nF across mains', '/replace/film-x2/in/mains-x/?c=100n'],
    ['22uF tantalum on 15V rail', '/replace/ta-mno2-solid/in/bulk-rail/?c=22u&vdc=15'],
    ['22uF tantalum on a -15 V rail', '/replace/ta-mno2-solid/in/bulk-rail/?c=22u&vdc=15'],
    ['100uF 63V on 48V rail', '/replace/al-electrolytic-wet/in/bulk-rail/?c=100u&v=63&vdc=48'],
    ['replace 220pF styrene in vco', '/replace/ps-film-foil/in/vco-timing/?c=220p'],
    ['4n7 sample and hold', '/replace/film-unknown/in/sample-hold/?c=4.7n'],
    ['EDLC 1F in memory backup', '/replace/double-layer-backup/in/memory-backup/?c=1F'],
    [
      'what to use for 10n polyester in tone control?',
      '/replace/pet-metallized/in/tone-stack/?c=10n',
    ],
    ['best cap for tone control 22nF', '/replace/pet-metallized/in/tone-stack/?c=22n'],
    ['0.1F backup', '/replace/double-layer-backup/in/memory-backup/?c=100m'],
    ['de-emphasis 1nF', '/replace/ceramic-c0g/in/rc-filter-audio/?c=1n'],
    ['ratio detector 4.7uF', '/replace/al-electrolytic-wet/in/agc-bypass/?c=4.7u'],
    ['100pF IF transformer', '/replace/silvered-mica/in/rf-tuned-circuit/?c=100p'],
    ['voltage doubler 100uF 350V', '/replace/al-electrolytic-wet/in/reservoir/?c=100u&v=350'],
    ['EHT filter 4.7nF 3kV', '/replace/ceramic-disc-unknown/in/high-voltage-filter/?c=4.7n&v=3k'],
    ['47uF in the feedback', '/replace/al-electrolytic-wet/in/feedback-blocking/?c=47u'],
    ['10k gain resistor', '/resistors/metal-film/in/gain-resistor/?value=10k'],
    ['100R emitter resistor', '/resistors/metal-film/in/bias-resistor/?value=100'],
    ['15k 2W anode load', '/resistors/metal-oxide/in/plate-load/?value=15k&rating=2'],
    ['1M grid leak', '/resistors/carbon-film/in/grid-leak/?value=1M'],
    ['50k log volume', '/pots/carbon-pot/in/volume-control/?value=50k'],
    ['25k trimmer for offset', '/trimmers/cermet-multiturn/in/offset-trim/?value=25k'],
  ])('“%s” leads to %s', (text, path) => {
    expect(ledTo(text)).toContain(path);
  });

  test('leads to the place first that its own words name best', () => {
    expect(ledTo('10k gain resistor')[0]).toContain('/in/gain-resistor/');
    expect(ledTo('100k gain pot')[0]).toContain('/in/volume-control/');
    expect(ledTo('500 ohm bias trimmer')[0]).toContain('/in/bias-trim/');
    expect(ledTo('0.22 ohm 5W emitter resistor')[0]).toContain('/in/output-emitter/');
    expect(ledTo('47uF 25V cathode bypass')[0]).toContain('/in/cathode-bypass/');
  });

  test.each([
    ['25k wirewound rheostat', ['/pots/wirewound-pot/in/panel-rheostat/?value=25k']],
    [
      '10k metal film gain resistor',
      [
        '/resistors/metal-film/in/gain-resistor/?value=10k',
        '/resistors/metal-oxide/in/gain-resistor/?value=10k',
      ],
    ],
  ])('“%s” leads to the types alone that it names', (text, paths) => {
    expect(ledTo(text)).toEqual(paths);
  });

  test('is read without the words of its place', () => {
    const html = answerHtml(slice, '47uF 25V cathode bypass');
    expect(html).not.toContain('Not understood');
    expect(html).toMatch(/47\sµF\s25\sV/u);
  });

  test('is said not to be met where no such part is', () => {
    expect(answerHtml(slice, '10pF in reservoir')).toContain(
      'no such part of this value is met there',
    );
  });
});

test.each([
  ['470uF 16V'],
  ['741 hold buffer'],
  ['2N3055 output'],
  ['103 Z5U something odd'],
  ['10 apples in a basket'],
  ['47uF 25V cathode bypass and something odd'],
  ['cathode bypass'],
  ['polystyrene in vco'],
  ['4n7 vs 5n'],
  ['100n for 220n in a filter'],
  ['in in in'],
])('“%s” tells no part with its place', (text) => {
  expect(answerHtml(slice, text)).not.toContain('Where it sits');
});
