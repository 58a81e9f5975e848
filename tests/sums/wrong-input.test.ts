import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { headlineOf, resultOf } from '../../src/engine/sums/run-sum.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { answerOf, resultMarkup } from '../../src/sums/result.ts';

const catalogue = loadCatalogue();

/** What people may write into any field: nonsense, nothing sensible there, or just unusual. */
const TEXTS = ['abc', '-5', '0', '20..10', '4,7', '5 parsec', '1e99', '<5', '0..1'];

const fields = allSums.flatMap((sum) =>
  Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'quantity' ? [{ id: sum.id, sum, key, input }] : [],
  ),
);

describe('whatever is written', () => {
  test.each(fields)('$id, $key: is answered or explained', ({ sum, key, input }) => {
    const facts = sum.facts?.(catalogue);
    const ends = [input.lowest, input.highest].map(String);
    for (const text of [...TEXTS, ...ends]) {
      const { given, faults } = readInputs(sum, facts, { [key]: text });
      const result = resultOf(sum, given, facts);
      const said = answerOf(sum, result) + resultMarkup(sum, result).map(toHtml).join('');
      expect(said, text).not.toMatch(/NaN|Infinity|undefined|>–</u);
      if (faults[key] !== undefined) expect(faults[key], text).toMatch(/\S.*[.]$/u);
      const isExplained = result.notes.some(({ kind }) => kind !== 'remark');
      expect(result.outputs[headlineOf(sum)] !== undefined || isExplained, text).toBe(true);
    }
  });
});
