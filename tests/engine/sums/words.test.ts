import { describe, expect, test } from 'vitest';
import { picturesOf, rowsOf, sumOf, tablesOf, valuesOf, type Texts } from './asked.ts';

test('decoupling: where one part is best, 1/(2π√(1 nH × 100 nF)) with its resistance left', () => {
  const asked = { parts: 'one', c1: '100 nF', l1: '1 nH', r1: '50 mΩ' };
  const [row, ...more] = rowsOf('decoupling', asked);
  expect(more).toEqual([]);
  expect(row?.[0]).toBe('lowest');
  expect(row?.[1]).toMatch(/^159[12]\d{4} Hz$/);
  expect(row?.[2]).toBe('0.05 ohm');
});

describe('a value put together', () => {
  const asked = { value: '50 nF', series: 'E12', most: '2', within: '1 %' };

  test('the best ways of each number of parts, with how far each is off', () => {
    const rows = rowsOf('combine-capacitors', asked);
    // 47 nF alone is 6 % too little; 100 nF twice in series is 50 nF.
    expect(rows).toContainEqual(['47 nF', 'alone', '4.7e-8 F', '-0.06 fraction']);
    expect(rows).toContainEqual(['100 nF and 100 nF', 'in series', '5e-8 F', '0 fraction']);
    // 47 nF and 3.3 nF are 50.3 nF.
    expect(rows).toContainEqual(['47 nF and 3.3 nF', 'in parallel', '5.03e-8 F', '0.006 fraction']);
    expect(tablesOf('combine-capacitors', asked)[0]?.caption).toMatch(/50\snF/u);
    // One part is the nearest there is; of two the four best are listed, the closest first.
    expect(rows.map(([parts = '']) => parts.split(' and ').length)).toEqual([1, 2, 2, 2, 2]);
    expect(rows[1]?.[0]).toBe('100 nF and 100 nF');
  });

  test('is said in words, the fewest parts that are close enough or else the closest', () => {
    const sum = sumOf('combine-capacitors');
    const say = (texts: Texts) =>
      sum
        .answer?.(valuesOf(sum, undefined, { ...asked, ...texts }), undefined)
        .replaceAll(/\s/gu, ' ');
    expect(say({})).toMatch(/^100 nF and 100 nF in series: 50 nF, off by 0/);
    expect(say({ within: '6.1 %' })).toMatch(/^47 nF alone: 47 nF, off by .6/u);
    expect(say({ most: '1', within: '0' })).toMatch(/^47 nF alone/);
    expect(say({ series: 'E3', most: '1' })).toMatch(/^47 nF alone/);
    expect(say({ value: '10 nF' })).toMatch(/^10 nF alone: 10 nF/);
  });

  test('counts the parts where they are close enough, and notes where none are', () => {
    const sum = sumOf('combine-resistors');
    const of = (texts: Texts) => {
      const values = valuesOf(sum, undefined, texts);
      const outputs = sum.at(values, undefined);
      const kinds = sum.notes?.(values, outputs, undefined).map(({ kind }) => kind);
      return { parts: outputs['parts'], kinds };
    };
    const e12 = { value: '25k', series: 'E12' };
    // 22 kΩ alone is 12 % off, 22 kΩ and 2.7 kΩ in series 1.2 %; 47 kΩ and 56 kΩ in parallel are
    // 25.55 kΩ; 10 kΩ and 15 kΩ in series are just 25 kΩ.
    expect(of({ ...e12, most: '2', within: '1 %' })).toEqual({ parts: 2, kinds: ['limit'] });
    expect(of({ ...e12, most: '1', within: '13 %' })).toEqual({ parts: 1, kinds: ['limit'] });
    expect(of({ ...e12, most: '1', within: '1 %' })).toEqual({
      parts: undefined,
      kinds: ['limit', 'limit'],
    });
    expect(of({ ...e12, most: '2', within: '0.9 %' })).toEqual({
      parts: 2,
      kinds: ['remark', 'limit'],
    });
  });

  test('is drawn by the largest part, one and two parts apart, the best way ringed', () => {
    const [plot] = picturesOf('combine-capacitors', asked);
    expect(plot?.curves.map(({ label, as }) => [label, as])).toEqual([
      ['one part', 'dots'],
      ['2 parts', 'dots'],
    ]);
    expect(plot?.curves[0]?.points).toContainEqual({
      x: 4.7e-8,
      y: expect.closeTo(-0.06, 9) as number,
      low: expect.closeTo(-0.06, 9) as number,
      high: expect.closeTo(-0.06, 9) as number,
    });
    expect(plot?.points).toMatchObject([{ x: 1e-7, y: expect.closeTo(0, 9) as number }]);
    expect(plot?.limits.map(({ value }) => value)).toEqual([0.01, -0.01]);
    expect(plot?.curves[0]?.points).toHaveLength(1);
    expect(plot?.curves[1]?.points.length).toBeGreaterThan(4);
  });
});

