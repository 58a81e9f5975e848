import { formatCode, type Catalogue } from '../engine/index.ts';
import { plainNumber } from '../engine/quantities/decimal.ts';

/** What may be printed on a part. */
export interface Printed {
  /** F. */
  capacitance: number;
  /** V. */
  ratedVoltage?: number | undefined;
  /** As fractions. */
  tolerance?: { minus: number; plus: number } | undefined;
}

type Tables = Catalogue['markings'];

/** Units that values are printed in, F. */
const UNITS: Readonly<Record<string, number>> = { pF: 1e-12, nF: 1e-9, µF: 1e-6, MFD: 1e-6 };

/** From here on a bare number counts in microfarads, below in picofarads, F. */
const BARE_MICROFARADS = 1e-7;

const NO_BREAK = '\u00A0';

/** A number without a nought before its point, as old stamps have it. */
const stamped = (value: number): string => plainNumber(value).replace(/^0\./, '.');

/**
 * Two figures, or three where two do not say the value, and the number of noughts behind them, in
 * picofarads; plain below 10 pF.
 */
const figures = (farads: number): string => {
  const picofarads = Number((farads / 1e-12).toPrecision(3));
  const count = Number(picofarads.toPrecision(2)) === picofarads ? 2 : 3;
  const noughts = Math.floor(Math.log10(picofarads * 1.0001)) + 1 - count;
  return noughts < 0
    ? plainNumber(picofarads)
    : `${Math.round(picofarads / 10 ** noughts)}${noughts}`;
};

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

const toleranceLetter = (tables: Tables, { tolerance, capacitance }: Printed): string =>
  tables.toleranceLetters.find(
    (row) =>
      row.use === 'usual' &&
      row.unit === 'percent' &&
      tolerance !== undefined &&
      capacitance >= (row.from_f ?? 0) &&
      capacitance < (row.below_f ?? Infinity) &&
      same(row.minus / 100, tolerance.minus) &&
      same(row.plus / 100, tolerance.plus),
  )?.letter ?? '';

const percent = ({ tolerance }: Printed): string => {
  if (tolerance === undefined) return '';
  const [minus, plus] = [plainNumber(tolerance.minus * 100), plainNumber(tolerance.plus * 100)];
  return minus === plus ? `${plus}%` : `-${minus}+${plus}%`;
};

const volts = ({ ratedVoltage }: Printed, word: string): string => {
  if (!ratedVoltage) return '';
  const gap = word.includes(' ') ? NO_BREAK : '';
  return `${plainNumber(ratedVoltage / (word.startsWith('k') ? 1e3 : 1))}${gap}${word.replace(' ', NO_BREAK)}`;
};

/** What may stand in a place of a line, with a word behind the colon; empty where it is not said. */
const PLACES: Readonly<Record<string, (part: Printed, word: string, tables: Tables) => string>> = {
  figures: ({ capacitance }) => figures(capacitance),
  letter: ({ capacitance }) => formatCode(capacitance).replace('u', 'µ'),
  decimal: ({ capacitance }) => stamped(capacitance / 1e-6),
  plain: ({ capacitance }) =>
    plainNumber(capacitance / (capacitance < BARE_MICROFARADS ? 1e-12 : 1e-6)),
  unit: ({ capacitance }, word) =>
    `${(word === 'MFD' ? stamped : plainNumber)(capacitance / (UNITS[word] ?? 1))}${NO_BREAK}${word}`,
  tolerance: (part, word, tables) =>
    word === 'letter' ? toleranceLetter(tables, part) : percent(part),
  volts,
};

const placed = (tables: Tables, place: string, part: Printed): string => {
  const [kind = '', word = ''] = place.split(':');
  return PLACES[kind]?.(part, word, tables) ?? '';
};

/** The lines printed on a part, from lines with places in braces; what it does not say is left out. */
export const printedOn = (
  { markings }: Pick<Catalogue, 'markings'>,
  lines: readonly string[],
  part: Printed,
): string[] =>
  lines
    .map((line) =>
      line
        .replace(/\{([^}]+)\}/g, (_, place: string) => placed(markings, place, part))
        .replace(/ +/g, ' ')
        .trim(),
    )
    .filter((line) => line !== '');
