import { describe, expect, test } from 'vitest';
import { assess, type Assessment, type Finding } from '../../../src/engine/index.ts';
import { singleParts } from '../../../src/engine/assessment/made.ts';
import type { OfferedPart } from '../../../src/engine/assessment/parts.ts';
import { inParallel } from '../../../src/engine/candidates/combine.ts';
import { rippleCurrent } from '../../../src/engine/findings/ripple-current.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, given } from '../assessment/setting.ts';
import { findingOf, workingOf } from '../assessment/finding-of.ts';

const original = {
  type: 'al-electrolytic-wet',
  capacitance: exactly(2200e-6),
  ratedVoltage: exactly(25),
};

/** A reservoir with 1 A of ripple at 55 °C unless said otherwise. */
const reservoir = (
  type: string,
  capacitance: number,
  conditions: Record<string, number> = {},
  ratedVoltage = 25,
): Assessment =>
  assess(
    catalogue,
    {
      original,
      position: 'reservoir',
      conditions: given({ 'ripple-current': 1, 't-max': 55, 'f-work': 100, ...conditions }),
    },
    { type, capacitance, ratedVoltage },
  );

const ripple = (one: Assessment): Finding => findingOf(one, 'ripple-current');
const working = (one: Assessment): string => workingOf(one, 'ripple-current');

describe('ripple current against the rating', () => {
  test('a listed one is brought to the frequency and temperature of the position', () => {
    expect(working(reservoir('al-electrolytic-low-esr', 1000e-6))).toBe(
      '1 A / (1.66 A listed at 100 kHz and 105 °C × 0.63 at 100 Hz × 2.1 at 55 °C) = 45.5 %; ' +
        'what the cool allows more costs life',
    );
  });

  test('a part listed for the mains is not helped by its frequency', () => {
    const general = reservoir('al-electrolytic-wet', 1000e-6, { 't-max': 85 }, 10);
    expect(working(general)).toBe(
      '1 A / (650 mA listed at 100 Hz and 85 °C × 1 at 100 Hz × 1 at 85 °C) = 154 %',
    );
    expect(ripple(general).verdict).toBe('stopgap');
  });

  test('a part for 100 kHz may be the weaker one at the mains', () => {
    const [mains, switcher] = [100, 1e5].map(
      (hertz) =>
        ripple(reservoir('al-electrolytic-low-esr', 1000e-6, { 'f-work': hertz })).standIn?.typ,
    );
    expect((mains ?? 0) / (switcher ?? 0)).toBeCloseTo(1 / 0.63, 6);
  });

  test('without factors for frequency a solid part takes what heats it as much', () => {
    const solid = reservoir('ta-mno2-solid', 10e-6, { 'ripple-current': 0.1 });
    expect(working(solid)).toMatch(
      /^100 mA \/ \([\d.]+ mA listed at 100 kHz and 25 °C × 0\.\d+ at 100 Hz × 0\.95 at 55 °C\)/,
    );
  });

  test('what no row covers is estimated by heat, and says so', () => {
    const { working, standIn, sure } = ripple(reservoir('al-electrolytic-wet', 2200e-6));
    expect(working).toContain('not listed; what warms its body by 10');
    expect(standIn?.min).toBeLessThan(standIn?.max ?? 0);
    expect(sure).not.toBe('sure');
  });

  test('an estimate warms no part past its highest temperature', () => {
    const at = (celsius: number): string =>
      working(reservoir('al-electrolytic-bipolar', 47e-6, { 't-max': celsius }));
    const highest = catalogue.knowledge['al-electrolytic-bipolar']?.['temperature-max'];
    if (highest?.status !== 'known') throw new Error('no highest temperature');
    expect(at(highest.range.typ - 5)).toContain('warms its body by 5 K');
    expect(at(highest.range.typ - 1)).toContain('warms its body by 1 K');
  });

  test('twice the current is twice the share', () => {
    const [one, two] = [1, 2].map(
      (ampere) =>
        ripple(reservoir('al-electrolytic-wet', 2200e-6, { 'ripple-current': ampere })).standIn,
    );
    expect(two?.typ).toBeCloseTo(2 * (one?.typ ?? 0), 9);
    expect(two?.max).toBeCloseTo(2 * (one?.max ?? 0), 9);
  });
});

describe('two parts share the current', () => {
  const circumstances = circumstancesOf({
    original,
    position: 'reservoir',
    conditions: given({ 'ripple-current': 1, 't-max': 55, 'f-work': 100 }),
  });
  const offered = (capacitance: number): OfferedPart => ({
    type: 'al-electrolytic-low-esr',
    capacitance,
    tolerance: { minus: 0.2, plus: 0.2 },
    ratedVoltage: 25,
    voltageKind: 'dc',
    style: 'radial can',
    pitch: [5],
    series: 'E6',
  });
  const ratio = (part: OfferedPart): number => {
    const outcome = rippleCurrent.measure(part, circumstances);
    return outcome.status === 'known' ? outcome.value.typ : NaN;
  };

  test('two alike carry half of it each', () => {
    expect(ratio(inParallel([offered(1e-3), offered(1e-3)]))).toBeCloseTo(
      ratio(offered(1e-3)) / 2,
      9,
    );
  });

  test('of two that differ the one that is loaded most counts, and is named', () => {
    const pair = inParallel([offered(1e-3), offered(4.7e-4)]);
    const shares = singleParts(pair).map((one) => one.capacitance / pair.capacitance);
    const loads = [1e-3, 4.7e-4].map(
      (farad, index) => ratio(offered(farad)) * (shares[index] ?? 0),
    );
    expect(ratio(pair)).toBeCloseTo(Math.max(...loads), 9);
    const working = rippleCurrent.working(pair, circumstances, exactly(ratio(pair)));
    expect(working).toMatch(/through the 470|through the 1/);
  });
});
