import { describe, expect, test } from 'vitest';
import type { Made, OfferedPart, Part } from '../../../src/engine/assessment/parts.ts';
import type { Standing } from '../../../src/engine/assessment/trial.ts';
import type { Verdict } from '../../../src/engine/assessment/verdict.ts';
import { isWorthMaking } from '../../../src/engine/candidates/combinations.ts';
import { backToBack, inSeries, inParallel } from '../../../src/engine/candidates/combine.ts';
import { madeValues } from '../../../src/engine/candidates/made-values.ts';
import { nearestPairs } from '../../../src/engine/candidates/in-parallel.ts';
import { allowedSpan, singlesWithin } from '../../../src/engine/candidates/singles.ts';
import { withResistor, type Wanted } from '../../../src/engine/candidates/with-resistor.ts';
import type { OfferRow } from '../../../src/schemas/types.ts';
import { catalogue, given, known, notKnown } from '../assessment/setting.ts';
import { base, figuresIn, single, span } from '../findings/by-hand.ts';
import { PROBE, probeIn, type Spoiling } from '../findings/probe.ts';

/** Stand-ins that are made of two parts, or of one and a resistor, worked out by hand. */

const of = (more: Partial<OfferedPart>): OfferedPart => ({ ...single, ...more });
const madeOf = (part: Part | undefined): Made => {
  if (part?.made === undefined) throw new Error('made of nothing');
  return part.made;
};
const five = { minus: 0.05, plus: 0.05 };
const twenty = { minus: 0.2, plus: 0.2 };

describe('two in parallel', () => {
  const one = of({ capacitance: 47e-9, ratedVoltage: 100, tolerance: five, pitch: [5, 7.5, 10] });
  const other = of({ capacitance: 3e-9, ratedVoltage: 63, tolerance: five, pitch: [5, 10] });

  test('add up, and stand what the weaker does', () => {
    const whole = inParallel([one, other]);
    expect(whole.capacitance).toBeCloseTo(50e-9, 15);
    expect(whole).toMatchObject({
      ...{ type: PROBE, ratedVoltage: 63, voltageKind: 'dc', style: 'radial can', series: 'E6' },
      pitch: [5, 10],
    });
    expect(whole.tolerance.plus).toBeCloseTo(0.05, 9);
    expect(whole.made).toMatchObject({ kind: 'parallel', parts: [one, other] });
    expect(figuresIn(madeOf(whole).why)).toBe('47 nF, 3 nF, 50 nF, ±5 %');
  });

  test('of two styles have both, and no lead pitch in common', () => {
    const whole = inParallel([one, { ...other, style: 'axial' }]);
    expect(whole).toMatchObject({ style: 'radial can and axial', pitch: [] });
  });

  // 47 nF of −20 and +80 % beside 3 nF of ±5 %: −9.55 and +37.75 of 50.
  test('are off as much as both together', () => {
    const whole = inParallel([{ ...one, tolerance: { minus: 0.2, plus: 0.8 } }, other]);
    expect(whole.tolerance.minus).toBeCloseTo(0.191, 6);
    expect(whole.tolerance.plus).toBeCloseTo(0.755, 6);
    expect(figuresIn(madeOf(whole).why)).toBe('47 nF, 3 nF, 50 nF, +75.5 %/, −19.1 %');
  });
});

