import { describe, expect, test } from 'vitest';
import {
  besideEachOther,
  equalisingResistor,
  parallelCapacitance,
  parallelTolerance,
  seriesCapacitance,
  seriesTolerance,
  standingShare,
  sumOf,
  worstShare,
} from '../../src/engine/equations/combinations.ts';
import { dissipation } from '../../src/engine/equations/heat.ts';
import { lossByResistor } from '../../src/engine/equations/loss.ts';
import { exactly } from '../../src/engine/quantities/range.ts';

const percent = (minus: number, plus = minus) => ({ minus: minus / 100, plus: plus / 100 });

describe('values of parts together', () => {
  test.each([
    ['two of 1 uF in parallel', parallelCapacitance([1e-6, 1e-6]), 2e-6, 'hand-worked'],
    ['22 nF beside 27 nF', parallelCapacitance([22e-9, 27e-9]), 49e-9, 'hand-worked'],
    [
      'two polar parts of 10 uF with like poles joined',
      seriesCapacitance([10e-6, 10e-6]),
      5e-6,
      'a maker of capacitors for crossovers: half the value of each; 10 uF twice makes 5 uF',
    ],
    ['10 uF and 40 uF in series', seriesCapacitance([10e-6, 40e-6]), 8e-6, 'hand-worked'],
  ])('%s', (_what, worked, answer) => {
    expect(worked / answer).toBeCloseTo(1, 9);
  });
});

describe('tolerances of parts together', () => {
  const of = (capacitance: number, minus: number, plus = minus) => ({
    capacitance,
    tolerance: percent(minus, plus),
  });

  test.each([
    ['two of 1 % in parallel', parallelTolerance([of(22e-9, 1), of(22e-9, 1)]), percent(1)],
    // (47 * 1 + 3 * 10) / 50 = 1.54
    ['47 of 1 % beside 3 of 10 %', parallelTolerance([of(47e-9, 1), of(3e-9, 10)]), percent(1.54)],
    ['two of 20 % in series', seriesTolerance([of(1e-5, 20), of(1e-5, 20)]), percent(20)],
    [
      'two of +50/-10 % in series',
      seriesTolerance([of(1e-5, 10, 50), of(1e-5, 10, 50)]),
      percent(10, 50),
    ],
    // 1.1 beside 2: 2.2 / 3.1 = 0.70968, marked 2/3: 6.45 % more; 0.9: 1.8 / 2.9 = 6.90 % less
    [
      '1 of 10 % in series with an exact 2',
      seriesTolerance([of(1, 10), of(2, 0)]),
      percent(6.897, 6.452),
    ],
  ])('%s', (_what, worked, answer) => {
    expect(worked.minus).toBeCloseTo(answer.minus, 4);
    expect(worked.plus).toBeCloseTo(answer.plus, 4);
  });
});

describe('voltage of two parts in series', () => {
  test.each([
    [
      'one 20 % high, the other 20 % low: 1.2 / (1.2 + 0.8)',
      worstShare(percent(20)),
      0.6,
      'application note of a maker of double-layer capacitors: the worst case of two of 1 F +-20 %',
    ],
    [
      'values within 5 % of each other: 1 / (1 + 0.95)',
      worstShare(percent(2.564)),
      0.5128,
      'technical notes of a maker of aluminium electrolytics: two that differ by 5 % need no resistors',
    ],
    ['two that are exact', worstShare(percent(0)), 0.5, 'by symmetry'],
    ['+50/-10 %: 1.5 / (1.5 + 0.9)', worstShare(percent(10, 50)), 0.625, 'hand-worked'],
    // (400 V + 100 kohm * 1 mA) / 800 V
    [
      '100 kohm and 1 mA of difference at 400 V',
      standingShare(400, 100e3, 1e-3),
      0.625,
      'hand-worked',
    ],
    ['no difference of leakage', standingShare(400, 100e3, 0), 0.5, 'by symmetry'],
    ['no resistor to speak of', standingShare(400, 1e9, 1e-3), 1, 'never more than all of it'],
  ])('%s', (_what, worked, answer) => {
    expect(worked).toBeCloseTo(answer, 4);
  });
});

describe('resistors across two parts in series', () => {
  test.each([
    [
      'R = WV / I, which is the case of a supply as high as the rating of one',
      equalisingResistor(450, 1, 1e-3),
      450e3,
      'technical notes of a maker of aluminium electrolytics',
    ],
    [
      '(2 * 450 V - 800 V) / (0.0015 * 1000 * 800 uA)',
      equalisingResistor(800, 450 / 800, 0.0015 * 1000 * 800e-6),
      83333,
      'rule of an application guide as remembered, worked by hand',
    ],
    ['0.2 * 432 V / 705 uA', equalisingResistor(432, 0.6, 705e-6), 122553, 'hand-worked'],
  ])('%s', (_what, worked, answer) => {
    expect(worked / answer).toBeCloseTo(1, 4);
  });

  test('none is needed where nothing leaks', () => {
    expect(equalisingResistor(400, 0.6, 0)).toBe(Infinity);
  });

  test('heat: 259.2 V squared over 120 kohm', () => {
    expect(dissipation(259.2, 120e3)).toBeCloseTo(0.5599, 4);
  });
});

describe('resistance and loss', () => {
  test('10 kohm beside 1 Mohm: 9.9 kohm, printed answer of a textbook', () => {
    expect(besideEachOther([exactly(10e3), exactly(1e6)]).typ).toBeCloseTo(9900, -1);
  });

  test('nothing beside anything is nothing', () => {
    expect(besideEachOther([exactly(0), exactly(1)])).toEqual(exactly(0));
  });

  test('in series they add', () => {
    expect(sumOf([exactly(0.3), exactly(0.5)]).typ).toBeCloseTo(0.8, 12);
  });

  test('1 ohm in series with 10 uF at 1 kHz adds 6.28 %, hand-worked', () => {
    expect(lossByResistor(1e3, 1, 10e-6)).toBeCloseTo(0.06283, 5);
  });
});
