const NO_BREAK = '\u00a0';
const MINUS = '\u2212';

const superscript = (exponent: number): string =>
  String(exponent).replace(/[-\d]/g, (sign) =>
    sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(sign)),
  );

/**
 * A number as a table prints it: up to four significant digits, thousands parted from five digits
 * on, a power of ten beyond a million or below a ten-thousandth, a real minus sign.
 */
export const printNumber = (value: number): string => {
  const size = Math.abs(value);
  const sign = value < 0 ? MINUS : '';
  if (size === 0) return '0';
  if (size >= 1e6 || size < 1e-4) {
    const exponent = Math.floor(Math.log10(size) + 1e-9);
    const mantissa = Number((size / 10 ** exponent).toPrecision(4));
    return `${sign}${mantissa === 1 ? '' : `${mantissa}${NO_BREAK}×${NO_BREAK}`}10${superscript(exponent)}`;
  }
  const [whole = '', decimals] = String(Number(size.toPrecision(4))).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, NO_BREAK) : whole;
  return sign + grouped + (decimals ? `.${decimals}` : '');
};

/** A unit as people write it, from its name in units.csv: `Mohm*uF` is MΩ·µF, `degC` is °C. */
export const printUnit = (unit: string): string =>
  unit
    .replace('ohm', 'Ω')
    .replace(/\bu(?=[A-ZΩ]|s$)/g, 'µ')
    .replace('degC', '°C')
    .replace('*', '·')
    .replace('cm3', 'cm³')
    .replace(/^x$/, '×')
    .replace(/^(fraction|grade)$/, '');

/** A number with its unit, never parted. */
export const printWithUnit = (value: number, unit: string): string => {
  const sign = printUnit(unit);
  return sign ? `${printNumber(value)}${NO_BREAK}${sign}` : printNumber(value);
};

/** One figure as a source gives it: some of a lowest, a typical and a highest value. */
export interface GivenFigure {
  min?: number | undefined;
  typ?: number | undefined;
  max?: number | undefined;
}

/** A figure in words and numbers: `0.05–0.1 %`, `up to 2 %`, `0.2–0.5 %, typically 0.3 %`. */
export const printFigure = ({ min, typ, max }: GivenFigure, unit: string): string => {
  const sign = printUnit(unit);
  const one = (value: number) => printWithUnit(value, unit);
  const typically = typ === undefined ? '' : `, typically ${one(typ)}`;
  if (min !== undefined && max !== undefined) {
    if (min === max) return one(min);
    // A dash beside a minus sign would be read as one.
    const dash = min < 0 ? ' to ' : '–';
    const span = `${printNumber(min)}${dash}${printNumber(max)}${sign && NO_BREAK + sign}`;
    return typ === min || typ === max ? span : span + typically;
  }
  if (max !== undefined) return typ === max ? one(max) : `up to ${one(max)}${typically}`;
  if (min !== undefined) return typ === min ? one(min) : `from ${one(min)}${typically}`;
  return typ === undefined ? '' : one(typ);
};