describe('the equations that hold', () => {
  const equationsFor = (id: string, texts: Texts): string[] => {
    const sum = sumOf(id);
    return [...(sum.equationsFor?.(valuesOf(sum, undefined, texts)) ?? [])];
  };

  test.each([
    ['the edge as given', 'pulse-edge', {}, ['s_e = s'], ['s_e = dV/dt', 't_s = dV/s_R']],
    ['a step without its time', 'pulse-edge', { swing: '9' }, ['s_e = s', 't_s = dV/s_R'], []],
    ['a time without its step', 'pulse-edge', { time: '1 µs' }, ['s_e = s'], ['t_s = dV/s_R']],
    [
      'both',
      'pulse-edge',
      { swing: '9', time: '1 µs' },
      ['s_e = dV/dt', 't_s = dV/s_R'],
      ['s_e = s'],
    ],
    ['a pulse that comes once', 'resistor-pulse', {}, [], ['n = W/W_a', 'n = W_c/W_a']],
    ['once, with a limit', 'resistor-pulse', { most: '1 J' }, ['n = W/W_a'], ['n = W_c/W_a']],
    ['again, with one', 'resistor-pulse', { most: '1 J', f: '1' }, ['n = W_c/W_a'], ['n = W/W_a']],
    ['one part', 'decoupling', { parts: 'one' }, ['Z = Z_1'], []],
  ] as [string, string, Texts, string[], string[]][])('%s', (_what, id, texts, some, none) => {
    const equations = equationsFor(id, texts);
    expect(equations).toEqual(expect.arrayContaining(some));
    for (const one of none) expect(equations).not.toContain(one);
  });

  test('each part of several has its own, and all of them one together', () => {
    const named = (parts: string) =>
      equationsFor('decoupling', { parts }).map((one) => one.split(' = ')[0]);
    const each = (number: number) => [`f_${number}`, `X_${number}`, `Z_${number}`];
    expect(named('one')).toEqual([...each(1), 'Z']);
    expect(named('two')).toEqual([...each(1), ...each(2), 'Z']);
    expect(named('three')).toEqual([...each(1), ...each(2), ...each(3), 'Z']);
  });
});

test.each([
  ['inside', { esr: '40 mΩ', added: '1', low: '0.1', high: '5' }, /in the window/],
  ['at its ends', { esr: '0.1', added: '0', low: '0.1', high: '0.1' }, /in the window/],
  ['below', { esr: '40 mΩ', added: '0', low: '0.1', high: '5' }, /too little/i],
  ['above', { esr: '40 mΩ', added: '5', low: '0.1', high: '5' }, /too much/i],
  ['a window of none', { esr: '40 mΩ', added: '0', low: '6', high: '5' }, /ends below/],
] as [string, Texts, RegExp][])('a window of series resistance: %s', (_what, texts, said) => {
  const sum = sumOf('resistance-window');
  expect(sum.answer?.(valuesOf(sum, undefined, texts), undefined)).toMatch(said);
});
