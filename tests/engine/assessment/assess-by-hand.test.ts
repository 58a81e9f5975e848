import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../src/engine/assessment/parts.ts';
import { assess, findStandIns, type Assessment, type Request } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { catalogue } from './setting.ts';

/** What one orders, and which types are asked at all. */

const TYPE = 'pp-metallized';
const hold: Request = {
  original: { type: 'pet-metallized', capacitance: exactly(10e-9), ratedVoltage: exactly(100) },
  position: 'sample-hold',
};
const best = (): Assessment => assess(catalogue, hold, { type: TYPE });

describe('what to order', () => {
  const { candidate, buy } = best();
  const body: BodyRow = {
    ...{ type: TYPE, style: buy?.style ?? '', shape: 'box', c_min: 1e-9, c_max: 1e-7 },
    ...{ voltage: candidate.ratedVoltage, voltage_kind: 'dc', pitch_mm: [5, 7.5], lead_mm: 0.5 },
    ...{ length_mm: 7.2, width_mm: 2.5, height_mm: 6.5 },
    ...{ source: 'trade', locator: '', basis: 'common-practice', note: '' },
  };

  test('has the sides of the listed body', () => {
    const listed = assess({ ...catalogue, bodies: [body] }, hold, candidate);
    expect(listed.buy?.body).toEqual({
      shape: 'box',
      length: 7.2,
      width: 2.5,
      height: 6.5,
      pitch: [5, 7.5],
      lead: 0.5,
    });
  });

  test('says nothing of leads whose thickness is not listed', () => {
    const bodies = [{ ...body, lead_mm: undefined }];
    const listed = assess({ ...catalogue, bodies }, hold, candidate);
    expect(listed.buy?.body).not.toHaveProperty('lead');
  });

  test('has none where none is listed', () => {
    const bare = assess({ ...catalogue, bodies: [] }, hold, candidate);
    expect(bare.buy).toBeDefined();
    expect(bare.buy).not.toHaveProperty('body');
  });

  test('is a part, and not said to be made of others', () => {
    expect(best().candidate).not.toHaveProperty('made');
  });

  const { minus, plus } = candidate.tolerance;
  test.each<[string, Partial<Candidate>, boolean]>([
    ['a tolerance that differs by rounding', { tolerance: { minus: minus + 1e-12, plus } }, true],
    ['another tolerance below', { tolerance: { minus: minus + 0.01, plus } }, false],
    ['another tolerance above', { tolerance: { minus, plus: plus + 0.01 } }, false],
  ])('is known of %s: %#', (_what, said, known) => {
    const asked = assess(catalogue, hold, { ...candidate, ...said });
    expect(asked.buy !== undefined).toBe(known);
  });
});

describe('parts for the mains', () => {
  const approved = (position: string): boolean =>
    findStandIns(catalogue, { original: { type: 'pet-metallized' }, position }).some(
      ({ candidate }) => (catalogue.types[candidate.type]?.safety_classes.length ?? 0) > 0,
    );

  test.each([
    ['mains-x', true],
    ['motor-run', true],
    ['interstage-coupling', false],
  ])('are offered in %s: %s', (position, offered) => {
    expect(approved(position)).toBe(offered);
  });
});
