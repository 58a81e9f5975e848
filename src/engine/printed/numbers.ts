import { FLOAT_ERROR } from '../quantities/within.ts';
import type { FigureStyle } from '../../schemas/marking-print.ts';

/** A number without the noise of binary fractions. */
const clean = (value: number): number => Number(value.toPrecision(12));

/** How many figures of a number tell something: 3 of 0.0475, 2 of 47000. */
const significant = (value: number): number =>
  String(clean(value))
    .replace('.', '')
    .replace(/^0+|0+$/g, '').length;

/** Figures of the code whose last one counts the noughts. */
export const CODE_FIGURES = 3;

/** Figures that are printed at most: a four-figure code has three, plain picofarads four. */
const MOST_PRINTED = 4;

/** A number in plain figures; nothing where it would need more than four of them, or an exponent. */
export const plainFigures = (value: number): string | undefined => {
  const text = String(clean(value));
  const count = significant(value);
  return /^\d+(?:\.\d+)?$/.test(text) && count > 0 && count <= MOST_PRINTED ? text : undefined;
};

const NO_SPACE_BELOW = 5;

/** Plain figures in a style; nothing where the style makes no difference. */
const styled: Readonly<Record<FigureStyle, (plain: string) => string | undefined>> = {
  plain: (plain) => plain,
  'bare-point': (plain) => (plain.startsWith('0.') ? plain.slice(1) : undefined),
  comma: (plain) => (plain.includes('.') ? plain.replace('.', ',') : undefined),
  grouped: (plain) =>
    !plain.includes('.') && plain.length >= NO_SPACE_BELOW
      ? plain.replace(/\B(?=(?:\d{3})+$)/g, ' ')
      : undefined,
};

/** The ways of writing a number in the given styles, each once. */
export const numberStyles = (value: number, styles: readonly FigureStyle[]): string[] => {
  const plain = plainFigures(value);
  if (plain === undefined) return [];
  return styles.flatMap((style) => styled[style](plain) ?? []);
};

/** A quotient of a value and a unit, without the noise of binary fractions. */
export const inUnit = (value: number, unit: number): number => clean(value / unit);

/** Whether a value lies in a span, ends included, the noise of binary fractions aside. */
export const within = (value: number, low: number, high: number): boolean =>
  value >= low * (1 - FLOAT_ERROR) && value <= high * (1 + FLOAT_ERROR);
