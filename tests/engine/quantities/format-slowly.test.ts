import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figuresOf } from '../../../src/engine/quantities/figures.ts';
import {
  formatQuantity,
  formatValue,
  UNITS,
  type Range,
  type Unit,
} from '../../../src/engine/quantities/index.ts';
import type { PrintScale } from '../../../src/engine/quantities/unit.ts';
import { UNIT_FACTS } from '../../../src/engine/quantities/unit-facts.ts';

/**
 * The same printing without a thought for time: digits as they are written, rounded as whole
 * numbers of any length, each unit tried in turn. What it prints is held against the engine's.
 */
interface Digits {
  whole: bigint;
  power: number;
}

const asWritten = (size: number): Digits => {
  const [mantissa = '', exponent = ''] = size.toExponential().split('e');
  const [before = '', after = ''] = mantissa.split('.');
  return { whole: BigInt(before + after), power: Number(exponent) - after.length };
};

/** @param room how far below a half counts as one, in ten-thousandths of the last digit */
const halfUp = ({ whole, power }: Digits, digits: number, room = 0n): Digits => {
  const left = Math.max(0, String(whole).length - digits);
  const unit = 10n ** BigInt(left);
  return {
    whole: (10_000n * whole + (5000n + room) * unit) / (10_000n * unit),
    power: power + left,
  };
};

const valueOf = ({ whole, power }: Digits): number => Number(`${String(whole)}e${String(power)}`);

/** The error of one multiplication in a number of twelve digits, in ten-thousandths of the last. */
const OF_ONE_MULTIPLICATION = 5n;

/** Noise of arithmetic goes first, which begins behind the twelfth digit. */
const rounded = (size: number, digits: number): number =>
  valueOf(halfUp(halfUp(asWritten(size), 12, OF_ONE_MULTIPLICATION), digits));

const inUnit = (size: number, { power, factor = 1 }: PrintScale, digits: number): number => {
  const { whole, power: old } = asWritten(size / factor);
  return rounded(valueOf({ whole, power: old - power }), digits);
};

const unitFor = (size: number, unit: Unit, digits: number): PrintScale => {
  const [first, ...larger] = UNIT_FACTS[unit].print as [PrintScale, ...PrintScale[]];
  return larger.reduce((scale, next) => {
    const { whole, power } = asWritten(inUnit(size, scale, digits));
    const printed = valueOf({ whole, power: power + scale.power }) * (scale.factor ?? 1);
    // A size that reaches the border counts, even where few digits round it below: 120 s is 2 min.
    return Math.max(printed, size) >= next.from ? next : scale;
  }, first);
};

const plain = (size: number): string => {
  const { whole, power } = asWritten(size);
  if (size !== 0 && (size >= 1e15 || size < 1e-9)) return size.toExponential().replace('+', '');
  const digits = String(whole).padStart(1 - power, '0') + '0'.repeat(Math.max(0, power));
  const point = digits.length + Math.min(0, power);
  const groups = point > 4 ? /\B(?=(?:\d{3})+$)/gu : /$^/u;
  const part = digits.slice(point).replace(/0+$/u, '');
  return digits.slice(0, point).replace(groups, ' ') + (part === '' ? '' : `.${part}`);
};

const numberIn = (value: number, scale: PrintScale, digits: number): string =>
  (value < 0 ? '−' : '') + plain(inUnit(Math.abs(value), scale, digits));

const withUnit = (number: string, { symbol, one = symbol }: PrintScale): string => {
  const unit = number === '1' ? one : symbol;
  return (unit === '°' ? number + unit : `${number} ${unit}`).trim();
};

/** What is shown as rounded up to the border of its unit stands at that border. */
const atLeastOne = (value: number, scale: PrintScale, unit: Unit): number =>
  value !== 0 && UNIT_FACTS[unit].print.indexOf(scale) > 0 && Math.abs(value) < scale.from
    ? Math.sign(value) * scale.from
    : value;

const slowValue = (value: number, unit: Unit, digits: number): string => {
  const scale = unitFor(Math.abs(value), unit, digits);
  return withUnit(numberIn(atLeastOne(value, scale, unit), scale, digits), scale);
};

/** A size as it is printed by itself, in the unit that all others are multiples of. */
const printedAlone = (value: number, unit: Unit, digits: number): Digits => {
  const scale = unitFor(Math.abs(value), unit, digits);
  const size = inUnit(Math.abs(atLeastOne(value, scale, unit)), scale, digits);
  const { whole, power } = asWritten(size);
  return { whole: whole * BigInt(scale.factor ?? 1), power: power + scale.power };
};

/** Whether a thousand times the smaller is no more than the larger, to the last digit. */
const areFarApart = (one: Digits, other: Digits): boolean => {
  const lowest = Math.min(one.power, other.power);
  const [a, b] = [one, other].map(({ whole, power }) => whole * 10n ** BigInt(power - lowest)) as [
    bigint,
    bigint,
  ];
  return a !== 0n && b !== 0n && (1000n * a <= b || 1000n * b <= a);
};

/** Whether the smaller has zeros after its point, and the other is one at least. */
const isSmallBeside = (small: string, great: string): boolean =>
  /^−?0\.0/u.test(small) && !/^−?0/u.test(great);

