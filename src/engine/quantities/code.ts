import { figuresOf } from './figures.ts';
import { digitsOf } from './habit.ts';

/** The letters of IEC 60062 that stand for the unit and, in the number, for the decimal point. */
const LETTERS = {
  F: [
    ['p', -12],
    ['n', -9],
    ['u', -6],
    ['m', -3],
    ['F', 0],
  ],
  ohm: [
    ['R', 0],
    ['k', 3],
    ['M', 6],
    ['G', 9],
    ['T', 12],
  ],
} as const;

/**
 * A value in the letter code of IEC 60062, in ASCII: `4n7`, `470p`, `2u2`, `1n0`, `p47`; `4k7`,
 * `470R`. The letter for micro is u and for kilo k, as the trade writes them. No code exists for
 * values below zero or without end: those give an empty text.
 *
 * @param value in F or ohm
 * @param digits significant digits, 1 to 12
 */
export const formatCode = (value: number, unit: 'F' | 'ohm' = 'F', digits = 3): string => {
  if (!Number.isFinite(value) || value < 0) return '';
  const letters = LETTERS[unit];
  if (value === 0) return `0${letters[0][0]}`;
  const short = figuresOf(value, digitsOf({ digits }));
  const figures = String(short.figures);
  const power = short.power + figures.length - 1;
  const [letter, scale] = letters.findLast(([, from]) => power >= from) ?? letters[0];
  // Digits before the letter; none or fewer below the smallest unit.
  const before = power - scale + 1;
  const whole = before > 0 ? figures.slice(0, before).padEnd(before, '0') : '';
  const part = before > 0 ? figures.slice(before) : '0'.repeat(-before) + figures;
  // IEC 60062 keeps a digit behind the letter where only one stands before it: 1n0.
  return `${whole}${letter}${part === '' && before === 1 ? '0' : part}`;
};
