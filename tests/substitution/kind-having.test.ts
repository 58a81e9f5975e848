import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assessKind, type KindAssessment } from '../../src/engine/index.ts';
import { compareKey } from '../../src/substitution/comparison.ts';
import { kindPartKeys, kindHavingKeys } from '../../src/substitution/keys.ts';
import { kindHavingFields, readKindHaving } from '../../src/substitution/kind-having.ts';
import { kindPartRows } from '../../src/substitution/part-rows.ts';
import { newTrimmerFields } from '../../src/substitution/new-trimmer.ts';
import { havingCases } from './having-cases.ts';

const catalogue = loadCatalogue();
const kind = (id: string) => {
  const row = catalogue.kinds[id];
  if (row === undefined) throw new Error(`no kind ${id}`);
  return row;
};
const resistor = kind('resistor');

const reading = (query: string) => readKindHaving(catalogue, resistor, new URLSearchParams(query));

const request = { original: { type: 'carbon-composition' }, position: 'plate-load' };

const assessed = (query: string): KindAssessment | undefined => {
  const { candidate } = reading(query);
  return candidate && assessKind(catalogue, request, candidate);
};

havingCases({
  title: 'a resistor that the visitor has, in an address',
  read: reading,
  understood: [
    ['', undefined],
    ['have=metal-film', { type: 'metal-film' }],
    ['have=metal-film&have-value=100k&have-rating=1/2 W', { value: 1e5, rating: 0.5 }],
    ['have=wirewound&have-value=4k7&have-tol=5', { tolerance: { minus: 0.05, plus: 0.05 } }],
  ],
  refused: [
    ['have=pc-metallized', 'have', 'pc-metallized', /no such type/],
    ['have-value=10k', 'have', '', /say of what type/],
    ['have=metal-film&have-value=10q', 'have-value', '10q', /unit/],
    ['have=metal-film&have-rating=0', 'have-rating', '0', /from 10\smW to/],
  ],
  keys: Object.values(kindHavingKeys),
  others: [
    ...Object.keys(catalogue.conditionDefinitions),
    ...Object.values(kindPartKeys),
    ...newTrimmerFields.map(({ key }) => key),
    compareKey,
  ],
});

describe('a resistor that the visitor has, and what is left open of it', () => {
  test('says what is taken for what is left open', () => {
    const query = 'have=metal-film&have-value=100k';
    const notes = kindHavingFields(resistor, reading(query), assessed(query)).map(
      ({ key, note }) => [key, note],
    );
    expect(notes).toEqual([
      ['have', 'what it is made of'],
      ['have-value', 'yours'],
      ['have-tol', expect.stringMatching(/^taken as ±/)],
      ['have-rating', expect.stringMatching(/^taken as .*W$/)],
    ]);
  });

  test('is judged by its own numbers: an eighth of a watt has too little', () => {
    expect(assessed('have=metal-film&have-value=100k&have-rating=0.125')?.verdict).toBe('keep-out');
    expect(assessed('have=metal-film&have-value=100k&have-rating=2')?.verdict).not.toBe('keep-out');
  });
});

test('two resistors stand beside the old one by what a kind is ordered by', () => {
  const [a, b] = ['metal-film', 'carbon-film'].map((type) => assessed(`have=${type}`));
  if (a === undefined || b === undefined) throw new Error('not assessed');
  const names = kindPartRows(resistor, { type: 'carbon-composition' }, a, b).map(
    ({ name }) => name,
  );
  expect(names).toEqual(expect.arrayContaining(['Resistance', 'Tolerance', 'Rated power', 'Size']));
});
