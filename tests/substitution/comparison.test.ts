import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findStandIns, type Assessment } from '../../src/engine/index.ts';
import {
  besideRows,
  readChosen,
  writeChosen,
  type BesideRow,
} from '../../src/substitution/comparison.ts';
import { besideSentence } from '../../src/substitution/comparison-view.ts';

const CHOICES = ['pp-film-foil', 'ceramic-x7r', 'have'];

describe('two parts in an address', () => {
  test.each([
    ['', '', '', {}],
    ['pp-film-foil,ceramic-x7r', 'pp-film-foil', 'ceramic-x7r', {}],
    ['pp-film-foil,have', 'pp-film-foil', 'have', {}],
    ['pp-film-foil,', 'pp-film-foil', '', {}],
    [' pp-film-foil , ceramic-x7r ,more', 'pp-film-foil', 'ceramic-x7r', {}],
  ])('%j', (text, a, b, faults) => {
    expect(readChosen(text, CHOICES)).toEqual({ a, b, faults });
  });

  test.each([
    ['unobtainium,ceramic-x7r', 'a', /not among the stand-ins/],
    ['ceramic-x7r,<b>', 'b', /not among the stand-ins/],
    ['ceramic-x7r,ceramic-x7r', 'b', /two different parts/],
  ] as const)('%j is refused in a sentence', (text, key, says) => {
    expect(readChosen(text, CHOICES).faults[key]).toMatch(says);
  });

  test('asks for the part that one has, where none is said', () => {
    expect(readChosen('have,ceramic-x7r', ['ceramic-x7r']).faults.a).toMatch(/which part you have/);
  });

  test('reads what it wrote', () => {
    const name = fc.constantFrom('', ...CHOICES);
    fc.assert(
      fc.property(name, name, (a, b) => {
        const { a: first, b: second } = readChosen(writeChosen(a, b), CHOICES);
        expect([first, second]).toEqual([a, b]);
      }),
    );
  });
});

describe('two parts side by side', () => {
  const assessments = findStandIns(loadCatalogue(), {
    original: { type: 'ceramic-disc-unknown' },
    position: 'interstage-coupling',
  });
  const of = (type: string): Assessment => {
    const found = assessments.find(({ candidate }) => candidate.type === type);
    if (found === undefined) throw new Error(`no ${type}`);
    return found;
  };
  const rows = besideRows(of('pp-film-foil'), of('ceramic-x7r'));

  test('have a row a demand', () => {
    expect(rows).toHaveLength(of('pp-film-foil').findings.length);
    for (const { a, b } of rows) expect(a.demand).toBe(b.demand);
  });

  test('begin with what tells them apart', () => {
    const order = rows.map(({ apart }) => ['verdict', 'figure', 'nothing'].indexOf(apart));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    for (const { a, b, apart } of rows) expect(apart === 'verdict').toBe(a.verdict !== b.verdict);
    expect(rows.filter(({ apart }) => apart === 'verdict').length).toBeGreaterThan(0);
    expect(rows.filter(({ apart }) => apart === 'nothing').length).toBeGreaterThan(0);
  });

  test('are alike where they are one and the same', () => {
    const same = besideRows(of('pp-film-foil'), of('pp-film-foil'));
    expect(same.every(({ apart }) => apart === 'nothing')).toBe(true);
    expect(besideSentence(same)).toBe(`Alike in all ${same.length} demands.`);
  });

  test.each([
    ['verdict figure nothing', '1 of 3 verdicts differs; 1 more figure differs.'],
    ['verdict verdict figure figure', '2 of 4 verdicts differ; 2 more figures differ.'],
    ['verdict verdict', '2 of 2 verdicts differ.'],
    ['figure nothing', 'All verdicts are the same; 1 figure differs.'],
    ['nothing nothing', 'Alike in all 2 demands.'],
  ])('are summed up in a sentence: %s', (kinds, said) => {
    const [row] = rows;
    const made = kinds.split(' ').map((apart) => ({ ...row, apart }) as BesideRow);
    expect(besideSentence(made)).toBe(said);
  });
});
