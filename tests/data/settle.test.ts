import { describe, expect, test } from 'vitest';
import type { Knowledge } from '../../src/engine/catalogue.ts';
import { settle, toReferenceTest } from '../../src/catalogue/settle.ts';
import type {
  AbsorptionTestRow,
  FigureRow,
  PropertyRow,
  TypeRow,
} from '../../src/schemas/types.ts';
import type { UnitRow } from '../../src/schemas/values.ts';

const units: Record<string, UnitRow> = {
  '%': { unit: '%', si: 'fraction', factor: 0.01, name: 'per cent' },
  fraction: { unit: 'fraction', si: 'fraction', factor: 1, name: 'fraction' },
  degC: { unit: 'degC', si: 'degC', factor: 1, name: 'degree Celsius' },
};

const provenance = { source: 'a', locator: '', basis: 'published', note: '' } as const;

const type = (id: string, union_of: string[] = []): TypeRow => ({
  id,
  name: id,
  short_name: id,
  also_called: [],
  family: 'film',
  market: 'current',
  seldom_met: false,
  polarity: 'non-polar',
  safety_classes: [],
  union_of,
  appearance: 'x',
  summary: 'x',
  failure: 'x',
  old_c_min: 1e-9,
  old_c_max: 1e-6,
  old_v_typical: 100,
  old_ample_below: undefined,
  old_tolerance: '10',
  old_age: 40,
  chosen_for: '',
  ...provenance,
});

const property = (id: string, unit: string, scale: PropertyRow['scale']): PropertyRow => ({
  id,
  name: id,
  unit,
  better: 'low',
  scale,
  decisive: 'yes',
  lowest: 0,
  highest: 100,
  spread: 10,
  meaning: 'x',
});

const loss = property('loss', '%', 'log');
const warmest = property('warmest', 'degC', 'linear');
const absorption = property('absorption', '%', 'log');

const figure = (given: Partial<FigureRow>): FigureRow => ({
  type: 'film',
  property: 'loss',
  min: undefined,
  typ: undefined,
  max: undefined,
  unit: '%',
  status: 'known',
  use: 'used',
  test: '',
  conditions: '',
  disagreement: '',
  ...provenance,
  ...given,
});

const times = (id: string, short_s: number, open_s: number): AbsorptionTestRow => ({
  id,
  name: id,
  soak_s: 1e18,
  short_s,
  open_s,
  ...provenance,
});

/** Decades of recovery: log10(100/10) = 1, log10(1000/10) = 2, log10(20/10) = 0.30103. */
const absorptionTests = [
  times('one-decade', 10, 90),
  times('two-decades', 10, 990),
  times('an-octave', 10, 10),
];

const settled = (
  figures: FigureRow[],
  types: TypeRow[] = [type('film')],
  of: { type: string; property: string } = { type: 'film', property: 'loss' },
): Knowledge | undefined => {
  const properties = [loss, warmest, absorption];
  return settle({ types, properties, figures, absorptionTests, units })[of.type]?.[of.property];
};

/** Numbers that went through a conversion, near enough. */
const near = (min: number, typ: number, max: number) => ({
  min: expect.closeTo(min, 12),
  typ: expect.closeTo(typ, 12),
  max: expect.closeTo(max, 12),
});

describe('figures of one property', () => {
  const cases: [string, Partial<FigureRow>[], ReturnType<typeof near>][] = [
    ['one row as it is', [{ min: 1, typ: 2, max: 5 }], near(0.01, 0.02, 0.05)],
    ['a lone typical value', [{ typ: 2 }], near(0.02, 0.02, 0.02)],
    ['no typical value: the geometric middle', [{ min: 1, max: 4 }], near(0.01, 0.02, 0.04)],
    ['no geometric middle from zero on', [{ min: 0, max: 4 }], near(0, 0.02, 0.04)],
    ['nor across zero', [{ min: -1, max: 4 }], near(-0.01, 0.015, 0.04)],
    [
      'least and greatest of all numbers, whatever their column',
      [{ max: 0.5 }, { min: 1 }, { typ: 3 }],
      near(0.005, 0.03, 0.03),
    ],
    [
      'an even number of typical values: the geometric middle of the middle two',
      [{ typ: 1 }, { typ: 4 }],
      near(0.01, 0.02, 0.04),
    ],
    [
      'an odd number of typical values: the middle one',
      [{ typ: 10 }, { typ: 1 }, { typ: 2 }],
      near(0.01, 0.02, 0.1),
    ],
    [
      'each row in its own unit',
      [{ typ: 1 }, { typ: 0.04, unit: 'fraction' }],
      near(0.01, 0.02, 0.04),
    ],
    [
      'rows that are only shown do not count',
      [{ typ: 1 }, { typ: 50, use: 'shown' }],
      near(0.01, 0.01, 0.01),
    ],
  ];
  test.each(cases)('%s', (_, figures, range) => {
    expect(settled(figures.map(figure))).toMatchObject({ status: 'known', range });
  });

  test('of a linear property: arithmetic middles', () => {
    const of = { type: 'film', property: 'warmest' };
    const degrees = { property: 'warmest', unit: 'degC' };
    const ends = [figure({ ...degrees, min: 85, max: 105 })];
    expect(settled(ends, undefined, of)).toMatchObject({ range: { min: 85, typ: 95, max: 105 } });
    const typical = [figure({ ...degrees, typ: 100 }), figure({ ...degrees, typ: 125 })];
    expect(settled(typical, undefined, of)).toMatchObject({
      range: { min: 100, typ: 112.5, max: 125 },
    });
  });

  test('carry the weakest basis and every source once', () => {
    const figures = [
      figure({ typ: 1, source: 'a', basis: 'published' }),
      figure({ typ: 2, source: 'b', basis: 'memory' }),
      figure({ typ: 3, source: 'a', basis: 'common-practice' }),
    ];
    expect(settled(figures)).toMatchObject({ basis: 'memory', sources: ['a', 'b'] });
    expect(settled(figures.slice(0, 1))).toMatchObject({ basis: 'published' });
    expect(settled([figures[0], figures[2]].flatMap((row) => row ?? []))).toMatchObject({
      basis: 'common-practice',
    });
  });

  test('that are missing are unknown, and say so with their sources', () => {
    expect(settled([])).toEqual({ status: 'unknown', sources: [] });
    expect(settled([figure({ status: 'unknown', source: 'b' })])).toEqual({
      status: 'unknown',
      sources: ['b'],
    });
    expect(settled([figure({ status: 'not-applicable' })])).toEqual({
      status: 'not-applicable',
      sources: ['a'],
    });
    expect(settled([figure({ typ: 1, use: 'shown' })])).toEqual({
      status: 'unknown',
      sources: [],
    });
  });
});

