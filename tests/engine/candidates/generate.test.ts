import { describe, expect, test } from 'vitest';
import type { OfferedPart } from '../../../src/engine/assessment/parts.ts';
import {
  offeredParts,
  readTolerance,
  unofferedPart,
} from '../../../src/engine/candidates/generate.ts';
import type { Circumstances } from '../../../src/engine/findings/model.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { OfferRow } from '../../../src/schemas/types.ts';
import { catalogue, circumstancesOf, given } from '../assessment/setting.ts';

const template = catalogue.offers.find(({ type }) => type === 'pp-metallized');
if (template === undefined) throw new Error('no offer of polypropylene');

const offer = (changes: Partial<OfferRow>): OfferRow => ({
  ...template,
  c_min: 1e-9,
  c_max: 1e-6,
  voltages: [63, 100, 160, 250],
  tolerances: ['10', '5'],
  series: 'E12',
  ...changes,
});

const at = (offers: OfferRow[], position = 'sample-hold', farad = 10e-9): Circumstances =>
  circumstancesOf(
    {
      original: { type: 'pet-metallized', capacitance: exactly(farad) },
      position,
      conditions: given({ vdc: 5, 'v-surge': 15 }),
    },
    { ...catalogue, offers },
  );

const partsOf = (circumstances: Circumstances, type = 'pp-metallized'): readonly OfferedPart[] =>
  offeredParts(circumstances.catalogue, type, circumstances);

describe('offered parts', () => {
  test('start with the nearest value, the lowest sufficient rating, the usual tolerance', () => {
    expect(partsOf(at([offer({})]))[0]).toMatchObject({
      capacitance: 10e-9,
      ratedVoltage: 63,
      tolerance: { minus: 0.1, plus: 0.1 },
    });
  });

  // 50 nF is made no more: of E12 47 nF lies 6 % below, of E24 51 nF lies 2 % above.
  test.each([
    ['agc-bypass', 50e-9, 47e-9],
    ['local-decoupling', 50e-9, 47e-9],
    // A filter asks for the value closely, and a value that is made stands for itself.
    ['rc-filter-audio', 50e-9, 51e-9],
    ['agc-bypass', 51e-9, 51e-9],
    // 15 nF of 10 % lies as near to that as 47 nF to 50.
    ['agc-bypass', 16e-9, 16e-9],
  ])('in %s begin for %d F with %d F', (position, old, first) => {
    const precise = offer({ tolerances: ['1'], series: 'E24' });
    expect(partsOf(at([precise, offer({})], position, old))[0]?.capacitance).toBeCloseTo(first, 12);
  });

  test('of a pulse box at 1.6 kV come in the twelve values that line stages were built with', () => {
    const circumstances = circumstancesOf({
      original: { type: 'pet-film-foil', capacitance: exactly(8.2e-9) },
      position: 'flyback-pulse',
      conditions: given({}),
    });
    expect(offeredParts(catalogue, 'pp-film-foil', circumstances)[0]).toMatchObject({
      capacitance: 8.2e-9,
      ratedVoltage: 1600,
    });
  });

  // What can be set is sold by its maximum: one of 30 pF, and no pair of 15 pF.
  test.each([20e-12, 30e-12])('of a trimmer of %d F begin with one as large', (farad) => {
    const circumstances = circumstancesOf({
      original: { type: 'air-variable', capacitance: exactly(farad) },
      position: 'rf-tuned-circuit',
      conditions: given({}),
    });
    expect(offeredParts(catalogue, 'air-variable', circumstances)[0]?.capacitance).toBeCloseTo(
      farad,
      15,
    );
  });

  test('go on by tolerance, then by rating, then by value', () => {
    const order = partsOf(at([offer({})])).map((part) => [
      Math.round(part.capacitance * 1e10) / 10,
      part.ratedVoltage,
      part.tolerance.plus,
    ]);
    expect(order.slice(0, 5)).toEqual([
      [10, 63, 0.1],
      [10, 63, 0.05],
      [10, 100, 0.1],
      [10, 100, 0.05],
      [12, 63, 0.1],
    ]);
  });

  test('have the nearest value of the series where the old one is none', () => {
    const values = (farad: number): number | undefined =>
      partsOf(at([offer({ series: 'E6' })], 'interstage-coupling', farad))[0]?.capacitance;
    expect(values(25e-9)).toBeCloseTo(22e-9, 12);
    expect(values(50e-9)).toBeCloseTo(47e-9, 12);
    expect(values(9e-9)).toBeCloseTo(10e-9, 12);
  });

  test('have values that the position allows before others', () => {
    // A regulator takes no smaller value, however near.
    const circumstances = at([offer({ series: 'E6', c_max: 1e-3 })], 'regulator-output', 11e-6);
    expect(partsOf(circumstances)[0]?.capacitance).toBeCloseTo(15e-6, 12);
  });

  test('are of the highest rating there is where none suffices', () => {
    const high = circumstancesOf(
      {
        original: { type: 'pet-metallized' },
        position: 'sample-hold',
        conditions: given({ vdc: 1000 }),
      },
      { ...catalogue, offers: [offer({})] },
    );
    expect([...new Set(partsOf(high).map(({ ratedVoltage }) => ratedVoltage))]).toEqual([250]);
  });

  test('are of another type none of its own', () => {
    expect(partsOf(at([offer({})]), 'ceramic-c0g')).toEqual([]);
  });

  test('are none where no value of the band is near', () => {
    expect(partsOf(at([offer({ c_min: 5e-7, c_max: 6e-7 })]))).toEqual([]);
  });

  test('carry what one needs to order them', () => {
    expect(partsOf(at([offer({ style: 'a box', pitch_mm: [5, 7.5] })]))[0]).toMatchObject({
      style: 'a box',
      pitch: [5, 7.5],
      series: 'E12',
      voltageKind: 'dc',
    });
  });
});

describe('a tolerance cell', () => {
  test.each([
    ['5', { minus: 0.05, plus: 0.05 }],
    ['20/80', { minus: 0.2, plus: 0.8 }],
    ['0/100', { minus: 0, plus: 1 }],
  ])('%s', (cell, tolerance) => {
    expect(readTolerance(cell)).toEqual(tolerance);
  });

  test('of every offer can be read', () => {
    for (const { tolerances } of catalogue.offers) {
      for (const cell of tolerances) {
        const { minus, plus } = readTolerance(cell);
        expect(minus).toBeGreaterThanOrEqual(0);
        expect(plus).toBeGreaterThan(0);
        expect(minus).toBeLessThan(1);
      }
    }
  });
});

describe('a part that nobody offers', () => {
  test('has the old value and what was usual for its type', () => {
    const circumstances = at([]);
    const type = catalogue.types['pc-metallized'];
    expect(unofferedPart('pc-metallized', circumstances)).toEqual({
      type: 'pc-metallized',
      capacitance: 10e-9,
      tolerance: readTolerance(type?.old_tolerance ?? ''),
      ratedVoltage: type?.old_v_typical,
      voltageKind: 'dc',
    });
  });

  test('made for the mains is rated in alternating volts', () => {
    const atMains = circumstancesOf({
      original: { type: 'film-x2' },
      position: 'mains-x',
    });
    expect(unofferedPart('paper-x-safety', atMains).voltageKind).toBe('ac');
  });
});
