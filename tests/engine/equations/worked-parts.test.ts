import { describe, expect, it } from 'vitest';
import { factorUnderBias } from '../../../src/engine/equations/bias.ts';
import {
  allowedShare,
  categoryShare,
  ratingBorders,
  shareByRule,
} from '../../../src/engine/equations/derating.ts';
import { driftBySlope, magnitude } from '../../../src/engine/equations/drift.ts';
import { droop, insulationAt } from '../../../src/engine/equations/leakage.ts';
import { wearLife } from '../../../src/engine/equations/life.ts';
import {
  currentNoise,
  inductiveShare,
  overloadEnergy,
  overloadStood,
  powerShare,
  thermalNoise,
  voltageStood,
} from '../../../src/engine/equations/resistor.ts';
import { heatForRise, riseByHeat } from '../../../src/engine/equations/ripple.ts';
import { boxSurface, canDiameter, cylinderSurface } from '../../../src/engine/equations/surface.ts';
import { greaterOf, presetOf, wiperCurrent } from '../../../src/engine/equations/trimmer.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import type { CategoryVoltageRow, DeratingRow } from '../../../src/schemas/derating.ts';
import { expectNear } from './near.ts';

/** Numbers are chosen so that each answer is worked out by hand. */

const to = (min: number, typ: number, max: number): Range => ({ min, typ, max });
const nano = (min: number, typ: number, max: number): Range =>
  to(min * 1e-9, typ * 1e-9, max * 1e-9);

/** Two and a half times the rated voltage for 5 s, up to twice the limit of the body. */
const test = { times: 2.5, timesLimit: 2, time: 5 };
const still = { ofSquareCentimetre: 2.3e-3, power: 0.8 };

const cases: [what: string, got: number | object, expected: number | object][] = [
  ['half of its rated voltage', factorUnderBias(to(-0.8, -0.5, -0.2), 25, 50), to(0.6, 0.75, 1)],
  ['half of it, growing', factorUnderBias(to(0.1, 0.2, 0.4), 25, 50), to(1, 1.1, 1.2)],
  ['twice its rated voltage', factorUnderBias(to(0.1, 0.2, 0.4), 100, 50), to(1, 1.2, 1.4)],
  ['size of a slope of either sign', magnitude(to(-3, -1, 2)), to(0, 1, 3)],
  ['size of a slope down', magnitude(to(-3, -2, -1)), to(1, 2, 3)],
  ['size of a slope up', magnitude(to(1, 2, 3)), to(1, 2, 3)],
  ['slopes over 20 K', driftBySlope(to(1e-4, 2e-4, 3e-4), 20), to(2e-3, 4e-3, 6e-3)],
  [
    'insulation 20 K warmer, halved every 5, 10 and 20 K',
    insulationAt(to(1000, 2000, 4000), to(5, 10, 20), 45),
    to(62.5, 500, 2000),
  ],
  ['insulation of a cold part', insulationAt(exactly(1000), exactly(10), 5), exactly(1000)],
  [
    'life 20 K below rated, warmed by 5 K of which each 5 halve it, with half more for the voltage',
    wearLife({
      rated: 2000 * 3600,
      ratedTemperature: 105,
      ambient: 85,
      doubling: 10,
      rise: 5,
      riseHalving: 5,
      voltageFactor: 1.5,
      longest: 1e9,
    }),
    6000 * 3600,
  ],
  ['half way down the line of power', powerShare(70, 170, 120) ?? NaN, 0.5],
  ['below its knee', powerShare(70, 170, 20) ?? NaN, 1],
  ['beyond its end', powerShare(70, 170, 200) ?? NaN, 0],
  ['10 kΩ of 0.25 W', voltageStood(1e4, 0.25, 350), 50],
  ['1 MΩ of 0.25 W, by its body', voltageStood(1e6, 0.25, 350), 350],
  ['10 kΩ of 0.25 W for seconds', overloadStood(1e4, 0.25, 350, test), 125],
  ['1 MΩ of 0.25 W for seconds, by its body', overloadStood(1e6, 0.25, 350, test), 700],
  ['0.25 W by 6.25 for 5 s', overloadEnergy(0.25, test), 7.8125],
  ['noise of 1 kΩ in 20 kHz, 574 nV', thermalNoise(1e3, 25, 100, 20_100), 5.7385741e-7],
  ['index of -20 dB, 10 V, two decades', currentNoise(-20, 10, 10, 1000), 1e-6 * Math.SQRT2],
  ['1 µH in 10 Ω at a million rad/s', inductiveShare(1e-6, 1e6 / (2 * Math.PI), 10), 0.1],
  ['10 cm² ten kelvin warmer: 23 mW · 10^0.8', heatForRise(10, 1e-3, still), 0.023 * 10 ** 0.8],
  ['half of the heat that ten kelvin give off', riseByHeat(2, 4), 5],
  ['box of 3, 2 and 1 cm: 10 cm² of sides, 6 of top', boxSurface(0.03, 0.02, 0.01), 16e-4],
  ['can of 2 by 5 cm with its top: 11π cm²', cylinderSurface(0.02, 0.05, 1), 11e-4 * Math.PI],
  ['can of 2 by 5 cm, both ends: 12π cm²', cylinderSurface(0.02, 0.05, 2), 12e-4 * Math.PI],
  ['can of 10 by 16 mm by its volume', canDiameter((Math.PI / 4) * 1e-4 * 0.016, 1.6), 0.01],
  [
    'divider at a fifth, on 20 kΩ of 20 turns',
    presetOf({ use: 'divider', reading: 2e3, oldTotal: 1e4, total: 2e4, turns: 20 }),
    { set: 4000, fromEnd: 4, perTurn: 1000, ratio: 0.2, newRatio: 0.2 },
  ],
  [
    'rheostat at 2 kΩ, on 20 kΩ of 20 turns',
    presetOf({ use: 'rheostat', reading: 2e3, oldTotal: 1e4, total: 2e4, turns: 20 }),
    { set: 2000, fromEnd: 2, perTurn: 1000, ratio: 0.2, newRatio: 0.1 },
  ],
  ['wiper of 10 kΩ of 0.25 W', wiperCurrent(0.25, 1e4), 5e-3],
  ['1 % or 2 Ω of 100 Ω', greaterOf(0.01, 2, 100), 2],
  ['5 % or 2 Ω of 100 Ω', greaterOf(0.05, 2, 100), 5],
];

