import { describe, expect, test } from 'vitest';
import { prepareDemands } from '../../../src/engine/assessment/finding.ts';
import { surenessOf, timesApart, type Sureness } from '../../../src/engine/assessment/sureness.ts';
import type { Basis, Knowledge } from '../../../src/engine/catalogue.ts';
import type { Outcome } from '../../../src/engine/findings/model.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, knowing } from './setting.ts';

const figure = (basis: Basis): Knowledge => ({
  status: 'known',
  range: { min: 1, typ: 1, max: 1 },
  basis,
  sources: [],
});

const base = circumstancesOf(
  { original: { type: 'glass' }, position: 'bulk-rail' },
  knowing(catalogue, 'glass', {
    inductance: figure('published'),
    ageing: figure('common-practice'),
    dvdt: figure('memory'),
  }),
);

const rowOf = (id: string) => {
  const found = prepareDemands(base).find(({ row }) => row.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found.row;
};

const sureness = (outcome: Partial<Extract<Outcome, { status: 'known' }>>, high = 1): Sureness =>
  surenessOf(
    { status: 'known', value: { min: 1, typ: 1, max: 1 }, properties: [], ...outcome },
    { high },
    rowOf('ripple-voltage'),
    base.original,
    base,
  );

describe('how sure a finding is', () => {
  test.each<[string, Parameters<typeof sureness>[0], Sureness]>([
    [
      'published figures',
      { properties: ['inductance'] },
      { sure: 'sure', basis: 'published', weakest: ['inductance'] },
    ],
    [
      'the weakest of several figures decides, and is named',
      { properties: ['inductance', 'ageing'] },
      { sure: 'likely', basis: 'common-practice', weakest: ['ageing'] },
    ],
    [
      'a figure from memory',
      { properties: ['inductance', 'ageing', 'dvdt'] },
      { sure: 'possible', basis: 'memory', weakest: ['dvdt'] },
    ],
    [
      'a rule or table counts as a figure does',
      { properties: ['inductance'], bases: ['memory'] },
      { sure: 'possible', basis: 'memory', weakest: [] },
    ],
    [
      'whichever figure is named first',
      { properties: ['dvdt', 'ageing', 'inductance'] },
      { sure: 'possible', basis: 'memory', weakest: ['dvdt'] },
    ],
    [
      'two figures that are known alike are both named',
      { properties: ['ageing', 'inductance', 'ageing'] },
      { sure: 'likely', basis: 'common-practice', weakest: ['ageing', 'ageing'] },
    ],
    [
      'a figure that is not known counts for none',
      { properties: ['unheard-of', 'ageing'] },
      { sure: 'likely', basis: 'common-practice', weakest: ['ageing'] },
    ],
    ['nothing but arithmetic', {}, { sure: 'sure', basis: 'published', weakest: [] }],
  ])('%s', (_what, outcome, expected) => {
    expect(sureness(outcome)).toEqual(expected);
  });

  test.each<[string, Range, Sureness['sure'], number | undefined]>([
    ['ends nine times apart', { min: 1, typ: 3, max: 9 }, 'sure', undefined],
    ['ends ten times apart', { min: 1, typ: 3, max: 10 }, 'likely', 10],
    ['ends a hundred times apart', { min: 1, typ: 3, max: 100 }, 'possible', 100],
    ['ends twenty times apart', { min: 1, typ: 3, max: 20 }, 'likely', 20],
    ['ends a thousand times apart', { min: 0.1, typ: 3, max: 100 }, 'possible', 1000],
    [
      'both ends next to nothing against the limit',
      { min: 1e-9, typ: 1e-6, max: 9e-3 },
      'sure',
      undefined,
    ],
    ['one end next to nothing', { min: 1e-9, typ: 0.1, max: 0.5 }, 'likely', 50],
    ['from nothing', { min: 0, typ: 0.02, max: 0.05 }, 'sure', undefined],
  ])('%s', (_what, value, sure, apart) => {
    const found = sureness({ value });
    expect(found.sure).toBe(sure);
    if (apart === undefined) expect(found.apart).toBeUndefined();
    else expect(found.apart).toBeCloseTo(apart, 6);
  });

  test('an equation from memory leaves it possible, whatever its figures', () => {
    const row = { ...rowOf('ripple-voltage'), basis: 'memory' as const };
    const outcome: Outcome = {
      status: 'known',
      value: { min: 1, typ: 1, max: 1 },
      properties: ['inductance'],
    };
    expect(surenessOf(outcome, { high: 1 }, row, base.original, base)).toEqual({
      sure: 'possible',
      basis: 'memory',
      weakest: [],
    });
  });

  test('a grade may be of any spread', () => {
    const row = { ...rowOf('ripple-voltage'), unit: 'grade' };
    const outcome: Outcome = {
      status: 'known',
      value: { min: 1, typ: 3, max: 500 },
      properties: [],
    };
    expect(surenessOf(outcome, { high: 1 }, row, base.original, base).sure).toBe('sure');
  });

  test('a spread that the basis outdoes is not named', () => {
    const found = sureness({ properties: ['dvdt'], value: { min: 1, typ: 3, max: 500 } });
    expect(found).toEqual({ sure: 'possible', basis: 'memory', weakest: ['dvdt'] });
  });

  test('what is not known is no more than possible, and says what is missing', () => {
    const outcome: Outcome = { status: 'unknown', missing: ['ageing'] };
    expect(surenessOf(outcome, {}, rowOf('ripple-voltage'), base.original, base)).toEqual({
      sure: 'possible',
      basis: 'memory',
      weakest: ['ageing'],
    });
  });

  // A hundredth of 100 is 1: below it a figure is as good as nothing, of 9 there is a ninefold.
  test.each([
    ['at most', { high: 100 }],
    ['at least', { low: 100 }],
  ])('what is next to nothing follows from what may be %s', (_what, limit) => {
    expect(timesApart(catalogue, { min: 0.01, typ: 1, max: 9 }, limit)).toBeCloseTo(9, 9);
    expect(timesApart(catalogue, { min: 0.01, typ: 1, max: 9 }, {})).toBeCloseTo(900, 9);
  });

  test('figures below zero have no ratio', () => {
    expect(timesApart(catalogue, { min: -1, typ: 0, max: 5 }, { high: 1 })).toBeUndefined();
    expect(timesApart(catalogue, { min: 0, typ: 0, max: 0 }, { high: 1 })).toBeUndefined();
  });
});
