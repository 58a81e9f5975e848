import type { ColourTables } from '../../schemas/marking-colours.ts';
import { ROUNDING } from '../quantities/within.ts';

type Meaning = ColourTables['colourMeanings'][number];
type Scheme = ColourTables['colourSchemes'][number];

/** A resistor as far as its bands tell: ohm, and the tolerance as a fraction each way. */
export interface Banded {
  value: number;
  tolerance: number;
}

/** Schemes that bands are drawn by, in the order in which they are tried. */
export const drawnSchemes = ({ colourSchemes }: Pick<ColourTables, 'colourSchemes'>): Scheme[] =>
  colourSchemes.filter((row) => row.drawn_from_percent !== undefined);

const alike = (a: number, b: number): boolean => Math.abs(a - b) <= ROUNDING * Math.abs(b);

/** Figures of a value and the power of ten behind them; nothing where it has more figures. */
const figuresOf = (
  value: number,
  count: number,
): { digits: number[]; multiplier: number } | undefined => {
  const exponent = Math.floor(Math.log10(value) + ROUNDING) - (count - 1);
  const figures = Math.round(value / 10 ** exponent);
  if (!alike(figures * 10 ** exponent, value)) return undefined;
  return {
    digits: [...String(figures)].map(Number),
    multiplier: Number(`1e${String(exponent)}`),
  };
};

type Tables = Pick<ColourTables, 'colourMeanings' | 'colourSchemes'>;

const USES: readonly Meaning['use'][] = ['usual', 'other'];

/** Colours of one scheme for a part; nothing where a place has no colour for it. */
const inScheme = (
  { colourMeanings }: Tables,
  { codes, places, absent }: Scheme,
  { value, tolerance }: Banded,
): string[] | undefined => {
  const count = places.filter((place) => place === 'digit').length;
  const figures = figuresOf(value, count);
  if (figures === undefined) return undefined;
  const colourFor = (role: string, fits: (row: Meaning) => boolean): string | undefined =>
    USES.map((use) =>
      colourMeanings.find(
        (row) => codes.includes(row.code) && row.role === role && row.use === use && fits(row),
      ),
    ).find((row) => row !== undefined)?.colour;
  const isTolerance = ({ high, unit }: Meaning): boolean =>
    unit === 'percent' && high !== undefined && alike(high / 100, tolerance);
  // A place that is left bare says the tolerance too.
  if (absent.includes('tolerance') && colourFor('tolerance', isTolerance) !== 'none')
    return undefined;
  const digits = [...figures.digits];
  const colours = places.map((place) => {
    if (place === 'digit') {
      const digit = digits.shift();
      return colourFor('digit', (row) => row.value === digit);
    }
    if (place === 'multiplier')
      return colourFor(
        'multiplier',
        (row) => row.value !== undefined && alike(row.value, figures.multiplier),
      );
    return place === 'tolerance' ? colourFor('tolerance', isTolerance) : undefined;
  });
  return colours.every((colour) => colour !== undefined) ? colours : undefined;
};

/**
 * The bands of a resistor in the order in which they are read, by the first scheme that is drawn for its
 * tolerance and has colours for it: three where the lack of the fourth is its tolerance, four, or five
 * for a closer part or a value of three figures. Nothing where none has.
 */
export const bandsOf = (tables: Tables, part: Banded): string[] | undefined => {
  if (!(part.value > 0) || !Number.isFinite(part.value)) return undefined;
  const percent = part.tolerance * 100 * (1 + ROUNDING);
  return drawnSchemes(tables)
    .filter(({ drawn_from_percent: least = 0 }) => percent >= least)
    .map((scheme) => inScheme(tables, scheme, part))
    .find((bands) => bands !== undefined);
};
