import { printNumber } from './numbers.ts';

const prefixes = [
  { power: 6, sign: 'M' },
  { power: 3, sign: 'k' },
  { power: 0, sign: '' },
  { power: -3, sign: 'm' },
  { power: -6, sign: 'µ' },
  { power: -9, sign: 'n' },
  { power: -12, sign: 'p' },
] as const;

/** A value in SI as the trade writes it: 4.7e-9 F is `4.7 nF`. Capacitance skips the millifarad. */
export const printEngineering = (value: number, unit: string): string => {
  const size = Math.abs(value);
  const fitting = prefixes.find(
    ({ power, sign }) => size >= 10 ** power * 0.9999999 && !(unit === 'F' && sign === 'm'),
  );
  const { power, sign } = fitting ?? { power: -12, sign: 'p' };
  return `${printNumber(value / 10 ** power)}\u00a0${sign}${unit}`;
};
