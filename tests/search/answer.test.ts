import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { answerTo } from '../../src/search/answer.ts';
import { remembered } from '../../src/search/remembered.ts';

const catalogue = loadCatalogue();

test.each([
  ['103K', /As a marking/u, /Codes/u],
  ['wax paper coupling', /^$/u, /Stand-ins/u],
  ['LM741CN', /By type number/u, /^$/u],
  ['', /^$/u, /^$/u],
])('“%s” is said what it is first, then where else it leads to', (text, first, rest) => {
  const answered = answerTo(catalogue, text);
  expect(answered.first.map(toHtml).join('')).toMatch(first);
  expect(answered.rest().map(toHtml).join('')).toMatch(rest);
});

test.each([
  ['5 band resistor', false],
  ['memory backup battery 3.6V', false],
  ['47n something', true],
  ['103 Z5U something odd', true],
])('of “%s” words beside a marking that is only possible', (text, isRead) => {
  const html = answerTo(catalogue, text).first.map(toHtml).join('');
  expect(html.includes('As a marking')).toBe(isRead);
});

test.each([
  ['negative temperature coefficient N750', 'The code N750'],
  ['capacitor with 103Z on it wanted', 'The code 103'],
])('“%s” leads to the code that stands in it', (text, page) => {
  expect(answerTo(catalogue, text).rest().map(toHtml).join('')).toContain(page);
});

test('what was found for a row is found once, whatever it is, and anew for another row', () => {
  let asked = 0;
  const found = remembered((row: { name: string }) => {
    asked += 1;
    return row.name === '' ? undefined : row.name;
  });
  const [row, other] = [{ name: 'a' }, { name: '' }];
  expect([found(row), found(row), found(other), found(other), found({ name: 'a' })]).toEqual([
    'a',
    'a',
    undefined,
    undefined,
    'a',
  ]);
  expect(asked).toBe(3);
});
