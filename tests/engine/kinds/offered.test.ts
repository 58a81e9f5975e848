import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { kindCircumstances, resolveKindSituation } from '../../../src/engine/kinds/situation.ts';
import { kindPairing } from '../../../src/engine/kinds/pairs.ts';
import { holds, offeredKindParts, unofferedKindPart } from '../../../src/engine/kinds/offered.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

/** What is offered and filled in for made-up types and offers, worked by hand. */

const real = loadCatalogue();
const place = real.kindPositions['gain-resistor'];
const [typeRow] = Object.values(real.kindTypes).filter(({ kind }) => kind === 'resistor');
const [offer] = real.kindOffers;
if (!place || !typeRow || !offer) throw new Error('no rows to start from');

const made = { ...typeRow, id: 'made-up', old_min: 100, old_max: 1e6, old_tolerance: '5' };
const position = {
  ...place,
  value_policy: 'window' as const,
  value_low: 0.8,
  value_high: 1.25,
  reference: 10e3,
  usual_min: 100,
  usual_max: 1e6,
};

/** Some columns of a row, with others in them or none. */
type Changed<Row> = { [Column in keyof Row]?: Row[Column] | undefined };

const row = {
  ...offer,
  type: 'made-up',
  series: 'E12',
  value_min: 10,
  value_max: 1e6,
  ratings: [0.125, 0.25, 0.5, 1],
  tolerances: ['5', '1'],
  style: 'axial',
  pitch_mm: [10],
};

const catalogue = (
  offers = [row],
  type: Changed<typeof made> = {},
  where: Changed<typeof position> = {},
) => ({
  ...real,
  kindTypes: { 'made-up': { ...made, ...type } as typeof typeRow },
  kindPositions: { here: { ...position, ...where, id: 'here' } as typeof place },
  kindOffers: offers,
  conditions: [],
});

const situation = (from: ReturnType<typeof catalogue>, value?: number, rating?: number) =>
  kindCircumstances(from, {
    original: {
      type: 'made-up',
      ...(value === undefined ? {} : { value: exactly(value) }),
      ...(rating === undefined ? {} : { rating: exactly(rating) }),
    },
    position: 'here',
  });

const listed = (from: ReturnType<typeof catalogue>, value?: number, rating?: number): string[] =>
  offeredKindParts('made-up', situation(from, value, rating)).map(
    (part) => `${part.value} ${part.rating} ${part.tolerance?.plus}`,
  );

describe('holds', () => {
  it.each([
    [10, true],
    [9.9999999, true],
    [9.9, false],
    [1e6, true],
    [1.0000005e6, true],
    [1.1e6, false],
  ])('%f Ω: %o', (value, is) => {
    expect(holds(row, value)).toBe(is);
  });

  it('has no bound where the offer names none', () => {
    const open = { ...row, value_min: undefined, value_max: undefined };
    expect([holds(open, 1e-9), holds(open, 1e12)]).toEqual([true, true]);
  });
});

