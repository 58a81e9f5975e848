import { describe, expect, test } from 'vitest';
import { bodyOf } from '../../../src/engine/sizes/body-of.ts';
import { bodyOfRow, estimatedBody } from '../../../src/engine/sizes/body.ts';
import { coolingSurface } from '../../../src/engine/sizes/surface.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { catalogue } from '../assessment/setting.ts';
import { madeBody } from './setting.ts';

/** Surface in square millimetres. */
const surfaceOf = (row: Partial<BodyRow>): number =>
  coolingSurface(catalogue, bodyOfRow(madeBody(row), 'listed')).typ * 1e6;

const ROUND = Math.PI / 4;

/** What no estimate falls below, m3. */
const LEAST = 0.15e-6;

describe('the surface that cools a body', () => {
  test.each<[string, Partial<BodyRow>, number]>([
    [
      'a can: its side and its top',
      { shape: 'can', length_mm: 10, width_mm: 10, height_mm: 16 },
      4 * ROUND * 10 * 16 + ROUND * 100,
    ],
    [
      'a tube: its side and both ends',
      { shape: 'tube', length_mm: 30, width_mm: 10, height_mm: 10 },
      4 * ROUND * 10 * 30 + 2 * ROUND * 100,
    ],
    [
      'a disc: both faces and its rim',
      { shape: 'disc', length_mm: 10, width_mm: 4, height_mm: 10 },
      4 * ROUND * 10 * 4 + 2 * ROUND * 100,
    ],
    [
      'a box: four sides and the top',
      { shape: 'box', length_mm: 18, width_mm: 5, height_mm: 11 },
      2 * 18 * 11 + 2 * 5 * 11 + 18 * 5,
    ],
  ])('%s', (_what, row, expected) => {
    expect(surfaceOf(row)).toBeCloseTo(expected, 6);
  });

  test('of a body whose volume alone is known is that of a usual can', () => {
    const volume = ROUND * 0.01 ** 2 * 0.016;
    const body = estimatedBody(exactly(volume), LEAST);
    expect(coolingSurface(catalogue, body).typ * 1e6).toBeCloseTo(
      4 * ROUND * 10 * 16 + ROUND * 100,
      6,
    );
  });

  test('of such a body goes by how high a can is taken to be', () => {
    // As high as wide, and 10 mm of each.
    const rules = { rulesOfThumb: { 'can-shape': [1] } };
    const body = estimatedBody(exactly(ROUND * 0.01 ** 3), LEAST);
    expect(coolingSurface(rules, body).typ * 1e6).toBeCloseTo(5 * ROUND * 100, 6);
  });

  test('of a body between two lies between theirs', () => {
    const part = { type: 'al-electrolytic-wet', capacitance: 680e-6, ratedVoltage: 25 };
    const body = bodyOf(catalogue, part);
    if (body === undefined) throw new Error('no body');
    const { min, typ, max } = coolingSurface(catalogue, body);
    expect(body.from).toBe('between');
    expect(min).toBeLessThan(typ);
    expect(typ).toBeLessThan(max);
  });
});