describe('equations of parts worked out by hand', () => {
  it.each(cases)('%s', (_what, got, expected) => expectNear(got, expected));

  it('knows no share of power where the line does not fall', () => {
    expect(powerShare(70, 70, 50)).toBeUndefined();
    expect(powerShare(70, 60, 65)).toBeUndefined();
  });
});

describe('droop by surroundings and part, 1 nF for 1 ms', () => {
  it.each([
    [10, nano(1, 2, 3), nano(0.5, 1, 2), to(1.5e-3, 3e-3, 5e-3), 1 / 3],
    // Through its own insulation a part loses no more than it holds; what others draw runs on past nought.
    [0.8e-3, nano(1, 2, 3), nano(0.5, 1, 2), to(1.5e-3, 2.8e-3, 3.8e-3), 1 / 3],
    [0, nano(1, 2, 3), exactly(0), to(1e-3, 2e-3, 3e-3), 0],
    [10, exactly(0), exactly(0), exactly(0), 0],
  ])('of %f V', (voltage, other, own, total, ownShare) => {
    const found = droop(voltage, 1e-9, other, own, 1e-3);
    expectNear(found.total, total);
    expect(found.ownShare).toBeCloseTo(ownShare, 12);
  });
});

const provenance = { source: 'trade', locator: '', basis: 'common-practice', note: '' } as const;

const span = (from_c: number, to_c: number, share: number, end_share: number): DeratingRow => ({
  guideline: 'plain',
  types: ['film'],
  above_v: undefined,
  up_to_v: undefined,
  from_c,
  to_c,
  share,
  end_share,
  ...provenance,
});

describe('derating', () => {
  /** Not in the order of temperatures, as rows of a table need not be. */
  const rows = [
    span(70, 100, 0.5, 0.2),
    span(110, 120, 0.15, 0.1),
    span(-55, 70, 0.6, 0.6),
    span(120, 120, 0.1, 0.05),
  ];

  it.each([
    [-60, 0.6, -55],
    [-55, 0.6, -55],
    [20, 0.6, -55],
    [70, 0.5, 70],
    [85, 0.35, 70],
    [100, 0.2, 70],
    [105, 0, 120],
    [115, 0.125, 110],
    [120, 0.05, 120],
    [121, 0, 120],
  ])('at %d °C', (temperature, share, from) => {
    const found = allowedShare(rows, 'plain', { type: 'film', rated: 63 }, temperature);
    expect(found?.share).toBeCloseTo(share, 12);
    expect(found?.row.from_c).toBe(from);
  });

  it('says nothing of other types, nor in other guidelines', () => {
    expect(allowedShare(rows, 'plain', { type: 'mica', rated: 63 }, 20)).toBeUndefined();
    expect(allowedShare(rows, 'other', { type: 'film', rated: 63 }, 20)).toBeUndefined();
  });

  it.each([
    [6.3, 0.9],
    [10, 0.9],
    [10.1, 0.8],
    [1000, 0.8],
  ])('of %d V where it goes by the rating', (rated, share) => {
    const banded = [
      { ...span(-55, 105, 0.9, 0.9), up_to_v: 10 },
      { ...span(-55, 105, 0.8, 0.8), above_v: 10 },
    ];
    expect(allowedShare(banded, 'plain', { type: 'film', rated }, 20)?.share).toBe(share);
    expect(ratingBorders([...rows, ...banded], 'film')).toEqual([10, Infinity]);
    expect(ratingBorders(rows, 'film')).toEqual([Infinity]);
  });

  /** Tantalum of 25 V that is a 17 V part at 125 °C. */
  const categories: CategoryVoltageRow[] = [
    {
      types: ['mica', 'film'],
      rated_v: 25,
      category_v: 17,
      from_c: 85,
      to_c: 125,
      ...provenance,
    },
  ];

  it.each([
    [25, 85, undefined],
    [25, 105, 0.84],
    [25, 125, 0.68],
    [25, 126, undefined],
    [16, 105, undefined],
  ])('of %d V at %d °C by what is printed', (rated, temperature, share) => {
    const found = categoryShare(categories, { type: 'film', rated }, temperature)?.share;
    if (share === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(share, 12);
    expect(categoryShare(categories, { type: 'paper', rated }, temperature)).toBeUndefined();
  });

  it('takes what is printed as the makers’ own, and only as that', () => {
    const maker = rows.map((row) => ({ ...row, guideline: 'maker' }));
    const rules = { rows: [...rows, ...maker], categories };
    const at = (guideline: string, rated: number): number | undefined =>
      shareByRule(rules, guideline, { type: 'film', rated }, 85.5)?.share;
    expect(at('maker', 25)).toBeCloseTo(0.996, 12);
    expect(at('maker', 16)).toBeCloseTo(0.345, 12);
    expect(at('plain', 25)).toBeCloseTo(0.345, 12);
  });
});
