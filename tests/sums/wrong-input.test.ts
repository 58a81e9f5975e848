import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { headlineOf, resultOf } from '../../src/engine/sums/run-sum.ts';
import type { QuantityInput, Sum } from '../../src/engine/sums/sum.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { answerOf, resultMarkup } from '../../src/sums/result.ts';

const catalogue = loadCatalogue();
const factsOf = new Map(allSums.map((sum) => [sum.id, sum.facts?.(catalogue)]));

/** What people may write into any field: nonsense, nothing sensible there, or just unusual. */
const NONSENSE = ['abc', '5 parsec', '4.7.8', '1e', '0x10', '7/12', '±', '5..', 'NaN', '<>', 'µ'];
const ODD = ['-5', '−5', '0', '20..10', '10 to 5', '4,7', '1e99', '-1e9', '1E-6', '<5', '0..1'];
const WIDE = ['５', '１０．５', '－５', '５００％'];

/** A unit that does not belong into a field. */
const wrongUnit = ({ unit }: QuantityInput): string => (unit === 'V' ? '5 Ω' : '5 V');

const fields = allSums.flatMap((sum) =>
  Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'quantity' ? [{ id: sum.id, sum, key, input }] : [],
  ),
);

const choices = allSums.flatMap((sum) =>
  Object.entries(sum.inputs).flatMap(([key, input]) =>
    input.kind === 'choice' ? [{ id: sum.id, sum, key, usual: input.usual }] : [],
  ),
);

/** What a page says for texts in its fields, and that it says something that can be read. */
const saidFor = (sum: Sum, texts: Readonly<Record<string, string>>, what: string) => {
  const facts = factsOf.get(sum.id);
  const { given, faults } = readInputs(sum, facts, texts);
  const result = resultOf(sum, given, facts);
  const said = answerOf(sum, result) + resultMarkup(sum, result).map(toHtml).join('');
  expect(said, what).not.toMatch(/NaN|Infinity|undefined|>–</u);
  const isExplained = result.notes.some(({ kind }) => kind !== 'remark');
  expect(result.outputs[headlineOf(sum)] !== undefined || isExplained, what).toBe(true);
  return { given, faults };
};

describe('whatever is written', () => {
  test.each(fields)('$id, $key: is answered or explained', ({ sum, key, input }) => {
    const ends = [input.lowest, input.highest].map(String);
    for (const text of [...NONSENSE, ...ODD, ...WIDE, wrongUnit(input), '', '  ', ...ends]) {
      const { faults } = saidFor(sum, { [key]: text }, text);
      // A whole sentence, and then what is used in the meantime.
      if (faults[key] !== undefined) expect(faults[key], text).toMatch(/\S\. Until then \S.*\.$/u);
    }
  });

  test.each(fields)('$id, $key: says that nonsense is none', ({ sum, key, input }) => {
    for (const text of [...NONSENSE, wrongUnit(input), '1e99', '-1e9']) {
      const { faults } = readInputs(sum, factsOf.get(sum.id), { [key]: text });
      expect(faults[key], text).toBeDefined();
    }
  });

  test.each(fields)('$id, $key: takes unusual ways of writing', ({ sum, key, input }) => {
    const { lowest, highest } = input;
    const facts = factsOf.get(sum.id);
    const read = (text: string) => readInputs(sum, facts, { [key]: text });
    const usual = read('').given[key];
    // An empty field is the number to start with, or nothing where that is allowed.
    expect(usual === undefined).toBe(input.optional);
    for (const [text, same] of [
      ['4,7', '4.7'],
      ['４．７', '4.7'],
      ['20..10', '10..20'],
      ['20 to 10', '10 to 20'],
      ['−4.7', '-4.7'],
      ['4.7E0', '4.7e0'],
    ] as const) {
      expect(read(text).given[key], `${text} from ${lowest} to ${highest}`).toEqual(
        read(same).given[key],
      );
      expect(read(text).faults[key] === undefined, text).toBe(read(same).faults[key] === undefined);
    }
  });

  test.each(allSums.map((sum) => [sum.id, sum] as const))('%s: in all fields at once', (_, sum) => {
    const usual = readInputs(sum, factsOf.get(sum.id), {}).given;
    for (const text of ['', 'abc', '0', '-1', '5 parsec']) {
      const texts = Object.fromEntries(Object.keys(sum.inputs).map((key) => [key, text]));
      const { given } = saidFor(sum, texts, text);
      if (text === '' || text === 'abc') expect(given).toEqual(usual);
    }
  });

  test.each(choices)('$id, $key: a choice of none', ({ sum, key, usual }) => {
    const { given, faults } = saidFor(sum, { [key]: 'no-such-thing' }, key);
    expect(given[key]).toBe(usual);
    expect(faults[key]).toMatch(/choose one of the list/u);
  });
});
