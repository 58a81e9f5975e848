import type { Marking } from './text.ts';
import { isFigure } from './text.ts';

/** A number as it is written in a marking. */
export interface WrittenNumber {
  end: number;
  value: number;
  /** The figures alone, without leading noughts: what tells its place in a series. */
  figures: string;
  /** How many figures are written, leading noughts counted. */
  written: number;
  /** Whether a nought stands first without a point behind it, as in `010`. */
  padded: boolean;
  /** Whether it has a decimal point or comma. */
  decimal: boolean;
  /** Whether its thousands are set apart, as in `10 000`. */
  grouped: boolean;
}

const GROUPED = /\d{1,3}(?:[   ,.']\d{3})+(?!\d)/y;
const DECIMAL = /\d{0,7}[.,]\d{1,6}(?!\d)/y;
const WHOLE = /\d{1,7}(?!\d)/y;

const match = (pattern: RegExp, marking: Marking, at: number): string | undefined => {
  pattern.lastIndex = at;
  return pattern.exec(marking.text)?.[0];
};

const significant = (digits: string): string => digits.replace(/^0+/, '').replace(/0+$/, '');

/** Every way to read a number at an index; none where a longer run of figures would be cut. */
export const numbersAt = (marking: Marking, at: number): WrittenNumber[] => {
  if (at > 0 && isFigure(marking.text.charAt(at - 1))) return [];
  const numbers: WrittenNumber[] = [];
  const whole = match(WHOLE, marking, at);
  if (whole !== undefined) {
    numbers.push({
      end: at + whole.length,
      value: Number(whole),
      figures: significant(whole),
      written: whole.length,
      padded: whole.startsWith('0'),
      decimal: false,
      grouped: false,
    });
  }
  const decimal = match(DECIMAL, marking, at);
  if (decimal !== undefined) {
    const digits = decimal.replace(/[.,]/, '');
    numbers.push({
      end: at + decimal.length,
      value: Number(decimal.replace(',', '.')),
      figures: significant(digits),
      written: digits.length,
      padded: false,
      decimal: true,
      grouped: false,
    });
  }
  const grouped = match(GROUPED, marking, at);
  if (grouped !== undefined) {
    const digits = grouped.replace(/\D/g, '');
    if (digits.length <= 9)
      numbers.push({
        end: at + grouped.length,
        value: Number(digits),
        figures: significant(digits),
        written: digits.length,
        padded: false,
        decimal: false,
        grouped: true,
      });
  }
  return numbers;
};