describe('absorption', () => {
  test.each([
    ['the reference test as it is', 'one-decade', 1],
    ['twice the decades: half the figure', 'two-decades', 0.5],
    ['a shorter recovery: more', 'an-octave', 1 / 0.30103],
    ['no test: as it is', '', 1],
  ])('%s', (_, own, factor) => {
    expect(toReferenceTest(own, absorptionTests)).toBeCloseTo(factor, 5);
  });

  test('of a short soak is brought up, since a short soak fills less', () => {
    const [first] = absorptionTests;
    const short = { ...first, id: 'short-soak', soak_s: 90 } as (typeof absorptionTests)[number];
    // 10 s short and 90 s open after 90 s of soak: log10(10) - log10(190/100) decades.
    expect(toReferenceTest('short-soak', [...absorptionTests, short])).toBeCloseTo(
      1 / (1 - Math.log10(1.9)),
      5,
    );
  });

  test('is brought to the reference test before figures are joined', () => {
    const figures = [
      figure({ property: 'absorption', test: 'one-decade', typ: 0.2 }),
      figure({ property: 'absorption', test: 'two-decades', typ: 0.8 }),
    ];
    const of = { type: 'film', property: 'absorption' };
    expect(settled(figures, undefined, of)).toMatchObject({
      range: near(0.002, Math.sqrt(0.002 * 0.004), 0.004),
    });
  });
});

describe('a union', () => {
  const types = [type('either', ['film', 'disc']), type('film'), type('disc')];
  const of = { type: 'either', property: 'loss' };
  const film = figure({ min: 1, typ: 1, max: 2 });
  const disc = (given: Partial<FigureRow>) => figure({ type: 'disc', source: 'b', ...given });

  test('of known members is their hull, with the weakest basis', () => {
    expect(settled([film, disc({ min: 3, typ: 4, max: 5, basis: 'memory' })], types, of)).toEqual({
      status: 'known',
      range: near(0.01, 0.02, 0.05),
      basis: 'memory',
      sources: ['a', 'b'],
    });
  });

  test('with an unknown member is unknown', () => {
    expect(settled([film, disc({ status: 'unknown' })], types, of)).toEqual({
      status: 'unknown',
      sources: ['a', 'b'],
    });
    expect(settled([film], types, of)).toMatchObject({ status: 'unknown' });
  });

  test('of a basis no stronger than its weakest member, and of a member that there is not', () => {
    const firm = [film, disc({ typ: 4 })];
    expect(settled(firm, types, of)).toMatchObject({ basis: 'published' });
    const odd = [type('either', ['film', 'no-such']), type('film')];
    expect(settled([film], odd, of)).toEqual({ status: 'unknown', sources: ['a'] });
  });

  test('does not apply only where it applies to no member', () => {
    const some = [figure({ status: 'unknown' }), figure({ status: 'not-applicable', source: 'b' })];
    expect(settled(some)).toEqual({ status: 'unknown', sources: ['a', 'b'] });
  });

  test('passes over members to which the property does not apply', () => {
    expect(settled([film, disc({ status: 'not-applicable' })], types, of)).toMatchObject({
      status: 'known',
      range: near(0.01, 0.01, 0.02),
    });
    const neither = [figure({ status: 'not-applicable' }), disc({ status: 'not-applicable' })];
    expect(settled(neither, types, of)).toEqual({
      status: 'not-applicable',
      sources: ['a', 'b'],
    });
  });
});
