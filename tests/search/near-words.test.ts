import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { meantText, slips } from '../../src/search/near-words.ts';

const catalogue = loadCatalogue();

describe('what a text with a slip in it may mean', () => {
  test.each([
    ['resitor', 'resistor'],
    ['Resitors', 'resistors'],
    ['trimer', 'trimmer'],
    ['plyester', 'polyester'],
    ['resrevoir', 'reservoir'],
    ['tantulum 10 uF', 'tantalum 10 uF'],
    ['electrolitic on a rail', 'electrolytic on a rail'],
  ])('%s: %s', (text, meant) => {
    expect(meantText(catalogue, text)).toBe(meant);
  });

  test.each([
    ['what names something already', 'resistor'],
    ['what is only begun', 'resist'],
    ['what is near to nothing', 'zzqqxx'],
    ['what is too short to tell', 'flim'],
    ['a marking', '103M 1KV Z5U'],
    ['nothing', ''],
  ])('%s stays', (_, text) => {
    expect(meantText(catalogue, text)).toBeUndefined();
  });
});

test.each([
  ['', '', 0],
  ['', 'abc', 3],
  ['film', 'film', 0],
  ['flim', 'film', 1],
  ['fllm', 'film', 1],
  ['fil', 'film', 1],
  ['films', 'film', 1],
  ['kitten', 'sitting', 3],
])('%s is as far from %s as %d slips', (from, to, off) => {
  expect(slips(from, to)).toBe(off);
  expect(slips(to, from)).toBe(off);
});