describe('two in series', () => {
  /** At ±20 % one takes 1.2 / 2 of the voltage: 30 of 50 V; both stand 50 V / 0.6. */
  const can = of({ capacitance: 1e-4, ratedVoltage: 50, tolerance: twenty });
  const inRow = (spoiling: Spoiling): OfferedPart[] =>
    inSeries(can, probeIn(base, spoiling).circumstances);
  /** A can of 100 µF leaks 30 V / (tau / 100 µF). */
  const leaking = (tau: number, vdc = 50): Spoiling => ({
    figures: { 'insulation-rc': known(tau), 'insulation-halving': known(10) },
    conditions: given({ vdc, 't-max': 25 }),
  });

  // 330 s: 9.09 µA; (2 × 0.6 − 1) × 50 V / 9.09 µA = 1.1 MΩ; 30² / 1 MΩ = 0.9 mW.
  test('have half the value, and a resistor that outdoes what one leaks', () => {
    const [whole] = inRow(leaking(330));
    expect(whole?.capacitance).toBeCloseTo(5e-5, 12);
    expect(whole?.ratedVoltage).toBeCloseTo(83.333, 3);
    expect(whole?.tolerance.minus).toBeCloseTo(0.2, 9);
    expect(whole?.made).toMatchObject({ kind: 'series', parts: [can, can] });
    expect(madeOf(whole).bleeder).toBeCloseTo(1e6, 0);
    expect(figuresIn(madeOf(whole).why)).toBe(
      '±20 %, 60 %, 83.3 V, 100 V, 1 MΩ, 50 V, 9.09 µA, 30 V, 900 µW',
    );
  });

  test.each<[string, Spoiling, number | undefined]>([
    // 900 kΩ, of which E12 has the next lower.
    ['the next lower resistor of E12', leaking(270), 820e3],
    // 10 µA and exactly 1 MΩ, which is of the series itself.
    ['the resistor of E12 that is needed', leaking(300), 1e6],
    ['no more than ten megohm', leaking(1e9), 10e6],
    // 181 Ω and the next lower, in which 30 V make 5 W.
    ['a resistor of five watts', leaking(0.0543), 180],
    ['no resistor without a direct voltage', leaking(300, 0), undefined],
  ])('have %s', (_what, spoiling, ohm) => {
    const [whole] = inRow(spoiling);
    expect(whole).toBeDefined();
    expect(madeOf(whole).bleeder === undefined).toBe(ohm === undefined);
    if (ohm !== undefined) expect((madeOf(whole).bleeder ?? NaN) / ohm).toBeCloseTo(1, 6);
  });

  test.each<[string, Spoiling]>([
    // 150 Ω: 6 W.
    ['the resistor would run too hot', leaking(0.0453)],
    [
      'nothing is known of what they leak',
      { ...leaking(1), figures: { 'insulation-rc': notKnown } },
    ],
  ])('are not put in series where %s', (_what, spoiling) => {
    expect(inRow(spoiling)).toEqual([]);
  });

  test('back to back have half the value and the rating of one', () => {
    const whole = backToBack(can);
    expect(whole.capacitance).toBeCloseTo(5e-5, 12);
    expect(whole.ratedVoltage).toBe(50);
    expect(whole.made).toMatchObject({ kind: 'back-to-back', parts: [can, can] });
    expect(figuresIn(madeOf(whole).why)).toBe('100 µF, 50 µF, 50 V');
  });
});

describe('a resistor in series', () => {
  /** 0.1 to 0.3 ohm of its own where 1 to 10 are wanted: 0.947 to 9.24 ohm of a resistor. */
  const own = span(0.1, 0.2, 0.3);
  const put = (wanted: Partial<Wanted>, current?: number): Made | undefined =>
    withResistor(base.catalogue, single, own, { low: 1, high: 10, ...wanted }, current)[0]?.made;

  test.each<[string, Partial<Wanted>, number]>([
    ['the middle of 1 to 8.2 ohm, of two the larger', {}, 3.3],
    ['2 ohm less 0.2 of its own', { best: 2 }, 1.8],
    ['nearest in ratio to 2.4 ohm', { best: 2.6 }, 2.2],
    ['the least that will do', { best: 0.3 }, 1],
    ['the most that will do', { best: 100 }, 8.2],
    ['the middle where the best is what it has', { best: 0.2 }, 3.3],
    // (1 − 0.1) / 0.95 is below 1 ohm; (1.35 − 0.3) / 1.05 just 1 ohm.
    ['the only one', { high: 1.3501 }, 1],
    ['(1.24 − 0.1) / 0.95 = 1.2 ohm at the least', { low: 1.2399, high: 2.5 }, 1.5],
  ])('%s', (_what, wanted, ohm) => {
    expect(put(wanted)?.resistor).toBeCloseTo(ohm, 9);
  });

  test.each<[string, Partial<Wanted>, number?]>([
    ['none lies between', { low: 1.25, high: 1.3 }],
    // 1.2 ohm less 5 % and 0.1 ohm of its own are 1.24 ohm.
    ['its tolerance leaves too little', { low: 1.25, high: 1.6 }],
    ['it has as much already', { low: 0.1 }],
    ['it has more already', { low: 0.05 }],
    // 5² × 3.3 W, twice over: more than 50 W.
    ['it would run too hot', {}, 5],
  ])('there is none where %s', (_what, wanted, current) => {
    expect(put(wanted, current)).toBeUndefined();
  });

  test.each<[string, Partial<Wanted>, number, number]>([
    // 0.5² × 3.3 = 0.825 W; 0.5² × 1 = 0.25 W; 2² × 3.3 = 13.2 W.
    ['0.825 W', {}, 0.5, 2],
    ['just a quarter of a watt', { best: 0.3 }, 0.5, 0.5],
    ['13.2 W', {}, 2, 50],
    ['next to nothing', {}, 1e-3, 0.25],
  ])('of %s is bought for twice as much', (_what, wanted, current, power) => {
    expect(put(wanted, current)?.power).toBe(power);
  });

  test('says what it comes to', () => {
    expect(figuresIn(put({})?.why ?? '')).toBe('3.3 Ω, 0.1–0.3 Ω, 3.4–3.6 Ω, 1 Ω, 10 Ω');
    expect(figuresIn(put({}, 0.5)?.why ?? '')).toBe(
      '3.3 Ω, 0.1–0.3 Ω, 3.4–3.6 Ω, 1 Ω, 10 Ω, 500 mA, 0.825 W, 2 W',
    );
    expect(put({})).not.toHaveProperty('power');
    expect(put({})).toMatchObject({ kind: 'with-resistor', parts: [single] });
  });
});

