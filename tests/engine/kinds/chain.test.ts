import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { largestShare } from '../../../src/engine/equations/resistor.ts';
import { findKindStandIns, kindChain, type Catalogue } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

/**
 * Plain resistors in series where no single one stands the voltage or the power. Worked by hand from the
 * bodies of the tables: carbon film stands 350 V at half a watt and 500 V above, metal film 250 V at a
 * quarter and 300 V at half a watt. Of parts of 5 % one may bear (1.05 + 0.95) / 2 as much more.
 */

const catalogue = loadCatalogue();

interface Asked {
  type: string;
  position: string;
  /** ohm */
  value: number;
  /** V, across the whole. */
  volts: number;
  /** W */
  rating?: number;
  /** V, at switch-on. */
  surge?: number;
}

const chainIn = (given: Catalogue, { type, position, value, volts, rating, surge }: Asked) => {
  const request = {
    original: {
      ...{ type, value: exactly(value) },
      ...(rating === undefined ? {} : { rating: exactly(rating) }),
    },
    position,
    conditions: {
      vdc: exactly(volts),
      ...(surge === undefined ? {} : { 'v-surge': exactly(surge) }),
    },
  };
  return kindChain(given, request, findKindStandIns(given, request));
};

const dropper = { type: 'carbon-composition', position: 'hv-dropper' };

describe('so many equal parts are named', () => {
  test.each<
    [why: string, asked: Asked, count: number, part: [type: string, ohms: number, watts: number]]
  >([
    // Half of 600 V and a twentieth more are 315 V, and 0.2 W.
    ['two for 600 V', { ...dropper, value: 1e6, volts: 600 }, 2, ['carbon-film', 510e3, 0.5]],
    // 1 W goes up to 1 MΩ, and two of that are 9 % short; of three each may bear 320 V.
    [
      'three for 900 V, as two are not made close enough',
      { ...dropper, value: 2.2e6, volts: 900, surge: 900 },
      3,
      ['carbon-film', 750e3, 0.5],
    ],
    // 400² / 22 k are 7.3 W, half of which 10 W bear with ease.
    [
      'two for the power',
      { type: 'wirewound', position: 'hv-dropper', value: 22e3, volts: 400, rating: 10 },
      2,
      ['wirewound', 11e3, 10],
    ],
    // Close parts end at 1 MΩ: three of 732 kΩ are 0.2 % less than the old value.
    [
      'three for a close value that is not made in one',
      { type: 'metal-film', position: 'precision-divider', value: 2.2e6, volts: 500 },
      3,
      ['metal-film', 732e3, 0.25],
    ],
  ])('%s', (_why, asked, count, [type, ohms, watts]) => {
    const chain = chainIn(catalogue, asked);
    expect([chain?.count, chain?.each.candidate.type, chain?.each.candidate.rating]).toEqual([
      count,
      type,
      watts,
    ]);
    expect(chain?.each.candidate.value).toBeCloseTo(ohms, 3);
    // The whole is as close to the old one as a step of the series.
    expect(Math.abs((count * ohms) / asked.value - 1)).toBeLessThanOrEqual(0.05);
  });
});

describe('none are', () => {
  test.each<[why: string, asked: Asked]>([
    ['where a single one fits', { ...dropper, value: 220e3, volts: 450 }],
    // A quarter of 2 kV and a little more is 538 V, more than any plain body stands.
    ['where four are too few', { ...dropper, type: 'carbon-film', value: 10e6, volts: 2000 }],
    [
      'where what is wrong is the noise',
      { type: 'carbon-composition', position: 'plate-load', value: 220e3, volts: 400 },
    ],
    [
      'where only parts that burn through may stand',
      { type: 'fusible-film', position: 'fusible-position', value: 100, volts: 8 },
    ],
  ])('%s', (_why, asked) => {
    expect(chainIn(catalogue, asked)).toBeUndefined();
  });

  test('of what has a wiper', () => {
    const resistor = catalogue.kinds['resistor'];
    if (resistor === undefined) throw new Error('no resistors');
    const turned = { ...resistor, wiper: 'panel' as const };
    const asked = { ...dropper, value: 1e6, volts: 600 };
    expect(
      chainIn({ ...catalogue, kinds: { ...catalogue.kinds, resistor: turned } }, asked),
    ).toBeUndefined();
  });

  test.each([
    ['of a type that few keep', 'current' as const, {}],
    ['of chips', 'common' as const, { style: 'chip 1206' }],
  ])('%s', (_why, market, style) => {
    const kindTypes = Object.fromEntries(
      Object.entries(catalogue.kindTypes).map(([id, row]) => [id, { ...row, market }]),
    );
    const chips = catalogue.kindOffers.map((offer) => ({ ...offer, ...style }));
    const given = { ...catalogue, kindTypes, kindOffers: chips };
    expect(chainIn(given, { ...dropper, value: 1e6, volts: 600 })).toBeUndefined();
  });
});

// R(1 + t) over R(1 + t) and the others at R(1 - t).
test.each([
  ['exact ones share evenly', 4, 0, 1 / 4],
  ['of two of 5 %, one may bear 52.5 %', 2, 0.05, 0.525],
  ['of three of 10 %, 1.1 of 2.9', 3, 0.1, 0.37931],
])('%s', (_case, count, tolerance, share) => {
  expect(largestShare(count, tolerance)).toBeCloseTo(share, 5);
});
