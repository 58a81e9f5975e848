import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { allKindPairings, assessKind, findKindStandIns } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

const catalogue = loadCatalogue();

const standIn = (
  original: { type: string; value?: number; rating?: number },
  position: string,
  type: string,
  conditions: Record<string, number> = {},
) =>
  assessKind(
    catalogue,
    {
      original: {
        type: original.type,
        value: original.value === undefined ? undefined : exactly(original.value),
        rating: original.rating === undefined ? undefined : exactly(original.rating),
      },
      position,
      conditions: Object.fromEntries(
        Object.entries(conditions).map(([id, value]) => [id, exactly(value)]),
      ),
    },
    { type },
  );

const figure = (one: ReturnType<typeof standIn>, finding: string) =>
  one.findings.find((found) => found.finding === finding);

describe('a resistor in a position', () => {
  test.each([
    ['carbon-composition', 'plate-load', 'metal-film', 'fits'],
    ['carbon-composition', 'inrush-limiter', 'metal-film', 'keep-out'],
    ['carbon-composition', 'inrush-limiter', 'ceramic-composition', 'fits'],
    ['carbon-composition', 'inrush-limiter', 'metal-oxide', 'fits-if'],
    ['fusible-film', 'fusible-position', 'fusible-film', 'fits'],
    ['fusible-film', 'fusible-position', 'metal-film', 'keep-out'],
    ['fusible-film', 'fusible-position', 'fusible-wirewound', 'keep-out'],
    ['wirewound', 'hot-power', 'metal-film', 'keep-out'],
    // A winding is no news where the old part was wound, and a coil in place of a solid rod.
    ['wirewound', 'inrush-limiter', 'wirewound', 'fits'],
    ['carbon-composition', 'inrush-limiter', 'wirewound', 'fits-if'],
    ['carbon-film', 'grid-stopper', 'wirewound', 'fits-if'],
    ['carbon-film', 'low-noise-input', 'metal-film', 'fits'],
  ])('%s in %s: %s is %s', (old, position, type, verdict) => {
    expect(standIn({ type: old }, position, type).verdict).toBe(verdict);
  });

  // Whether the element is a winding stands in types.csv, whatever family the type is listed with: only
  // of such a one the same again is no more of a coil.
  test.each([
    ['wirewound', 'inrush-limiter', true],
    ['fusible-wirewound', 'inrush-limiter', true],
    ['fusible-film', 'inrush-limiter', false],
    ['carbon-film', 'grid-stopper', false],
  ])('%s for its like in %s: its winding is no news: %s', (type, position, isNoNews) => {
    const found = figure(standIn({ type }, position, type), 'self-inductance');
    expect(found?.working.startsWith('wound, as the old part was')).toBe(isNoNews);
  });

  // Half of the rating in the whole: of 25 W and 10 ohm √(12.5/10) = 1.118 A, which 5 W bear no more.
  test('a rheostat of tens of watts is rated like the old one', () => {
    const old = { type: 'wirewound-pot', value: 10, rating: 25 };
    const found = standIn(old, 'panel-rheostat', 'wirewound-pot');
    expect(found.verdict).toBe('fits');
    expect(found.candidate.rating).toBe(25);
  });

  test.each([
    ['nobody measured', {}, false],
    ['was measured', { 'wiper-current': exactly(0.2) }, true],
  ])('one of 5 W in its place, for a current that %s', (_, conditions, fits) => {
    const request = {
      original: { type: 'wirewound-pot', value: exactly(10), rating: exactly(25) },
      position: 'panel-rheostat',
      conditions,
    };
    const part = { type: 'wirewound-pot', value: 10, rating: 5 };
    expect(assessKind(catalogue, request, part).verdict === 'fits').toBe(fits);
  });

  // By offers.csv metal film is sold for 0.25, 0.5, 1 and 2 W, in rows of their own.
  test.each([
    [0.25, 0.25],
    [0.6, 1],
    [1, 1],
    [2, 2],
    [3, 2],
  ])('of an old resistor of %d W one of %d W is taken', (old, watts) => {
    const request = { type: 'metal-oxide', value: 470, rating: old };
    expect(standIn(request, 'gain-resistor', 'metal-film').candidate.rating).toBe(watts);
  });

  test('is not offered as fusible where nobody asks for that', () => {
    const offered = findKindStandIns(catalogue, {
      original: { type: 'wirewound' },
      position: 'hot-power',
    });
    expect(offered.map(({ candidate }) => candidate.type)).not.toContain('fusible-film');
  });

  test('stands no more voltage than its body, however little power is in it', () => {
    // 1 MΩ of a quarter watt would take 500 V by its power; the sheet of the carbon film prints 250 V.
    const request = {
      original: { type: 'carbon-film', value: exactly(1e6), rating: exactly(0.25) },
      position: 'hv-dropper',
      conditions: { vdc: exactly(250), vac: exactly(0), 'v-surge': exactly(250) },
    };
    const part = { type: 'carbon-film', value: 1e6, rating: 0.25 };
    const found = figure(assessKind(catalogue, request, part), 'resistor-voltage');
    expect(found?.standIn?.typ).toBeCloseTo(1, 6);
    expect(found?.basis).toBe('published');
  });

  test('has less power when warm: half of it at 112.5 °C of 70 to 155 °C', () => {
    const request = {
      original: { type: 'metal-film', value: exactly(1000), rating: exactly(0.25) },
      position: 'bias-resistor',
      conditions: { vdc: exactly(10), 't-max': exactly(112.5) },
    };
    const part = { type: 'metal-film', value: 1000, rating: 0.25 };
    const found = figure(assessKind(catalogue, request, part), 'resistor-power');
    expect(found?.standIn?.typ).toBeCloseTo(0.1 / 0.125, 6);
  });

  test('takes the slope of its own value: carbon film above 100 kΩ', () => {
    const drift = (value: number) =>
      figure(
        assessKind(
          catalogue,
          {
            original: { type: 'carbon-film', value: exactly(value) },
            position: 'gain-resistor',
            conditions: { 't-min': exactly(20), 't-max': exactly(30) },
          },
          { type: 'carbon-film', value },
        ),
        'resistance-drift',
      )?.standIn?.max;
    expect(drift(10e3)).toBeCloseTo(500e-6 * 10, 9);
    expect(drift(470e3)).toBeCloseTo(700e-6 * 10, 9);
  });
});

