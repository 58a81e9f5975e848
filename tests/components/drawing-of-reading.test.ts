import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { drawingOfReading } from '../../src/drawing/index.ts';
import { readMarking } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { drawnReading } from '../../src/reading/drawn.ts';

const catalogue = loadCatalogue();

const best = (text: string, body: string) => {
  const [reading] = readMarking(catalogue, text, body === '' ? {} : { body });
  if (reading === undefined) throw new Error(`no reading of ${text}`);
  return reading;
};

describe('a reading', () => {
  test.each([
    ['103Z\nZ5U 1kV', '', 'disc'],
    ['0.1 µF X2\n275V~', '', 'box'],
    ['4n7 J 100\nMKP', '', 'box'],
    ['.047 MFD 400V', 'paper', 'wax-tube'],
    ['330 J 500V', 'mica', 'dipped'],
    ['10 16V', 'tantalum', 'bead'],
    ['100 µF 25V', 'aluminium', 'axial-can'],
  ])('of %j, body %j, is drawn as a %s with the marking as written', (text, body, form) => {
    const drawn = drawingOfReading(catalogue, best(text, body), text, body);
    expect(drawn?.spec.form).toBe(form);
    expect(drawn?.spec.marking).toEqual(text.split('\n'));
  });

  test('is not drawn where nothing says what it may be', () => {
    expect(drawingOfReading(catalogue, { ...best('103K', ''), types: [] }, '103K')).toBeUndefined();
  });

  test('keeps what a visitor wrote as text', () => {
    const text = '103Z Z5U\n<img src=x>';
    const drawn = drawnReading(catalogue, best('103Z Z5U', ''), text, '');
    expect(drawn && toHtml(drawn)).not.toContain('<img');
    expect(drawn && toHtml(drawn)).toContain('&lt;img');
  });
});
