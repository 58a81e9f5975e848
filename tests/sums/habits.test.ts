import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { Habit } from '../../src/engine/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { resultOf } from '../../src/engine/sums/run-sum.ts';
import type { Sum } from '../../src/engine/sums/sum.ts';
import type { Markup } from '../../src/markup/node.ts';
import { answerOf, resultMarkup } from '../../src/sums/result.ts';

/** Numbers of a sum's page stand as the reader likes them, those in its notes too. */

const catalogue = loadCatalogue();

/** Every word of a page, stretch by stretch. */
const wordsOf = (piece: Markup): string[] =>
  typeof piece === 'string' ? [piece] : piece.children.flatMap(wordsOf);

/** What fields are filled with: as they stand, and each at its lowest and highest, for more notes. */
const fillings = (sum: Sum): Record<string, string>[] => [
  {},
  ...Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'quantity'
      ? [{ [key]: `${input.lowest}e0` }, { [key]: `${input.highest}e0` }]
      : [],
  ),
];

const saidIn = (sum: Sum, habit: Habit | undefined): string[] => {
  const facts = sum.facts?.(catalogue);
  return fillings(sum).flatMap((texts) => {
    const { given } = readInputs(sum, facts, texts);
    const result = resultOf(sum, given, facts, { habit });
    return [answerOf(sum, result, habit), ...resultMarkup(sum, result, habit).flatMap(wordsOf)];
  });
};

const sums = allSums.map((sum) => [sum.id, sum] as const);

describe('numbers as a reader likes them', () => {
  test.each(sums)('%s: with a decimal comma', (_, sum) => {
    const points = saidIn(sum, { decimal: 'comma' }).filter((text) => /\d\.\d/u.test(text));
    expect(points).toEqual([]);
  });

  test.each(sums)('%s: in pF and µF', (_, sum) => {
    const nano = saidIn(sum, { capacitance: 'pF-uF' }).filter((text) => /\d\s*nF/u.test(text));
    expect(nano).toEqual([]);
  });

  test.each(sums)('%s: with the letter of the ohm', (_, sum) => {
    const signs = saidIn(sum, { ohm: 'letter' }).filter((text) =>
      /(?<![\d.−])\d[\d.]*\s*[kMG]?Ω(?!·)/u.test(text),
    );
    expect(signs).toEqual([]);
  });

  test.each(sums)('%s: no unit parts from its number', (_, sum) => {
    const parting = saidIn(sum, undefined).filter((text) =>
      /\d (?:[pnµmkMG]?[FAVHΩWs]|[mkMG]?Hz|°C|K|%|mm|dB)(?!\p{L})/u.test(text),
    );
    expect(parting).toEqual([]);
  });
});
