import { describe, expect, test } from 'vitest';
import { plotOf } from '../../../src/engine/sums/curves.ts';
import { quantity, type PlotSpec, type Sum } from '../../../src/engine/sums/sum.ts';
import { exact, facts, given, line, spec } from './made-up.ts';

const plotted = (changed: Partial<PlotSpec> = {}, x = 10, a = exact(3), sum: Sum = line) =>
  plotOf(sum, { ...spec, ...changed }, given(x, a), facts);
const axisOf = (plot: ReturnType<typeof plotted>): number[] =>
  plot?.curves[0]?.points.map(({ x }) => Number(x.toPrecision(6))) ?? [];
const endsOf = (plot: ReturnType<typeof plotted>): (number | undefined)[] => [
  axisOf(plot)[0],
  axisOf(plot).at(-1),
];

describe('the axis of a curve', () => {
  const wide = {
    ...line,
    inputs: {
      ...line.inputs,
      x: quantity({ label: 'Along', unit: 'ohm', usual: '1', lowest: -1e6, highest: 1e6 }),
    },
  };
  test.each([
    ['thirty times to either side', spec, 3, [1, 90]],
    ['no further than the field goes, at its upper end', spec, 50, [50 / 30, 100]],
    ['and at its lower end', spec, 2, [1, 60]],
    ['from zero to twice the point', { ...spec, scale: 'linear' as const }, 30, [1, 60]],
    ['no further than the field goes', { ...spec, scale: 'linear' as const }, 60, [1, 100]],
    ['as its sum has it', { ...spec, span: () => [5, 20] as const }, 10, [5, 20]],
    ['and on to a point beyond it', { ...spec, span: () => [5, 20] as const }, 40, [5, 40]],
    ['or before it', { ...spec, span: () => [5, 20] as const }, 2, [2, 20]],
  ])('goes %s', (_what, one, x, ends) => {
    expect(endsOf(plotted(one, x))).toEqual(ends.map((end) => Number(end.toPrecision(6))));
  });

  test('from a point at zero: to one, or as its sum has it where zero has no logarithm', () => {
    const at = (changed: Partial<PlotSpec>) =>
      plotted({ yScale: 'linear', ...changed }, 0, exact(3), wide);
    expect(endsOf(at({ scale: 'linear' }))).toEqual([0, 1]);
    expect(endsOf(at({ scale: 'log', span: () => [5, 20] }))).toEqual([5, 20]);
    expect(endsOf(at({ scale: 'linear', span: () => [5, 20] }))).toEqual([0, 20]);
    expect(at({ scale: 'log', span: () => [5, 20] })?.points).toEqual([]);
    expect(at({ scale: 'linear' })?.points).toEqual([{ x: 0, y: 0 }]);
  });

  test('is cut into sixty steps, of equal ratio or of equal length', () => {
    const log = axisOf(plotted({ span: () => [1, 64] }, 8));
    expect(log).toHaveLength(61);
    expect([log[10], log[30], log[50]]).toEqual([2, 8, 32]);
    const linear = axisOf(plotted({ scale: 'linear', span: () => [10, 70] }, 10));
    expect(linear).toHaveLength(61);
    expect([linear[1], linear[30]]).toEqual([11, 40]);
  });

  test('has the values and facts of the sum to go by', () => {
    const plot = plotted({
      span: ({ x, a }, own) => [Number(x) / Number(a), Number(x) * (own as typeof facts).shift],
    });
    expect(endsOf(plot)).toEqual([Number((10 / 3).toPrecision(6)), 20]);
  });
});

describe('a curve', () => {
  test('is worked out at each place, with what the ranges of the other fields make of it', () => {
    const plot = plotted({ y: ['y', 'z'], span: () => [10, 40] }, 20, { min: 2, typ: 3, max: 5 });
    expect(plot).toMatchObject({
      title: 'Line',
      x: { label: 'Along', unit: 'ohm', scale: 'log' },
      y: { label: 'Height', unit: 'V', scale: 'log' },
      limits: [],
    });
    expect(plot?.curves.map(({ label }) => label)).toEqual(['Height', 'Lower']);
    const middle = plot?.curves.map(({ points }) => points[30]);
    // At 20: 40, 60 and 100, and two less.
    expect(
      middle?.map((point) => [point?.y, point?.low, point?.high].map((y = NaN) => Math.round(y))),
    ).toEqual([
      [60, 40, 100],
      [58, 38, 98],
    ]);
    expect(plot?.points).toEqual([
      { x: 20, y: 60 },
      { x: 20, y: 58 },
    ]);
  });

  test('stands above zero on a logarithmic axis, with all of its width', () => {
    // 0.1 to 1 times x, less 2: above zero at its typical value from 4 on, all of it from 20 on.
    const a = { min: 0.1, typ: 0.5, max: 1 };
    const z: Partial<PlotSpec> = { y: ['z'], span: () => [1, 100] };
    const low = axisOf(plotted(z, 50, a))[0] ?? 0;
    expect(low).toBeGreaterThan(20);
    expect(low).toBeLessThan(20 * 100 ** (1 / 60) * 1.001);
    expect(axisOf(plotted({ ...z, yScale: 'linear' }, 50, a))[0]).toBe(1);
    // The point itself asks for no more than its typical value.
    expect(plotted(z, 10, a)?.points).toEqual([{ x: 10, y: 3 }]);
    expect(plotted(z, 4, a)?.points).toEqual([]);
    expect(plotted({ ...z, yScale: 'linear' }, 4, a)?.points).toEqual([{ x: 4, y: 0 }]);
  });

  test('that is nowhere defined is left out, and a plot without any is none', () => {
    expect(plotted({ y: ['y', 'never'] })?.curves.map(({ label }) => label)).toEqual(['Height']);
    expect(plotted({ y: ['y', 'never'] })?.points).toEqual([{ x: 10, y: 30 }]);
    expect(plotted({ y: ['never'] })).toBeUndefined();
    expect(plotted({}, 10, exact(-3))).toBeUndefined();
    // Of the sixty steps from 1 to 2.0001 one place alone lies above 2.
    expect(plotted({ y: ['z'], span: () => [1, 2.0001] }, 1.5, exact(1))).toBeUndefined();
  });

  test('over what is no number, or of what is no output, is none', () => {
    expect(plotted({ x: 'way' })).toBeUndefined();
    expect(plotted({ x: 'no-such' })).toBeUndefined();
    expect(plotted({ y: ['no-such'] })).toBeUndefined();
    expect(plotted({ y: [] })).toBeUndefined();
  });

  test('is held against limits that can be drawn, by values and facts', () => {
    const limits: PlotSpec['limits'] = ({ a }, own) => [
      { label: 'slope', value: Number(a) },
      { label: 'none', value: 0 },
      { label: 'beyond', value: Infinity },
      { label: 'shift', value: (own as typeof facts).shift },
    ];
    const drawn = (yScale: PlotSpec['yScale']) =>
      plotted({ limits, yScale })?.limits.map(({ label, value }) => [label, value]);
    expect(drawn('log')).toEqual([
      ['slope', 3],
      ['shift', 2],
    ]);
    expect(drawn('linear')).toEqual([
      ['slope', 3],
      ['none', 0],
      ['shift', 2],
    ]);
  });
});