const slowQuantity = ({ min, typ, max }: Range, unit: Unit, digits: number): string => {
  if (min === max) return slowValue(typ, unit, digits);
  const largest = Math.max(Math.abs(min), Math.abs(max));
  const scale = unitFor(largest, unit, digits);
  const [low = 0, high = 0] = [min, max].map((end) =>
    Math.abs(end) === largest ? atLeastOne(end, scale, unit) : end,
  );
  const [from, to] = [numberIn(low, scale, digits), numberIn(high, scale, digits)];
  if (from === to) return withUnit(to, scale);
  if (min === -max && typ === 0) return `±${withUnit(to, scale)}`;
  // Far apart as printed each by itself, or as what is printed together would be read back.
  const together = [low, high].map((end) => {
    const { whole, power } = asWritten(inUnit(Math.abs(end), scale, digits));
    return Math.sign(end) * valueOf({ whole, power: power + scale.power }) * (scale.factor ?? 1);
  });
  const pairs = scale.factor === undefined ? [[min, max]] : [[min, max], together];
  const inOrder: [string, string] = Math.abs(min) < largest ? [from, to] : [to, from];
  const nearer = unitFor(Math.min(Math.abs(min), Math.abs(max)), unit, digits);
  if (isSmallBeside(...inOrder) && nearer !== scale)
    return `${slowValue(min, unit, digits)} to ${slowValue(max, unit, digits)}`;
  for (const [one = 0, other = 0] of pairs)
    if (areFarApart(printedAlone(one, unit, digits), printedAlone(other, unit, digits)))
      return `${slowValue(one, unit, digits)} to ${slowValue(other, unit, digits)}`;
  return withUnit(from + (min < 0 ? ' to ' : '–') + to, scale);
};

const decade = fc.integer({ min: -20, max: 20 });

/** Written with up to fifteen digits: nothing about its rounding is in doubt. */
const short = fc
  .tuple(fc.integer({ min: 1, max: 999_999_999_999_999 }), decade)
  .map(([whole, power]) => Number(`${String(whole)}e${String(power - 14)}`));

/** A half at some digit, such as 4.935, or behind the twelfth. */
const half = fc.oneof(
  fc.integer({ min: 0, max: 99_999 }),
  fc.integer({ min: 1e11, max: 1e12 - 1 }),
);
const halves = fc
  .tuple(half, decade)
  .map(([whole, power]) => Number(`${String(whole)}5e${String(power - 5)}`));

/** The borders of units, such as 3599.5 s. */
const borders = fc
  .tuple(
    fc.constantFrom(1, 60, 3600, 172_800, 31_536_000, 31_557_600),
    fc.constantFrom(0.5, 0.75, 0.95, 0.995, 0.9995, 0.99949, 0.99951, 1, 1.0005, 1.5, 10),
    fc.constantFrom(-12, -9, -6, -3, 0, 0, 0, 3, 6),
  )
  .map(([size, share, power]) => Number(`${String(size * share)}e${String(power)}`));

/** As arithmetic leaves it: some last bits beside what it should be. */
const noisy = fc
  .tuple(fc.oneof(halves, borders), fc.integer({ min: -20, max: 20 }))
  .map(([size, bits]) => size * (1 + bits * Number.EPSILON));
const any = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), decade)
  .map(([mantissa, power]) => Number(`${String(mantissa)}e${String(power)}`));

const size = fc.oneof(short, halves, borders, noisy, any);
const signed = fc.tuple(size, fc.boolean()).map(([value, negative]) => (negative ? -value : value));
const unit = fc.constantFrom(...UNITS);
const few = fc.integer({ min: 1, max: 6 });

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('printing is the same as done slowly', () => {
  test('the figures of what is written with up to fifteen digits, to the last of twelve', () => {
    fc.assert(
      fc.property(fc.oneof(short, halves), fc.integer({ min: 1, max: 12 }), (value, digits) => {
        const { figures, power } = figuresOf(value, digits);
        expect(Number(`${String(figures)}e${String(power)}`)).toBe(rounded(value, digits));
        expect(figures % 10).not.toBe(0);
      }),
      { numRuns: 5000 },
    );
  });

  test('a value', () => {
    fc.assert(
      fc.property(signed, unit, few, (value, wanted, digits) => {
        const printed = spaced(formatValue(value, wanted, { digits }));
        expect(printed).toBe(slowValue(value, wanted, digits));
      }),
      { numRuns: 5000 },
    );
  });

  test('a range', () => {
    const share = fc.constantFrom(0, 1.0001, 1.004, 1.2, 30, 999, 1000, 1001, -1.001, -2);
    const pair = fc.oneof(
      fc.tuple(signed, signed),
      fc.tuple(signed, share).map(([a, times]) => [a, a * times]),
      signed.map((a) => [-a, a]),
    );
    fc.assert(
      fc.property(pair, unit, few, ([one = 0, other = 0], wanted, digits) => {
        const [min, max] = [Math.min(one, other), Math.max(one, other)];
        const range = { min, typ: (min + max) / 2, max };
        const printed = spaced(formatQuantity(range, wanted, { digits }));
        expect(printed).toBe(slowQuantity(range, wanted, digits));
      }),
      { numRuns: 5000 },
    );
  });
});
