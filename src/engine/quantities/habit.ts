import { MOST_DIGITS } from './figures.ts';

/** How a reader likes quantities to be printed. */
export interface Habit {
  /** `nF`: all prefixes; `pF-uF`: no nanofarads, as on old drawings. Default `nF`. */
  capacitance?: 'nF' | 'pF-uF';
  /** Decimal sign. Default `point`. */
  decimal?: 'point' | 'comma';
  /** Significant digits, 1 to 12. Default 3. */
  digits?: number;
  /** `symbol`: 4.7 kΩ; `letter`: 4k7. Default `symbol`. */
  ohm?: 'symbol' | 'letter';
}

/** Significant digits by a habit, within what arithmetic leaves right. */
export const digitsOf = ({ digits = 3 }: Habit): number =>
  Number.isFinite(digits) ? Math.min(MOST_DIGITS, Math.max(1, Math.round(digits))) : 3;
