import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asciiHtml, asciiScript, asciiStyle } from '../../scripts/ascii.ts';

/** Whatever the characters, a text says the same in ASCII as it said before. */

const ASCII = /^[\0-\x7f]*$/;
const anyText = fc.string({ unit: 'binary' });

test('JSON holds the same strings', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const written = asciiScript(JSON.stringify(text));
      expect(written).toMatch(ASCII);
      expect(JSON.parse(written)).toBe(text);
    }),
  );
});

test('a pattern finds the same characters', () => {
  const written = asciiScript('/^[µΩ🜨]$/u');
  expect(written).toBe('/^[\\u00b5\\u03a9\\ud83d\\udf28]$/u');
  const pattern = new RegExp(written.slice(1, -2), 'u');
  for (const character of ['µ', 'Ω', '🜨']) expect(pattern.test(character)).toBe(true);
  expect(pattern.test('\ud83d')).toBe(false);
});

test('HTML and styles name each character by its number', () => {
  expect(asciiHtml('<p title="4.7 µF">½ 🜨</p>')).toBe(
    '<p title="4.7 &#181;F">&#189; &#128808;</p>',
  );
  expect(asciiStyle('a::after { content: "→ 1"; }')).toBe('a::after { content: "\\2192  1"; }');
});
