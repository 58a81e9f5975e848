import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findStandIns, type Request } from '../../src/engine/index.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { cautionsFor, isDue } from '../../src/substitution/cautions.ts';

const catalogue = loadCatalogue();

const dueAt = (type: string, position: string, conditions: Record<string, number> = {}) => {
  const [typeRow, positionRow] = [catalogue.types[type], catalogue.positions[position]];
  if (typeRow === undefined || positionRow === undefined) throw new Error('no such page');
  const request: Request = {
    original: { type },
    position,
    conditions: Object.fromEntries(
      Object.entries(conditions).map(([id, value]) => [id, exactly(value)]),
    ),
  };
  const assessments = findStandIns(catalogue, request);
  const due = cautionsFor(catalogue, typeRow, positionRow, { request, assessments })
    .filter((one) => one.due)
    .map(({ caution }) => caution.id);
  const kinds = assessments
    .filter(({ verdict }) => verdict !== 'keep-out')
    .map(({ candidate }) => candidate.made?.kind);
  return { due, inSeries: kinds.includes('series') };
};

describe('the caution for two in series', () => {
  const places = ['screen-bypass', 'bulk-rail', 'reservoir', 'cathode-bypass', 'sample-hold'];

  test.each(places)('is shown in %s just where a pair in series is offered', (position) => {
    for (const type of ['al-electrolytic-wet', 'ta-mno2-solid', 'pp-metallized']) {
      const { due, inSeries } = dueAt(type, position);
      expect(due.includes('series-pair'), `${type} in ${position}`).toBe(inSeries);
    }
  });

  test('is shown at all', () => {
    expect(dueAt('pet-metallized', 'screen-bypass', { vdc: 40, 'v-surge': 90 }).inSeries).toBe(
      true,
    );
    expect(dueAt('al-electrolytic-wet', 'reservoir').inSeries).toBe(false);
  });

  test('speaks of a live joint from 60 V on', () => {
    const low = dueAt('pet-metallized', 'cathode-bypass');
    expect(low.inSeries).toBe(true);
    expect(low.due).not.toContain('series-pair-live');
    const trigger = { condition: 'vdc', from: 60, made: ['series'] };
    const rows = catalogue.conditions.filter((row) => row.position === 'screen-bypass');
    const row = rows.find(({ condition }) => condition === 'vdc');
    if (row === undefined) throw new Error('no voltage');
    const at = (volt: number, kind: 'series' | 'parallel') =>
      isDue(trigger, {
        conditions: [{ id: 'vdc', range: exactly(volt), from: 'given', row }],
        assessments: findStandIns(catalogue, {
          original: { type: 'pet-metallized' },
          position: 'screen-bypass',
          conditions: { vdc: exactly(40), 'v-surge': exactly(90) },
        }).map((one) => {
          const { made, ...candidate } = one.candidate;
          return made === undefined
            ? one
            : { ...one, candidate: { ...candidate, made: { ...made, kind } } };
        }),
      });
    expect([at(59, 'series'), at(60, 'series'), at(300, 'parallel')]).toEqual([false, true, false]);
  });
});

describe('other cautions', () => {
  test('of re-forming come with old stock', () => {
    expect(dueAt('pet-metallized', 'cathode-bypass').due).not.toContain('reform-old-stock');
    const stored = dueAt('pet-metallized', 'cathode-bypass', { shelf: 3 * 31_557_600 });
    expect(stored.due).toContain('reform-old-stock');
  });

  test('of high voltage come with the voltage', () => {
    expect(dueAt('pet-metallized', 'bulk-rail', { vdc: 24 }).due).not.toContain('high-voltage');
    expect(dueAt('pet-metallized', 'bulk-rail', { vdc: 240 }).due).toContain('high-voltage');
  });

  test('of a type or a position stay with it', () => {
    expect(dueAt('ta-mno2-solid', 'meter-damping').due).toContain('tantalum-fire');
    expect(dueAt('pet-metallized', 'meter-damping').due).not.toContain('tantalum-fire');
    expect(dueAt('pet-metallized', 'meter-damping').due).toContain('lifting-pads');
  });
});

describe('the caution for valve supplies', () => {
  test.each([
    [15, false],
    [149, false],
    [150, true],
    [400, true],
  ])('at %d V on a rail: %s', (volt, shown) => {
    const { due } = dueAt('al-electrolytic-wet', 'bulk-rail', { vdc: volt });
    expect(due.includes('valve-supply')).toBe(shown);
  });

  test('is not shown at the usual numbers of a rail, nor in audio coupling', () => {
    expect(dueAt('al-electrolytic-wet', 'bulk-rail').due).not.toContain('valve-supply');
    expect(dueAt('ceramic-disc-unknown', 'interstage-coupling').due).not.toContain('valve-supply');
  });
});