describe('values that are made', () => {
  const valueLists = [
    ...[1, 2, 3].map((value) => ({ list: 'of-motors', value })),
    { list: 'of-others', value: 2.5 },
  ].map((row) => ({
    ...row,
    ...{ source: 'trade', locator: '', basis: 'common-practice' as const, note: '' },
  }));

  test.each<[string, number, number, number[]]>([
    ['of-motors', 1, 3, [1, 2, 3]],
    ['of-motors', 1.1, 2.9, [2]],
    ['of-others', 1, 3, [2.5]],
    ['of-nobody', 1, 3, []],
    ['E6', 1, 4.7, [1, 1.5, 2.2, 3.3, 4.7]],
  ])('%s from %d to %d', (name, low, high, values) => {
    const found = madeValues({ valueLists }, name, low, high);
    expect(found.map((value) => Number(value.toPrecision(6)))).toEqual(values);
  });
});

describe('parts that may be joined', () => {
  const template = catalogue.offers[0];
  if (template === undefined) throw new Error('no offers');
  const offer = (more: Partial<OfferRow>): OfferRow => ({
    ...template,
    ...{ type: PROBE, style: 'radial can', series: 'E6', voltage_kind: 'dc' },
    ...{ c_min: 1e-6, c_max: 10e-6, voltages: [16, 25, 50], tolerances: ['20', '10', '5'] },
    ...more,
  });
  /** For 5 µF, 4 to 6 of which will do, at 20 V. */
  const place = (offers: OfferRow[], more: Spoiling = {}) =>
    probeIn(base, {
      tables: { offers, derating: [], categoryVoltages: [] },
      original: { capacitance: 5e-6 },
      position: { value_low: 0.8, value_high: 1.2 },
      conditions: given({ vdc: 20, vac: 0, 'v-surge': 0 }),
      ...more,
    }).circumstances;
  const micro = ({ capacitance }: Part): number => Number((capacitance * 1e6).toPrecision(6));

  test('have the span that the position allows', () => {
    const [low, high] = allowedSpan(place([]));
    expect(low * 1e6).toBeCloseTo(4, 4);
    expect(high * 1e6).toBeCloseTo(6, 4);
  });

  test.each<[string, Partial<OfferRow>, [number, number], string[]]>([
    [
      'of each value the usual and the closest tolerance, of the lowest rating that serves',
      {},
      [2e-6, 4e-6],
      ['2.2 25 0.2', '2.2 25 0.05', '3.3 25 0.2', '3.3 25 0.05'],
    ],
    [
      'the closest tolerance wherever it stands among them',
      { tolerances: ['20', '5', '10'] },
      [2e-6, 3e-6],
      ['2.2 25 0.2', '2.2 25 0.05'],
    ],
    [
      'to the ends of the span',
      { tolerances: ['5'] },
      [2.2e-6, 3.3e-6],
      ['2.2 25 0.05', '3.3 25 0.05'],
    ],
    [
      'to the ends of the offer',
      { tolerances: ['5'], c_min: 2.2e-6, c_max: 3.3e-6 },
      [1e-6, 1e-5],
      ['2.2 25 0.05', '3.3 25 0.05'],
    ],
    ['none of an offer below', { c_max: 1.5e-6 }, [2e-6, 4e-6], []],
    ['none of an offer above', { c_min: 4.7e-6 }, [2e-6, 4e-6], []],
    ['none of a rating too low', { voltages: [6, 16] }, [2e-6, 4e-6], []],
    [
      'one that is rated just so',
      { voltages: [20], tolerances: ['5'] },
      [2e-6, 3e-6],
      ['2.2 20 0.05'],
    ],
  ])('%s', (_what, more, wanted, found) => {
    const parts = singlesWithin(PROBE, wanted, place([offer(more)]));
    expect(
      parts.map((part) => [micro(part), part.ratedVoltage, part.tolerance.plus].join(' ')),
    ).toEqual(found);
  });

  test('stand no more than their share of the voltage', () => {
    const parts = singlesWithin(PROBE, [2e-6, 3e-6], place([offer({})]), ({ plus }) =>
      plus > 0.1 ? 0.9 : 0.6,
    );
    expect(parts.map(({ ratedVoltage }) => ratedVoltage)).toEqual([25, 16]);
  });

  test.each<[string, OfferRow[], Spoiling, string[]]>([
    // 4.8, 5.5, then 4.4 and 5.7 µF for 5 µF.
    ['the two that come nearest', [offer({ tolerances: ['5'] })], {}, ['3.3 + 1.5', '3.3 + 2.2']],
    [
      'the two of each tolerance, the usual first',
      [offer({ tolerances: ['20', '5'] })],
      {},
      ['3.3 + 1.5', '3.3 + 2.2', '3.3 + 1.5', '3.3 + 2.2'],
    ],
    [
      'none beyond what is allowed: 5.5 µF are ten percent too many',
      [offer({ tolerances: ['5'] })],
      { position: { value_low: 0.8, value_high: 1.09 } },
      ['3.3 + 1.5', '2.2 + 2.2'],
    ],
    [
      'none below: 4.8 µF are four percent too few',
      [offer({ tolerances: ['5'] })],
      { position: { value_low: 0.97, value_high: 1.2 } },
      ['3.3 + 2.2', '4.7 + 1'],
    ],
    // 3.3 + 3.3 and 4.7 + 1.5 µF for 6.4 µF are 3.1 % off each; 4.7 + 2.2 are 7.8 %.
    [
      'two alike before two that differ, if as near',
      [offer({ tolerances: ['5'] })],
      { original: { capacitance: 6.4e-6 } },
      ['3.3 + 3.3', '4.7 + 1.5'],
    ],
    [
      'of each value the lowest rating',
      [offer({ voltages: [50], tolerances: ['5'] }), offer({ voltages: [25], tolerances: ['5'] })],
      {},
      ['3.3 + 1.5', '3.3 + 2.2'],
    ],
    [
      'none of a direct and an alternating rating',
      [
        offer({ tolerances: ['5'], c_min: 3.3e-6, c_max: 3.3e-6 }),
        offer({ tolerances: ['5'], c_min: 1.5e-6, c_max: 1.5e-6, voltage_kind: 'ac' }),
      ],
      {},
      [],
    ],
  ])('pairs: %s', (_what, offers, more, found) => {
    const pairs = nearestPairs(PROBE, place(offers, more), 2);
    expect(pairs.map((pair) => pair.map(micro).join(' + '))).toEqual(found);
    for (const part of pairs.flat()) expect(part.ratedVoltage).toBe(25);
  });
});

