import { expect, test } from 'vitest';
import { toHtml } from '../../src/markup/to-html.ts';
import type { Plot } from '../../src/plot/plot-parts.ts';
import { plotTable } from '../../src/plot/plot-table.ts';

const print = String;
const at = (x: number, y: number) => ({ x, y, low: y, high: y });
const plot = (curves: Plot['curves']): Plot => ({
  title: 'any',
  x: { label: 'across', scale: 'linear', print },
  y: { label: 'up', scale: 'linear', print },
  curves,
  points: [],
  limits: [],
});
const rowsOf = (html: string): string[][] =>
  html
    .split('<tr>')
    .slice(2)
    .map((row) => [...row.matchAll(/>([^<]*)<\/t[hd]>/gu)].map(([, text = '']) => text));

test('every dot stands in the table, also where two share a place', () => {
  const html = toHtml(
    plotTable(
      plot([
        { label: 'one', as: 'dots', points: [at(2, 5)] },
        { label: 'two', as: 'dots', points: [at(1, 7), at(2, 8), at(2, 9)] },
      ]),
    ),
  );
  expect(rowsOf(html)).toEqual([
    ['1', '', '7'],
    ['2', '5', '8, 9'],
  ]);
});

test('a long curve is thinned, a short one is not', () => {
  const points = (count: number) => Array.from({ length: count }, (_, x) => at(x, x));
  const rows = (count: number) =>
    rowsOf(toHtml(plotTable(plot([{ label: 'c', points: points(count) }])))).length;
  expect(rows(61)).toBe(13);
  expect(rows(5)).toBe(5);
});
