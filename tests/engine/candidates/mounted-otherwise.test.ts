import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { mountedOtherwise, type Made, type Part } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();

const u = 1e-6;
const n = 1e-9;

type Case = [
  type: string,
  farads: number,
  volts: number,
  percent: number,
  pitch: number[],
  expected: [style: string, volts: number] | undefined,
];

/** As the rows of market.csv without a lead pitch have it. */
const cases: Case[] = [
  ['al-electrolytic-wet', 47 * u, 25, 20, [2], ['axial can', 25]],
  ['al-electrolytic-wet', 47 * u, 35, 20, [2], ['axial can', 40]],
  ['al-electrolytic-wet', 47 * u, 400, 20, [5], ['axial can', 450]],
  ['al-electrolytic-wet', 4700 * u, 25, 20, [10], ['axial can', 25]],
  // More than axial cans hold at that voltage; cans with screws are for no board.
  ['al-electrolytic-wet', 4700 * u, 35, 20, [10], undefined],
  ['al-electrolytic-wet', 1000 * u, 450, 20, [10], undefined],
  ['pet-metallized', 100 * n, 63, 10, [5], ['axial', 63]],
  ['pet-metallized', 100 * n, 400, 10, [15], ['axial', 400]],
  // Closer than it is sold so; a value that its series has not; too high a voltage.
  ['pet-metallized', 100 * n, 63, 1, [5], undefined],
  ['pet-metallized', 120 * n, 63, 10, [5], undefined],
  ['pet-metallized', 100 * n, 2000, 10, [5], undefined],
  // A part without a pitch is mounted so itself, or on the surface.
  ['al-electrolytic-wet', 47 * u, 25, 20, [], undefined],
  // Nobody sells such discs with a lead at each end.
  ['ceramic-x7r', 100 * n, 50, 10, [5], undefined],
];

const partOf = (
  type: string,
  capacitance: number,
  ratedVoltage: number,
  percent: number,
): Part => ({
  type,
  capacitance,
  tolerance: { minus: percent / 100, plus: percent / 100 },
  ratedVoltage,
  voltageKind: 'dc',
});

describe('how a part is sold besides', () => {
  test.each(cases)(
    '%s of %d F, %d V, ±%d %%, pitch %j',
    (type, farads, volts, percent, pitch, expected) => {
      const part = partOf(type, farads, volts, percent);
      const other = mountedOtherwise(catalogue, part, { style: 'radial', pitch });
      expect(other === undefined ? undefined : [other.style, other.ratedVoltage]).toEqual(expected);
    },
  );

  test('has the smallest listed body of that style that takes it', () => {
    const part = partOf('al-electrolytic-wet', 47 * u, 25, 20);
    const body = mountedOtherwise(catalogue, part, { style: 'radial can', pitch: [2] })?.body;
    expect(body).toMatchObject({ style: 'axial can', type: 'al-electrolytic-wet' });
    expect(body?.c_max).toBeGreaterThanOrEqual(47 * u);
    expect(body?.voltage).toBeGreaterThanOrEqual(25);
  });

  test('is nothing for two parts beside each other', () => {
    const part = partOf('al-electrolytic-wet', 47 * u, 25, 20);
    const sold = { style: 'radial can', pitch: [2] };
    const one = { ...part, ...sold, series: 'E6' };
    const made: Made = { kind: 'parallel', parts: [one, one], why: 'the value' };
    expect(mountedOtherwise(catalogue, part, sold)).toBeDefined();
    expect(mountedOtherwise(catalogue, { ...part, made }, sold)).toBeUndefined();
  });
});