describe('what is worth making', () => {
  const standing = (verdict: Verdict, kind?: Made['kind'], mild = 0): Standing => ({
    part: { ...single, ...(kind === undefined ? {} : { made: { kind, parts: [], why: '' } }) },
    verdict,
    short: [0, 0, mild],
    missesHeavy: false,
  });

  test.each<[string, Standing, Standing, boolean]>([
    ['two for a better verdict', standing('fits', 'parallel'), standing('fits-if'), true],
    [
      'two for the same verdict',
      standing('fits-if', 'parallel'),
      standing('fits-if', undefined, 1),
      false,
    ],
    [
      'a resistor for falling less short',
      standing('fits-if', 'with-resistor'),
      standing('fits-if', undefined, 1),
      true,
    ],
    [
      'a resistor for nothing',
      standing('fits-if', 'with-resistor', 1),
      standing('fits-if', undefined, 1),
      false,
    ],
    [
      'a resistor for a worse verdict',
      standing('fits-if', 'with-resistor'),
      standing('fits', undefined, 1),
      false,
    ],
    ['two for a stopgap', standing('stopgap', 'parallel'), standing('keep-out'), false],
    [
      'a single part for the same verdict',
      standing('fits-if'),
      standing('fits-if', undefined, 1),
      false,
    ],
  ])('%s: %#', (_what, next, best, worth) => {
    expect(isWorthMaking(next, best)).toBe(worth);
  });
});
