import { describe, expect, test } from 'vitest';
import { plotOf } from '../../../src/engine/sums/curves.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { catalogue, sumOf, valuesOf, type Texts } from './asked.ts';

/** Equations and curves of sums by what is chosen, as they are read off by hand. */

describe('equations by the way that is chosen', () => {
  const equations = (id: string, texts: Texts) =>
    sumOf(id).equationsFor?.(valuesOf(sumOf(id), undefined, texts)) ?? [];
  test.each([
    ['reservoir', { way: 'bridge' }, 'I_w = I/k_w', 'V_r = min(V_p, I / (2*f*C))'],
    ['reservoir', { way: 'tapped' }, 'I_w = I/k_w', 'V_r = min(V_p, I / (2*f*C))'],
    ['reservoir', { way: 'half' }, 'I_w = I/k_w', 'V_r = min(V_p, I / (f*C))'],
    ['crossover', { order: 'first' }, 'C_0 = 1/(2*pi*f*R)', 'L_0 = R/(2*pi*f)'],
    [
      'crossover',
      { order: 'second-butterworth' },
      'C_0 = 1/(2*pi*f*R*sqrt(2))',
      'L_0 = sqrt(2)*R/(2*pi*f)',
    ],
    ['crossover', { order: 'second-linkwitz' }, 'C_0 = 1/(4*pi*f*R)', 'L_0 = R/(pi*f)'],
    [
      'second-order-filter',
      { kind: 'low' },
      'Q = sqrt(R_1*R_2*C_1*C_2) / (C_2*(R_1 + R_2))',
      'f_0 = 1 / (2*pi*sqrt(R_1*R_2*C_1*C_2))',
    ],
    [
      'second-order-filter',
      { kind: 'high' },
      'Q = sqrt(R_1*R_2*C_1*C_2) / (R_1*(C_1 + C_2))',
      'f_0 = 1 / (2*pi*sqrt(R_1*R_2*C_1*C_2))',
    ],
  ] as [string, Texts, string, string][])('%s, %o', (id, texts, first, second) => {
    expect(equations(id, texts)).toEqual(expect.arrayContaining([first, second]));
    const names = equations(id, texts).map((one) => one.split(' = ')[0]);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('what a curve is held against, and how far it goes', () => {
  const plotted = (id: string, texts: Texts, at = 0) => {
    const sum = sumOf(id);
    const facts: unknown = sum.facts?.(catalogue);
    const spec = sum.plots[at];
    if (spec === undefined) throw new Error(`${id} has no such plot`);
    return plotOf(sum, spec, readInputs(sum, facts, texts).given, facts);
  };
  const limitsOf = (...asked: Parameters<typeof plotted>): number[] =>
    plotted(...asked)?.limits.map(({ value }) => Number(value.toPrecision(4))) ?? [];
  const pointOf = (...asked: Parameters<typeof plotted>) => plotted(...asked)?.points[0];
  const endsOf = (...asked: Parameters<typeof plotted>) => {
    const points = plotted(...asked)?.curves[0]?.points ?? [];
    return [points[0]?.x, points.at(-1)?.x].map((x = NaN) => Number(x.toPrecision(4)));
  };

  test.each([
    ['10 nF at 75 V/µs are 0.75 A', 'pulse-edge', { c: '10 nF', rating: '75 V/µs' }, [0.75]],
    ['the energy of the sheet', 'resistor-pulse', { most: '2 J' }, [2]],
    ['ten kelvin of self-heating', 'ripple-heating', {}, [10]],
    [
      'a step and its time, as an edge',
      'pulse-edge',
      { swing: '300 V', time: '3 µs', c: '10 nF', rating: '75 V/µs' },
      [0.75],
    ],
    ['none where the sheet says none', 'resistor-pulse', {}, []],
    ['the limit of the regulator', 'regulator-dump', {}, [1]],
    ['half the power is 3.01 dB less', 'coupling-corner', {}, [-3.01]],
    ['the limit that stands beside it', 'touch-current', { limit: '0.5 mA' }, [5e-4]],
    ['the rating of either', 'series-pair', { rating: '450' }, [450]],
    ['both ends of the window', 'resistance-window', { low: '0.2', high: '3' }, [0.2, 3]],
  ] as [string, string, Texts, number[]][])('%s', (_what, id, texts, limits) => {
    expect(limitsOf(id, texts)).toEqual(limits);
  });

  test('an edge that a step and its time make has its place on the curve', () => {
    // 300 V in 3 µs are 100 V/µs, which drive 1 A through 10 nF.
    const asked = { swing: '300 V', time: '3 µs', c: '10 nF', rating: '75 V/µs' };
    const { x = NaN, y = NaN } = pointOf('pulse-edge', asked) ?? {};
    expect(x).toBeCloseTo(100e6, -2);
    expect(y).toBeCloseTo(1, 9);
    const points = plotted('pulse-edge', asked)?.curves[0]?.points ?? [];
    // 75/30 and 100 times 30 V/µs.
    expect(points[0]?.y).toBeCloseTo(0.025, 9);
    expect(points.at(-1)?.y).toBeCloseTo(30, 6);
  });

  test.each([
    [
      'a thirtieth and thirty times',
      'pulse-edge',
      { edge: '20 V/µs', rating: '75 V/µs' },
      [20e6 / 30, 75e6 * 30],
    ],
    [
      'a steeper edge than it stands',
      'pulse-edge',
      { edge: '150 V/µs', rating: '75 V/µs' },
      [75e6 / 30, 150e6 * 30],
    ],
    // 1.2 times what may be added, twice what is, twice what must be.
    [
      'what may be added',
      'resistance-window',
      { esr: '1', added: '0', low: '0.1', high: '6' },
      [0, 6],
    ],
    ['what is', 'resistance-window', { esr: '1', added: '5', low: '0.1', high: '6' }, [0, 10]],
    ['what must be', 'resistance-window', { esr: '1', added: '0', low: '9', high: '6' }, [0, 18]],
  ] as [string, string, Texts, number[]][])('%s', (_what, id, texts, ends) => {
    expect(endsOf(id, texts)).toEqual(ends.map((end) => Number(end.toPrecision(4))));
  });
});

test.each([
  ['two-together', { a: '300 nF', b: '100 nF' }, 'In parallel 400 nF, in series 75 nF.'],
  ['regulator-dump', { c: '25 µF', limit: '25 µF' }, /^No reverse diode/],
  ['regulator-dump', { c: '26 µF', limit: '25 µF' }, /^A reverse diode is needed/],
] as [string, Texts, string | RegExp][])('%s says so in words: %o', (id, texts, said) => {
  const words = sumOf(id).answer?.(valuesOf(sumOf(id), undefined, texts), undefined);
  expect(words?.replaceAll(/\s/gu, ' ')).toMatch(said);
});
