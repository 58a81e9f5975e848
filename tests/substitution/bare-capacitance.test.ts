import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readAddress } from '../../src/substitution/address.ts';
import { readHaving } from '../../src/substitution/having.ts';

/** Numbers without a unit: picofarads by habit, and asked about where none was made so small. */

const catalogue = loadCatalogue();
const asked = (type: string, c: string) =>
  readAddress(catalogue, type, 'local-decoupling', new URLSearchParams({ c }));

test.each([
  ['al-electrolytic-wet', '470'],
  ['al-electrolytic-wet', '4.7'],
  ['ta-mno2-solid', '10'],
  ['ta-mno2-solid', ' 2,2 '],
  ['al-electrolytic-wet', '470 ±20 %'],
  ['al-electrolytic-wet', '+100'],
])('%s of “%s” is asked for its unit', (type, text) => {
  const { request, rejected } = asked(type, text);
  expect(request.original.capacitance).toBeUndefined();
  expect(rejected['c']?.message).toMatch(/is that [\d.–]+\u00a0µF\?/u);
});

test.each([
  ['al-electrolytic-wet', '470u', 470e-6],
  ['al-electrolytic-wet', '.47', 0.47e-6],
  ['ceramic-disc-unknown', '1000', 1e-9],
  ['silvered-mica', '470', 470e-12],
])('%s of “%s” is read as it stands', (type, text, farad) => {
  const { request, rejected } = asked(type, text);
  expect(request.original.capacitance?.typ).toBeCloseTo(farad, 15);
  expect(rejected).toEqual({});
});

test('a part that the visitor has is asked for its unit alike', () => {
  const query = new URLSearchParams({ have: 'al-electrolytic-wet', 'have-c': '100' });
  const { rejected } = readHaving(catalogue, query);
  expect(rejected['have-c']?.message).toContain('is that 100\u00a0µF?');
});
