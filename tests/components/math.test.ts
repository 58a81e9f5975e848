import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readEquation } from '../../src/components/equation-tree.ts';
import { equationMarkup } from '../../src/components/math.ts';
import type { Markup } from '../../src/markup/node.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const catalogue = loadCatalogue();

/** What is between the outermost tags, with the signs that nobody sees left out. */
const inside = (equation: string): string =>
  toHtml(equationMarkup(equation))
    .replace(/^<math [^>]*>|<\/math>$/g, '')
    .replaceAll('<mo>\u2061</mo>', '')
    .replaceAll('<mo>\u2062</mo>', '');

const words = (markup: Markup): string =>
  typeof markup === 'string' ? markup : markup.children.map(words).join('');

const depthsAreRight = (html: string): boolean => {
  const open: string[] = [];
  for (const [, close, tag] of html.matchAll(/<(\/?)([a-z]+)[^>]*>/g)) {
    if (close === '') open.push(tag ?? '');
    else if (open.pop() !== tag) return false;
  }
  return open.length === 0;
};

const name = (letters: string): string => `<mi>${letters}</mi>`;
const times = '<mo>\u22c5</mo>';

describe('equations as MathML', () => {
  it.each([
    ['R', name('R')],
    ['2*pi*R', `<mrow><mn>2</mn>${name('π')}${name('R')}</mrow>`],
    ['a/b', `<mfrac>${name('a')}${name('b')}</mfrac>`],
    ['1/(a + b)', `<mfrac><mn>1</mn><mrow>${name('a')}<mo>+</mo>${name('b')}</mrow></mfrac>`],
    ['a*b/c', `<mfrac><mrow>${name('a')}${name('b')}</mrow>${name('c')}</mfrac>`],
    ['a/b*c', `<mrow><mfrac>${name('a')}${name('b')}</mfrac>${times}${name('c')}</mrow>`],
    ['a/b/c', `<mfrac><mfrac>${name('a')}${name('b')}</mfrac>${name('c')}</mfrac>`],
    ['V_DC', `<msub>${name('V')}<mtext>DC</mtext></msub>`],
    ['T_rated,max', `<msub>${name('T')}<mtext>rated, max</mtext></msub>`],
    ['f^2', `<msup>${name('f')}<mn>2</mn></msup>`],
    ['f^-1', `<msup>${name('f')}<mrow><mo>−</mo><mn>1</mn></mrow></msup>`],
    ['sqrt(2)', '<msqrt><mn>2</mn></msqrt>'],
    ['|k|', `<mrow><mo>|</mo>${name('k')}<mo>|</mo></mrow>`],
    ['tan delta', `<mrow>${name('tan')}${name('δ')}</mrow>`],
    [
      'log10(x)',
      `<mrow><msub>${name('log')}<mn>10</mn></msub><mrow><mo>(</mo>${name('x')}<mo>)</mo></mrow></mrow>`,
    ],
    [
      'dV/dt',
      `<mfrac><mrow><mi mathvariant="normal">d</mi>${name('V')}</mrow><mrow><mi mathvariant="normal">d</mi>${name('t')}</mrow></mfrac>`,
    ],
    ['p <= q', `<mrow>${name('p')}<mo>≤</mo>${name('q')}</mrow>`],
    ['1 h', '<mrow><mn>1</mn><mspace width="0.17em"></mspace><mtext>h</mtext></mrow>'],
    ['318 us', '<mrow><mn>318</mn><mspace width="0.17em"></mspace><mtext>µs</mtext></mrow>'],
    ['1e6*a', `<mrow><msup><mn>10</mn><mn>6</mn></msup>${name('a')}</mrow>`],
    [
      'a, each at least b',
      `<mrow>${name('a')}<mo>,</mo><mtext>\u00a0each at least\u00a0</mtext>${name('b')}</mrow>`,
    ],
    ['ESR*C', `<mrow>${name('ESR')}${times}${name('C')}</mrow>`],
  ])('%s', (equation, expected) => {
    expect(inside(equation)).toBe(expected);
  });

  it('keeps the plain text beside the drawing', () => {
    expect(equationMarkup('f <= g').attributes['alttext']).toBe('f <= g');
  });

  it.each(['', '1 +', '(a', 'a)', '|a', 'a b', 'a ? b', '^2', 'a = = b', 'max', '('.repeat(500)])(
    'leaves what is no equation as it is: %s',
    (text) => {
      expect(readEquation(text)).toBeUndefined();
      expect(equationMarkup(text)).toEqual({ tag: 'code', attributes: {}, children: [text] });
    },
  );

  const findings = Object.values(catalogue.findings).flatMap(({ equation }) => equation || []);
  it.each(findings)('reads the equation of a finding: %s', (equation) => {
    expect(readEquation(equation)).toBeDefined();
  });

  const notes = catalogue.positionNotes.flatMap(({ equation }) => equation || []);
  it.each(notes)('reads the equation of a position: %s', (equation) => {
    for (const one of equation.split('; ')) expect(readEquation(one)).toBeDefined();
  });
});

const leaf = fc.constantFrom('1', '2.5', '1e6', 'R', 'V_DC', 'pi', 'dt', 'ESR', 'T_rated,max');
const sums = fc.letrec<{ term: string }>((tie) => ({
  term: fc.oneof(
    { maxDepth: 4 },
    leaf,
    fc
      .tuple(tie('term'), fc.constantFrom(' + ', ' - ', '*', ' / ', '/'), tie('term'))
      .map((parts) => parts.join('')),
    tie('term').map((term) => `(${term})`),
    tie('term').map((term) => `sqrt(${term})`),
    fc.tuple(tie('term'), tie('term')).map(([a, b]) => `max(${a}, ${b})`),
    tie('term').map((term) => `(${term})^2`),
  ),
})).term;

describe('any text', () => {
  it('is drawn without an error and with every tag closed', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'grapheme' })), (text) => {
        expect(depthsAreRight(toHtml(equationMarkup(text)))).toBe(true);
      }),
    );
  });

  it.each(['valueOf', 'constructor', '__proto__', 'toString / hasOwnProperty'])(
    '%s is a name like any other',
    (text) => {
      expect(depthsAreRight(toHtml(equationMarkup(text)))).toBe(true);
    },
  );

  it('made of the signs of equations is drawn without an error', () => {
    const signs = fc.constantFrom(...'Rft12+-*/^=<>(),;|%_ .', 'sqrt', 'max(', 'pi', '<=', 'with');
    fc.assert(
      fc.property(fc.array(signs, { maxLength: 30 }), (parts) => {
        expect(depthsAreRight(toHtml(equationMarkup(parts.join(''))))).toBe(true);
      }),
    );
  });

  it('that is an equation is read, and no quantity of it is lost', () => {
    fc.assert(
      fc.property(sums, (equation) => {
        const drawn = words(equationMarkup(equation));
        const count = (text: string, part: string) => text.split(part).length - 1;
        if (equation.length > 400) return;
        expect(readEquation(equation)).toBeDefined();
        expect(count(drawn, 'ESR')).toBe(count(equation, 'ESR'));
        expect(count(drawn, 'π')).toBe(count(equation, 'pi'));
        expect(count(drawn, 'DC')).toBe(count(equation, 'V_DC'));
      }),
    );
  });
});