describe('offeredKindParts', () => {
  it('starts from the nearest value, the old rating or the next above, and the usual tolerance', () => {
    expect(listed(catalogue(), 10e3, 0.3).slice(0, 8)).toEqual([
      '10000 0.5 0.05',
      '10000 0.5 0.01',
      '10000 1 0.05',
      '10000 1 0.01',
      '10000 0.25 0.05',
      '10000 0.25 0.01',
      '10000 0.125 0.05',
      '10000 0.125 0.01',
    ]);
  });

  it('takes the rating of the old part where it is made', () => {
    expect(listed(catalogue(), 10e3, 0.25)[0]).toBe('10000 0.25 0.05');
  });

  it('tries the nearest three values that the position allows', () => {
    const values = new Set(listed(catalogue(), 10e3, 0.5).map((one) => one.split(' ')[0]));
    expect([...values]).toEqual(['10000', '12000', '8200']);
  });

  it('leaves out values beyond the offer; the nearest that the position does not allow is tried last', () => {
    const low = { ...row, value_max: 9e3 };
    const values = new Set(listed(catalogue([low]), 10e3, 0.5).map((one) => one.split(' ')[0]));
    expect([...values]).toEqual(['8200', '6800']);
  });

  it('has parts without a value, a tolerance or a rating where an offer names none', () => {
    const bare = { ...row, series: '', ratings: [], tolerances: [] };
    expect(listed(catalogue([bare]), 10e3, 0.5)).toEqual(['undefined undefined undefined']);
    expect(offeredKindParts('made-up', situation(catalogue([bare]), 10e3, 0.5))).toStrictEqual([
      { type: 'made-up', style: 'axial', pitch: [10], series: '' },
    ]);
  });

  it('mixes several offers of a type by the value, the rating and the tolerance', () => {
    const fine = { ...row, series: 'E24', value_min: 8e3, ratings: [0.25], tolerances: ['1'] };
    expect(listed(catalogue([{ ...row, value_max: 9e3 }, fine]), 9.1e3, 0.25).slice(0, 4)).toEqual([
      '9100 0.25 0.01',
      '10000 0.25 0.01',
      '8200 0.25 0.05',
      '8200 0.25 0.01',
    ]);
  });

  it('needs no old value and no old rating: without, the first rating of any value', () => {
    const from = catalogue([row], { old_rating: undefined }, { reference: undefined });
    expect(listed(from)).toEqual(['undefined 0.125 0.05', 'undefined 0.125 0.01']);
    expect(Object.keys(offeredKindParts('made-up', situation(from))[0] ?? {})).not.toContain(
      'unit',
    );
  });

  it('is empty for a type that nobody offers', () => {
    expect(listed(catalogue([{ ...row, type: 'another' }]), 10e3)).toEqual([]);
  });

  it('says how each is sold', () => {
    const [first] = offeredKindParts('made-up', situation(catalogue(), 10e3, 0.5));
    expect(first).toMatchObject({
      type: 'made-up',
      unit: 'ohm',
      ratingUnit: 'W',
      style: 'axial',
      pitch: [10],
      series: 'E12',
    });
  });
});

describe('unofferedKindPart', () => {
  it('is the old part in another type, with the tolerance that is usual for it', () => {
    expect(unofferedKindPart('made-up', situation(catalogue(), 4700, 0.5))).toEqual({
      type: 'made-up',
      value: 4700,
      unit: 'ohm',
      rating: 0.5,
      ratingUnit: 'W',
      tolerance: { minus: 0.05, plus: 0.05 },
    });
  });

  it('has the tolerance of its own type, not that of the old part', () => {
    const from = kindCircumstances(catalogue(), {
      original: { type: 'made-up', tolerance: { minus: 0.2, plus: 0.2 } },
      position: 'here',
    });
    expect(unofferedKindPart('made-up', from).tolerance).toEqual({ minus: 0.05, plus: 0.05 });
    expect(unofferedKindPart('unheard-of', from).tolerance).toEqual({ minus: 0.2, plus: 0.2 });
  });

  it('keeps the tolerance of the old part where none is usual', () => {
    const from = catalogue([row], { old_tolerance: '' });
    expect(unofferedKindPart('made-up', situation(from, 4700))).not.toHaveProperty('tolerance');
  });
});

describe('what is filled in of the old part', () => {
  it.each([
    ['the usual value of the position', {}, {}, undefined, 10e3],
    ['as far as the type goes up', { old_max: 1e3 }, {}, undefined, 1e3],
    ['as far as the type goes down', { old_min: 22e3 }, {}, undefined, 22e3],
    ['without ends of the type', { old_min: undefined, old_max: undefined }, {}, undefined, 10e3],
    ['nothing, where the position has none', {}, { reference: undefined }, undefined, undefined],
    ['what was said', {}, {}, 560, 560],
  ])('%s', (_what, type, where, said, value) => {
    expect(situation(catalogue([row], type, where), said).original.value).toBe(value);
  });

  it('takes tolerance and rating from the type unless they are said', () => {
    const from = catalogue([row], { old_rating: 0.25 });
    expect(situation(from).original).toMatchObject({
      tolerance: { minus: 0.05, plus: 0.05 },
      rating: 0.25,
    });
    expect(situation(from, 1e3, 2).original.rating).toBe(2);
    const said = resolveKindSituation(from, {
      original: { type: 'made-up', tolerance: { minus: 0.1, plus: 0.2 } },
      position: 'here',
    });
    expect(said.original.tolerance).toEqual({ minus: 0.1, plus: 0.2 });
  });

  it.each([
    ['no-such', 'here'],
    ['made-up', 'nowhere'],
  ])('does not know %s in %s', (type, where) => {
    expect(() => kindCircumstances(catalogue(), { original: { type }, position: where })).toThrow(
      RangeError,
    );
  });
});

