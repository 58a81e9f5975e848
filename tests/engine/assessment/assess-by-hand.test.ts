import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../src/engine/assessment/parts.ts';
import { byConcern } from '../../../src/engine/assessment/rank.ts';
import { assess, findStandIns, type Assessment, type Request } from '../../../src/engine/index.ts';
import type { Verdict } from '../../../src/engine/assessment/verdict.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { PositionRow } from '../../../src/schemas/positions.ts';
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

describe('what is approved for the mains is offered', () => {
  const place = catalogue.positions['interstage-coupling'];
  if (place === undefined) throw new Error('no coupling between stages');

  test.each<[string, Partial<PositionRow>, boolean]>([
    ['where an approval is asked', { safety: ['Y2'], voltage_sense: 'both signs' }, true],
    ['where the mains stands across it', { safety: [], voltage_sense: 'ac' }, true],
    ['nowhere else', { safety: [], voltage_sense: 'both signs' }, false],
  ])('%s', (_what, more, offered) => {
    const positions = { ...catalogue.positions, [place.id]: { ...place, ...more } };
    const request: Request = { original: { type: 'pet-metallized' }, position: place.id };
    const types = findStandIns({ ...catalogue, positions }, request).map(
      ({ candidate }) => catalogue.types[candidate.type],
    );
    expect(types.some((type) => (type?.safety_classes.length ?? 0) > 0)).toBe(offered);
  });
});

test('findings stand with the worst first, whatever the order of the table', () => {
  const { findings } = assess(
    catalogue,
    { original: { type: 'ps-film-foil' }, position: 'sample-hold' },
    { type: 'ceramic-x7r' },
  );
  expect(new Set(findings.map(({ verdict }) => verdict)).size).toBeGreaterThan(1);
  for (const [index, finding] of findings.slice(1).entries()) {
    const before = findings[index];
    expect(before && byConcern(before, finding)).toBeLessThanOrEqual(0);
  }
});

describe('two polar ones back to back are offered in a filter for audio', () => {
  const POLAR = 'al-electrolytic-wet';
  const FILM = 'pet-metallized';
  /** The same, when these and no others are on the market. */
  const offering = (...ids: string[]) => ({
    ...catalogue,
    types: Object.fromEntries(
      Object.entries(catalogue.types).map(([id, type]) => [
        id,
        ids.includes(id) ? type : { ...type, market: 'none' as const },
      ]),
    ),
  });

  // A film of 1 µF fits, one of 10 µF on a condition alone; a bipolar electrolytic on a condition, which
  // two polar ones would have to meet as well.
  test.each<[string, number, string[], Verdict | undefined, boolean]>([
    ['where nothing else is made', 1e-6, [], undefined, true],
    ['not where a film fits', 1e-6, [FILM], 'fits', false],
    ['where a film fits on a condition', 10e-6, [FILM], 'fits-if', true],
    ['not where a bipolar one does', 10e-6, ['al-electrolytic-bipolar'], 'fits-if', false],
    ['where a bipolar one does not', 3.3e-3, ['al-electrolytic-bipolar'], 'keep-out', true],
  ])('%s', (_what, farad, others, verdict, offered) => {
    const from = offering(POLAR, ...others);
    const request: Request = {
      original: { type: 'al-electrolytic-bipolar', capacitance: exactly(farad) },
      position: 'rc-filter-audio',
    };
    const [other] = others;
    if (other !== undefined) expect(assess(from, request, { type: other }).verdict).toBe(verdict);
    const { candidate } = assess(from, request, { type: POLAR });
    expect(candidate.made?.kind === 'back-to-back').toBe(offered);
  });
});
