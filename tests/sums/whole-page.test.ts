import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';
import { readInputs } from '../../src/engine/sums/read-inputs.ts';
import { resultOf } from '../../src/engine/sums/run-sum.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { sumFields } from '../../src/sums/form.ts';
import { resultMarkup } from '../../src/sums/result.ts';

/** What a reader is promised of every sum. */

const catalogue = loadCatalogue();

describe.each(allSums.map((sum) => [sum.id, sum] as const))('%s', (_, sum) => {
  const facts = sum.facts?.(catalogue);
  const result = resultOf(sum, readInputs(sum, facts, {}).given, facts);
  const html = resultMarkup(sum, result).map(toHtml).join('');

  test('has a labelled field for each number, with room for what is wrong with it', () => {
    const fields = sumFields(sum, facts).map(toHtml);
    expect(fields).toHaveLength(Object.keys(sum.inputs).length);
    for (const [index, key] of Object.keys(sum.inputs).entries()) {
      expect(fields[index]).toContain(`for="field-${key}"`);
      expect(fields[index]).toContain(`aria-describedby="${key}-note"`);
      expect(fields[index]).toContain(`id="${key}-note"`);
    }
  });

  // What is looked for among preferred values is one value.
  test.skipIf(sum.laborious)('takes a tolerance, and gives both ends and the typical value', () => {
    const widened = Object.entries(sum.inputs).flatMap(([key, input]) => {
      const value = readInputs(sum, facts, {}).given[key];
      if (input.kind !== 'quantity' || typeof value !== 'object' || value.typ === 0) return [];
      const { given } = readInputs(sum, facts, { [key]: `${value.typ}e0 ±5 %` });
      return Object.values(resultOf(sum, given, facts).outputs);
    });
    expect(widened.some(({ min, typ, max }) => min < typ && typ < max)).toBe(true);
  });

  test('shows its equations, each with the numbers put in', () => {
    const equations = html.match(/<div class="equation">/gu) ?? [];
    const filled = html.match(/<span class="numbers-in">/gu) ?? [];
    expect(equations.length).toBeGreaterThan(0);
    expect(html).toContain('<math');
    expect(filled.length, 'with numbers').toBeGreaterThan(0);
  });

  test('is drawn with the point of the reader on it, axes named', () => {
    expect(html).toContain('class="plot-point"');
    expect(html.match(/class="plot-label"/gu)?.length ?? 0).toBeGreaterThan(0);
  });

  test('says what it holds for, and where its equations are from', () => {
    const said = result.notes.length + sum.cautions.length;
    expect(said, 'a limit, a caution or a remark').toBeGreaterThan(0);
    expect(sum.sources.length).toBeGreaterThan(0);
  });
});
