import { describe, expect, test } from 'vitest';
import {
  addedResistance,
  altogether,
  currentShare,
  inThePath,
  keepsItsSign,
  leakageOfWhole,
  singleParts,
  timesTheVoltage,
} from '../../../src/engine/assessment/made.ts';
import type { Made, OfferedPart, Part } from '../../../src/engine/assessment/parts.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';

/** What two parts come to as one: Kirchhoff's laws, by hand. */

const of = (capacitance: number, ratedVoltage = 50): OfferedPart => ({
  type: 'pet-metallized',
  capacitance,
  tolerance: { minus: 0, plus: 0 },
  ratedVoltage,
  voltageKind: 'dc',
  style: 'radial box',
  pitch: [],
  series: 'E6',
});
const [one, two] = [of(1e-6), of(2e-6)];

const whole = (kind: Made['kind'], parts: OfferedPart[], more: Partial<Made> = {}): Part => ({
  ...of(
    parts.reduce((sum, { capacitance }) => sum + capacitance, 0),
    100,
  ),
  made: { kind, parts, why: '', ...more },
});
const KINDS = ['parallel', 'series', 'back-to-back', 'with-resistor'] as const;

/** 3 units of the part of 1 µF, 6 of that of 2 µF. */
const three = ({ capacitance }: Part): Range => exactly(3e6 * capacitance);
/** Known of the part of 1 µF alone. */
const half = (part: Part): Range | undefined => (part === one ? three(part) : undefined);

describe('what lies in the path of the current', () => {
  test.each<[Made['kind'], number]>([
    // 1 / (1/3 + 1/6).
    ['parallel', 2],
    ['series', 9],
    ['back-to-back', 9],
  ])('%s: of 3 and 6 it is %d', (kind, wanted) => {
    expect(inThePath(whole(kind, [one, two]), three)?.typ).toBeCloseTo(wanted, 9);
  });

  test('is that of a single part, and of the one that has a resistor', () => {
    expect(inThePath(one, three)).toEqual(exactly(3));
    expect(inThePath(whole('with-resistor', [two]), three)).toEqual(exactly(6));
  });

  test('is not known where it is not of one of them, whichever', () => {
    for (const kind of KINDS) {
      expect(inThePath(whole(kind, [one, two]), half)).toBeUndefined();
      expect(inThePath(whole(kind, [two, one]), half)).toBeUndefined();
      expect(altogether(whole(kind, [one, two]), half)).toBeUndefined();
      expect(altogether(whole(kind, [two, one]), half)).toBeUndefined();
    }
  });

  test('adds up whichever way for what does, such as bodies', () => {
    for (const kind of KINDS) expect(altogether(whole(kind, [one, two]), three)?.typ).toBe(9);
    expect(altogether(two, three)).toEqual(exactly(6));
  });
});

describe('leakage at 10 V', () => {
  /** Each lets a microampere a volt and microfarad pass. */
  const leak = ({ capacitance }: Part, volt: number): Range => exactly(capacitance * volt);

  test.each<[string, Part, number]>([
    ['10 µA through one', one, 10e-6],
    ['30 µA through both in parallel', whole('parallel', [one, two]), 30e-6],
    ['5 µA through two in series, half the voltage each', whole('series', [one, one]), 5e-6],
    // 10 V over 2 × 1 MΩ.
    [
      'and 5 µA more through the resistors across them',
      whole('series', [one, one], { bleeder: 1e6 }),
      10e-6,
    ],
    ['10 µA through the one of two that stands it all', whole('back-to-back', [one, one]), 10e-6],
    ['20 µA with a resistor in front', whole('with-resistor', [two], { resistor: 1 }), 20e-6],
  ])('%s', (_what, part, ampere) => {
    expect(leakageOfWhole(part, 10, leak)?.typ).toBeCloseTo(ampere, 12);
  });

  test('is not known where it is not of the parts', () => {
    const unknown = (): undefined => undefined;
    for (const kind of KINDS) {
      const part = whole(kind, [one, one], { bleeder: 1e6 });
      expect(leakageOfWhole(part, 10, unknown)).toBeUndefined();
    }
  });
});

describe('how current and voltage share themselves out', () => {
  test.each<[Made['kind'], number]>([
    ['parallel', 1 / 3],
    ['series', 1],
    ['back-to-back', 1],
  ])('%s: the smaller has %d of the current', (kind, share) => {
    expect(currentShare(whole(kind, [one, two]), one)).toBeCloseTo(share, 9);
  });

  test('a single part has all of it', () => {
    expect(currentShare(one, one)).toBe(1);
  });

  test.each<[Made['kind'], number]>([
    // 100 V of parts of 50 V.
    ['series', 2],
    ['parallel', 1],
    ['back-to-back', 1],
    ['with-resistor', 1],
  ])('%s: the whole stands %d times the voltage', (kind, times) => {
    expect(timesTheVoltage(whole(kind, [one, one]))).toBe(times);
  });
});

test('what one buys is the part, or its parts', () => {
  expect(singleParts(one)).toEqual([one]);
  expect(singleParts(whole('parallel', [one, two]))).toEqual([one, two]);
  expect(addedResistance(one)).toBe(0);
  expect(addedResistance(whole('with-resistor', [one], { resistor: 4.7 }))).toBe(4.7);
});

test.each<[string | undefined, Part, boolean]>([
  ['polar', one, true],
  ['polar', whole('series', [one, one]), true],
  ['polar', whole('back-to-back', [one, one]), false],
  ['non-polar', one, false],
  ['unknown', one, false],
  [undefined, one, false],
])('a part that is %s minds its sign: case %#', (polarity, part, minds) => {
  expect(keepsItsSign(part, polarity)).toBe(minds);
});
