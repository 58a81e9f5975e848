import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceLook } from '../../src/catalogue/slices/slice-look.ts';
import { lookKey, type Catalogue } from '../../src/engine/index.ts';
import { readLook } from '../../src/look/address.ts';
import { answerText, resultsMarkup } from '../../src/look/results.ts';

const catalogue = loadCatalogue();
const slice = JSON.parse(JSON.stringify(sliceLook(catalogue))) as Catalogue;

const markupFrom = (from: Catalogue, query: string): unknown => {
  const { answers, rejected } = readLook(from, new URLSearchParams(query));
  const result = lookKey(from, answers);
  const found = { catalogue: from, answers, result };
  return { rejected, said: answerText(found), markup: resultsMarkup(found, () => true) };
};

test.each([
  'form=tube&finish=wax&capacitance=.05 MFD&year=1950s',
  'form=box&d-1khz=0.5&d-120hz=3&warm-c=1',
  'form=disc&insulation=5000&capacitance=10n&tap=2&marks=code.class2',
  'form=fins&junction-drop=1&d-1khz=nonsense',
])('a browser shows of its slice what the whole catalogue would: %s', (query) => {
  expect(markupFrom(slice, query)).toEqual(markupFrom(catalogue, query));
});
