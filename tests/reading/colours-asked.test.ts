import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { coloursAlone, coloursAsked } from '../../src/reading/colours/typed.ts';
import { colourAnswer } from '../../src/search/colour-answer.ts';

const catalogue = loadCatalogue();

const textOf = (html: string): string => html.replace(/<[^>]*>/g, '').replace(/\u00a0/g, ' ');

describe('colours in a box for anything', () => {
  test.each([
    ['yellow violet red gold', ['yellow', 'violet', 'red', 'gold']],
    ['YE VT RD GD', ['yellow', 'violet', 'red', 'gold']],
    ['Yellow-Violet-Red', ['yellow', 'violet', 'red']],
    ['gray, white, brown', ['grey', 'white', 'brown']],
    ['light blue, red, red', ['light-blue', 'red', 'red']],
    // In short, and in the languages of lists.
    ['yel/vio/red/gld', ['yellow', 'violet', 'red', 'gold']],
    ['rot violett gelb gold', ['red', 'violet', 'yellow', 'gold']],
    ['marron noir orange or', ['brown', 'black', 'orange', 'gold']],
    ['marrone nero rosso oro', ['brown', 'black', 'red', 'gold']],
    ['rojo amarillo verde plata', ['red', 'yellow', 'green', 'silver']],
    ['red disc', undefined],
    ['red red', undefined],
    ['yellow violet red tantalum', undefined],
    ['473K', undefined],
    ['', undefined],
  ])('%j', (text, wanted) => {
    expect(coloursAlone(catalogue.markings.colours, text)).toEqual(wanted);
  });

  test.each([
    ['yellow violet red gold', ['yellow', 'violet', 'red', 'gold']],
    ['10K ohm 1/4 watt brown black orange gold', ['brown', 'black', 'orange', 'gold']],
    ['5 band resistor red red black brown brown', ['red', 'red', 'black', 'brown', 'brown']],
    ['what is yellow-violet-gray?', ['yellow', 'violet', 'grey']],
    ['what is a yellow violet gray resistor', ['yellow', 'violet', 'grey']],
    ['resistor: brown, green, green, 0.5W', ['brown', 'green', 'green']],
    ['red black wire and yellow plug', undefined],
    ['red resistor black brown', undefined],
    ['yellow violet red tantalum', undefined],
    ['blue black', undefined],
    ['', undefined],
  ])('among words that ask about them: %j', (text, wanted) => {
    expect(coloursAsked(catalogue.markings.colours, text)).toEqual(wanted);
  });

  test.each([
    [['yellow', 'violet', 'red', 'gold'], 'resistor with bands: 4.7 kΩ'],
    [['brown', 'black', 'orange'], 'resistor with bands: 10 kΩ'],
    [['brown', 'black', 'yellow', 'white', 'red'], 'striped film: 100 nF'],
  ])('%j is said for each kind of part, with a link that has them set', (colours, said) => {
    const answer = colourAnswer(catalogue, colours);
    const html = answer === undefined ? '' : toHtml(answer);
    expect(textOf(html)).toContain(said);
    expect(html).toContain(`b=${colours.join(',')}"`);
  });

  test('colours that no part has are no answer', () => {
    expect(
      colourAnswer(
        catalogue,
        Array.from({ length: 12 }, () => 'red'),
      ),
    ).toBeUndefined();
  });
});