describe('conditions', () => {
  const [condition] = real.conditions;
  if (!condition) throw new Error('no condition');
  const withConditions = (follows: string, typ: number, max?: number) => ({
    ...catalogue([row], { old_rating: 0.25 }),
    conditions: [
      { ...condition, position: 'here', condition: 'vdc', follows, typ, max } as typeof condition,
      { ...condition, position: 'elsewhere', condition: 'vac' },
    ],
  });
  const resolved = (from: ReturnType<typeof withConditions>, vdc?: number) =>
    resolveKindSituation(from, {
      original: { type: 'made-up', value: exactly(10e3) },
      position: 'here',
      ...(vdc === undefined ? {} : { conditions: { vdc: exactly(vdc) } }),
    }).conditions.map(({ id, from: way, range }) => [id, way, range.typ]);

  it('follow from the value or from the power of the old part, or are given', () => {
    expect(resolved(withConditions('value', 0.5))).toEqual([['vdc', 'derived', 5e3]]);
    // A fifth of 0.25 W in 10 kΩ is √500 V.
    expect(resolved(withConditions('power', 0.2))).toEqual([
      ['vdc', 'derived', expect.closeTo(Math.sqrt(500), 9)],
    ]);
    expect(resolved(withConditions('power', 0.2, 15))).toEqual([['vdc', 'derived', 15]]);
    expect(resolved(withConditions('value', 0.5), 12)).toEqual([['vdc', 'given', 12]]);
    expect(resolved(withConditions('', 7))[0]?.[1]).toBe('default');
  });

  it.each([
    // √(0.3 × 0.25 W × 10 kΩ) = 27.4 V; of 3.3 MΩ 497 V, where such a body stands 250 V.
    [10e3, 27.386],
    [3.3e6, 250],
  ])('ask of a carbon film of %d ohm no more volts than its body stood: %d', (ohm, volts) => {
    const { conditions } = resolveKindSituation(real, {
      original: { type: 'carbon-film', value: exactly(ohm), rating: exactly(0.25) },
      position: 'bias-resistor',
    });
    expect(conditions.find(({ id }) => id === 'vdc')?.range.typ).toBeCloseTo(volts, 2);
  });

  it.each([
    // 5 W in 1 kΩ are 70.7 V, and 160 W at the usual 400 V; in 100 kΩ those are 1.6 W.
    ['hv-dropper', 1e3, 10, Math.sqrt(5000), 'derived'],
    ['hv-dropper', 100e3, 10, 400, 'default'],
    // 400 V make 16 W in 10 kΩ, which 10 W do not bear; 10 W in 16 kΩ are just borne.
    ['hv-dropper', 10e3, 10, Math.sqrt(50e3), 'derived'],
    ['hv-dropper', 16e3, 10, 400, 'default'],
    // A link has no heat, and of a part without a rating nobody knows what it bears.
    ['hv-dropper', 0, 10, 400, 'default'],
    ['hv-dropper', 1e3, 0, 400, 'default'],
    // A fifth of 5 W in a shunt of 0.1 ohm.
    ['precision-divider', 0.1, 5, Math.sqrt(0.1), 'derived'],
  ])(
    'burn no old part: in %s of %d ohm and %d W they are %d V',
    (position, ohm, watt, volts, from) => {
      const { conditions } = resolveKindSituation(real, {
        original: { type: 'wirewound', value: exactly(ohm), rating: exactly(watt) },
        position,
      });
      const vdc = conditions.find(({ id }) => id === 'vdc');
      expect(vdc?.range.typ).toBeCloseTo(volts, 9);
      expect(vdc?.from).toBe(from);
    },
  );

  it('leave all but the voltages that it stands as usual where those would have burnt the old part', () => {
    const at = (ohm: number) =>
      resolveKindSituation(real, {
        original: { type: 'wirewound', value: exactly(ohm), rating: exactly(10) },
        position: 'hv-dropper',
      }).conditions.filter(({ id }) => id !== 'vdc' && id !== 'v-surge');
    expect(at(1e3)).toEqual(at(100e3));
    expect(at(1e3).length).toBeGreaterThan(3);
  });

  it.each([
    // 0.125 W in 1 kΩ are 11 V, where 100 V are usual; the usual part of a place is told by it.
    ['of a value that somebody gave', { value: exactly(1e3) }, Math.sqrt(125), 'derived'],
    ['not of the usual one', {}, 100, 'default'],
  ])('go by the old part %s', (_what, said, volts, from) => {
    const { conditions } = resolveKindSituation(withConditions('', 100), {
      original: { type: 'made-up', ...said },
      position: 'here',
    });
    expect(conditions[0]?.range.typ).toBeCloseTo(volts, 9);
    expect(conditions[0]?.from).toBe(from);
  });

  it.each([
    // 0.3 of 0.25 W in 3.3 MΩ are 497 V: a fault may put more there than a body that stands 250 V.
    ['vdc', 250],
    ['v-fault', Math.sqrt(0.3 * 0.25 * 3.3e6)],
  ])('hold %s to what the body stood only if it stands there all the time', (id, volts) => {
    const from = {
      ...real,
      conditions: real.conditions.flatMap((one) =>
        one.position === 'bias-resistor' && one.condition === 'vdc'
          ? [{ ...one, condition: id }]
          : [],
      ),
    };
    const { conditions } = resolveKindSituation(from, {
      original: { type: 'carbon-film', value: exactly(3.3e6), rating: exactly(0.25) },
      position: 'bias-resistor',
    });
    expect(conditions.map(({ range }) => range.typ)).toEqual([expect.closeTo(volts, 6)]);
  });

  it.each([
    // A quarter of 0.25 W in 10 kΩ: √(62.5 mW / 10 kΩ).
    [10e3, undefined, 2.5e-3],
    // No more than is usual there, 2 mA; in 100 kΩ it would be 0.79 mA.
    [10e3, 2, 2e-3],
    [100e3, 2, Math.sqrt(62.5e-3 / 100e3)],
    // At the stop nothing is left that a current could heat.
    [0, undefined, 0],
  ])('let %d ohm carry at the wiper what heats it, at most %s mA', (ohm, most, ampere) => {
    const { conditions: rows, ...rest } = withConditions('power', 0.25);
    const from = {
      ...rest,
      conditions: rows.map((one) => ({ ...one, condition: 'wiper-current', max: most })),
    };
    const { conditions } = resolveKindSituation(from, {
      original: { type: 'made-up', value: exactly(ohm) },
      position: 'here',
    });
    expect(conditions[0]?.range.typ).toBeCloseTo(ampere, 9);
  });

  it('do not follow in a way that is not known', () => {
    expect(() => resolved(withConditions('voltage', 1))).toThrow('cannot follow so');
  });
});

describe('kindPairing', () => {
  const pairing = (type: Changed<typeof made>, where: Changed<typeof position>) =>
    kindPairing(
      { ...catalogue([row], type, where), kindTypes: {}, kindPositions: {} },
      { ...made, ...type } as typeof typeRow,
      { ...position, ...where, id: 'here' } as typeof place,
    );

  it.each([
    [{}, {}, true],
    [{ old_max: 50, old_min: 10 }, {}, false],
    [{}, { usual_min: 2e6, usual_max: 1e7 }, false],
    [{ old_min: undefined, old_max: 50 }, {}, true],
    [{ old_max: 50, old_min: 10 }, { usual_min: undefined }, true],
  ])('%o at %o: %o', (type, where, met) => {
    expect(pairing(type, where).met).toBe(met);
  });
});
