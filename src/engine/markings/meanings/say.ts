import { plainNumber } from '../../quantities/decimal.ts';

const prefixes: readonly (readonly [number, string])[] = [
  [1e12, 'T'],
  [1e9, 'G'],
  [1e6, 'M'],
  [1e3, 'k'],
  [1, ''],
  [1e-3, 'm'],
  [1e-6, 'µ'],
  [1e-9, 'n'],
  [1e-12, 'p'],
];

/** Steps that are in use with each unit: nobody says millifarad. */
const inUse = {
  F: prefixes.filter(([size]) => size === 1 || size <= 1e-6),
  V: prefixes.filter(([size]) => size === 1e3 || size === 1),
  Ω: prefixes.filter(([size]) => size >= 1e-3),
  W: prefixes.filter(([size]) => size === 1),
};

/** Where a step begins: tenths of an ohm are said in ohms. */
const from = (unit: keyof typeof inUse, size: number): number =>
  unit === 'Ω' && size === 1 ? 0.1 : size;

/** A value in words beside a code, such as `47 nF`; four significant figures. */
export const say = (value: number, unit: keyof typeof inUse): string => {
  if (value === 0) return `0 ${unit}`;
  const steps = inUse[unit];
  const [size, prefix] = steps.find(([step]) => value * (1 + 1e-9) >= from(unit, step)) ??
    steps.at(-1) ?? [1, ''];
  return `${plainNumber(value / size)} ${prefix}${unit}`;
};

/** A tolerance in words: `±10 %`, `−20/+80 %`, `±0.5 pF`. */
export const sayTolerance = (minus: number, plus: number, unit: '%' | 'pF'): string =>
  minus === plus
    ? `±${plainNumber(plus)} ${unit}`
    : `${minus === 0 ? '' : '−'}${plainNumber(minus)}/+${plainNumber(plus)} ${unit}`;

/** A number with a true minus, such as `−55`. */
export const sayNumber = (value: number): string =>
  value < 0 ? `−${plainNumber(-value)}` : plainNumber(value);
