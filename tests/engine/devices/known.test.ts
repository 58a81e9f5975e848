import { describe, expect, it } from 'vitest';
import { weakestOf } from '../../../src/engine/assessment/basis.ts';
import { deviceKnowledge } from '../../../src/engine/index.ts';
import type { DeviceFigureRow } from '../../../src/schemas/devices.ts';
import { catalogueWith, device, figure } from './made-up.ts';

/** What rows of figures come to together, worked by hand. */

const part = device('part', { series: ['family', 'kin'] });

const known = (figures: DeviceFigureRow[], at?: number) =>
  deviceKnowledge(catalogueWith({ figures }), part, 'width', at);

const own = (said: Partial<DeviceFigureRow>): DeviceFigureRow => figure('part', 'width', said);

describe('what is known of a property of a device', () => {
  it.each<[string, DeviceFigureRow[], [number, number, number]]>([
    ['its limits and what is usual', [own({ min: 1, typ: 2, max: 4 })], [1, 2, 4]],
    // Where only limits are promised, their middle by ratio is all that can be called usual.
    ['limits alone', [own({ min: 1, max: 4 })], [1, 2, 4]],
    ['one limit alone', [own({ max: 3 })], [3, 3, 3]],
    ['what several makers print', [own({ typ: 2, max: 9 }), own({ min: 1, typ: 8 })], [1, 4, 9]],
    ['its unit', [own({ min: 1, typ: 2, max: 4, unit: 'mV' })], [0.001, 0.002, 0.004]],
    ['rows in units of their own', [own({ typ: 1 }), own({ typ: 4000, unit: 'mV' })], [1, 2, 4]],
    ['nothing that is only shown', [own({ typ: 2 }), own({ typ: 9, use: 'shown' })], [2, 2, 2]],
    [
      'nothing of other properties',
      [own({ typ: 2 }), figure('part', 'hue', { typ: 9 })],
      [2, 2, 2],
    ],
    [
      'its series, where nothing is said of itself',
      [figure('family', 'width', { typ: 7 })],
      [7, 7, 7],
    ],
    [
      'the nearest of its series, which is named last',
      [figure('family', 'width', { typ: 4 }), figure('kin', 'width', { typ: 9 })],
      [9, 9, 9],
    ],
    [
      'itself before its series',
      [own({ typ: 2 }), figure('family', 'width', { typ: 7 })],
      [2, 2, 2],
    ],
  ])('is %s', (_what, figures, [min, typ, max]) => {
    const { range } = known(figures) ?? {};
    expect(range?.min).toBeCloseTo(min, 12);
    expect(range?.typ).toBeCloseTo(typ, 12);
    expect(range?.max).toBeCloseTo(max, 12);
  });

  it('is nothing of a stranger, or of what is only shown', () => {
    expect(known([figure('stranger', 'width', { typ: 1 })])).toBeUndefined();
    expect(known([own({ typ: 1, use: 'shown' })])).toBeUndefined();
    expect(known([])).toBeUndefined();
  });

  const points = [
    own({ at: 5, typ: 400, source: 'low', basis: 'memory' }),
    own({ at: 20, typ: 100, source: 'high', basis: 'common-practice' }),
    own({ at: 80, typ: 50, source: 'top' }),
  ];

  it.each<[number | undefined, number, string[]]>([
    // at, figure, sources of the points that it is read between
    [5, 400, ['low']],
    // Half way on both logarithmic scales.
    [10, 200, ['low', 'high']],
    [20, 100, ['high']],
    [40, 50 * Math.SQRT2, ['high', 'top']],
    // Beyond the figures the nearest holds.
    [1, 400, ['low']],
    [300, 50, ['top']],
    // Where nobody says at what, the last.
    [undefined, 50, ['top']],
  ])('at %d it is %d', (at, typ, sources) => {
    const found = known(points, at);
    expect(found?.range.typ).toBeCloseTo(typ, 9);
    expect(found?.sources).toEqual(sources);
  });

  it('goes by the points in their order, however the rows stand', () => {
    expect(known(points.toReversed(), 10)?.range.typ).toBeCloseTo(200, 9);
  });

  it('goes straight where a figure or a point is nought or below', () => {
    const through = [own({ at: 1, typ: -10 }), own({ at: 4, typ: 10 })];
    expect(known(through, 2)?.range.typ).toBeCloseTo(0, 9);
    const fromNought = [own({ at: 0, typ: 3 }), own({ at: 4, typ: 9 })];
    expect(known(fromNought, 2)?.range.typ).toBe(3);
  });

  it('takes what holds anywhere with what holds at a point', () => {
    const found = known([own({ at: 5, typ: 4 }), own({ max: 9, source: 'any' })], 5);
    expect(found?.range).toEqual({ min: 4, typ: 4, max: 9 });
    expect(found?.sources).toEqual(['sheet-of-part', 'any']);
  });

  it('rests on the weakest of the rows that it was read from, and on no others', () => {
    expect(known(points, 10)?.basis).toBe('memory');
    expect(known(points, 40)?.basis).toBe('common-practice');
    expect(known(points, 80)?.basis).toBe('published');
  });
});

describe('the weakest basis', () => {
  it.each([
    [[], 'published'],
    [['published', 'published'], 'published'],
    [['common-practice', 'published'], 'common-practice'],
    [['published', 'memory', 'common-practice'], 'memory'],
  ] as const)('of %o is %s', (bases, weakest) => {
    expect(weakestOf(bases)).toBe(weakest);
  });
});
