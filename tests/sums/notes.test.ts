import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { resultOf } from '../../src/engine/sums/run-sum.ts';
import { reservoir } from '../../src/engine/sums/supply/reservoir.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { resultMarkup } from '../../src/sums/result.ts';

/** What stands beside a result where only an end of a range brings it up. */

const facts = reservoir.facts?.(loadCatalogue());

const pageOf = (texts: Readonly<Record<string, string>>): string => {
  const { given } = readInputs(reservoir, facts, texts);
  return resultMarkup(reservoir, resultOf(reservoir, given, facts))
    .map(toHtml)
    .join('');
};

// 15 V and 300 mA leave 18.2 V at the trough, 15 V less a tenth 16.1 V.
const regulator = { reg: '15 V', dropout: '2.5 V' };

test.each([
  ['enough in the middle, too little at an end', regulator, 'Limit, at an end of a range:'],
  ['too little in the middle', { ...regulator, dropout: '4 V' }, 'Limit:'],
  ['enough everywhere', { ...regulator, vac: '15 V' }, undefined],
])('%s', (_what, texts, label) => {
  const [, found] = /<strong>([^<]*)<\/strong>[^<]*hum passes through/u.exec(pageOf(texts)) ?? [];
  expect(found?.trim()).toBe(label);
});
