import { expect, it } from 'vitest';
import { noteText } from '../../src/components/note-text.ts';
import { toHtml } from '../../src/markup/to-html.ts';

it.each([
  ['no symbol', 'No symbol.'],
  ['with V_oct for an octave', 'With V<sub>oct</sub> for an octave.'],
  ['C_1 goes out, C_2 to ground', 'C<sub>1</sub> goes out, C<sub>2</sub> to ground.'],
  ['adds to 1/g_m', 'Adds to 1/g<sub>m</sub>.'],
  ['a < b', 'A &lt; b.'],
])('%s', (text, html) => {
  expect(noteText(text).map(toHtml).join('')).toBe(html);
});