describe('a trimmer in a position', () => {
  const carried = (position: string, conditions: Record<string, number>) =>
    figure(
      standIn({ type: 'cermet-multiturn' }, position, 'cermet-multiturn', conditions),
      'setting-transfer',
    );

  test('is set to the same ohms as a rheostat, with its turns', () => {
    // 25 turns and 0.05 % of the total by the sheet: 2 kΩ of 10 kΩ are 5 turns, 0.25 % of the setting.
    const found = carried('gain-trim', { 'old-setting': 2000, 'old-total': 9600 });
    expect(found?.standIn?.typ).toBeCloseTo(0.0025, 9);
    expect(found?.working).toContain('5 of 25 turns');
    expect(found?.working).toContain('2\u00A0kΩ');
  });

  test('is set to the same ratio as a divider', () => {
    const found = carried('offset-trim', { 'old-setting': 2400, 'old-total': 9600 });
    expect(found?.standIn?.typ).toBeCloseTo(0.0001 / 0.25, 9);
    expect(found?.working).toContain('25\u00A0%');
    expect(found?.working).toContain('6.25 of 25 turns');
  });

  test('is kept out where the setting lies beyond its total', () => {
    const one = standIn({ type: 'cermet-multiturn' }, 'gain-trim', 'cermet-multiturn', {
      'old-setting': 15e3,
      'old-total': 15e3,
    });
    expect(figure(one, 'setting-reach')?.verdict).toBe('keep-out');
  });

  test('carries less current as a rheostat the larger it is: 0.5 W in 10 kΩ is 7.07 mA', () => {
    const one = standIn(
      { type: 'cermet-multiturn', value: 10e3 },
      'gain-trim',
      'cermet-multiturn',
      {
        'wiper-current': 7.0711e-3,
      },
    );
    expect(figure(one, 'wiper-load')?.standIn?.typ).toBeCloseTo(1, 4);
  });
});

describe('all pairs of a kind', () => {
  const met = allKindPairings(catalogue).filter(({ pairing }) => pairing.met);

  test('are of one kind, and some hundred at most', () => {
    for (const { type, position } of met) expect(type.kind).toBe(position.kind);
    expect(met.length).toBeGreaterThan(50);
    expect(met.length).toBeLessThan(200);
  });

  test('have an answer with working in every finding', () => {
    for (const { type, position } of met) {
      const found = findKindStandIns(catalogue, {
        original: { type: type.id },
        position: position.id,
      });
      expect(found[0]?.verdict, `${type.id} in ${position.id}`).not.toBe('keep-out');
      for (const { findings } of found)
        for (const { working, demand } of findings)
          expect(working, demand).not.toMatch(/NaN|undefined/);
    }
  });
});
