/** The units that the engine calculates in: SI, fractions, and the trade's own for pitch and level. */
export type Unit =
  | 'F'
  | 'V'
  | 'A'
  | 'ohm'
  | 's'
  | 'Hz'
  | 'degC'
  | 'K'
  | '1/K'
  | 'fraction'
  | 'H'
  | 'm'
  | 'm3'
  | 'W'
  | 'J'
  | 'C'
  | 'S'
  | 'V/s'
  | 'V/octave'
  | 'F*V/m3'
  | 'cents'
  | 'dB'
  | 'deg'
  | 'grade'
  | 'ratio'
  | 'number';

/** How a written unit becomes the SI one: `number * factor * 10^power + offset`. */
export interface Scale {
  power: number;
  /** For units that are no power of ten away, such as hours. */
  factor?: number;
  /** For scales with another zero, such as degrees Fahrenheit. */
  offset?: number;
}

/** A unit as pages print it, and the value from which on it is the one to print. */
export interface PrintScale extends Scale {
  symbol: string;
  /** The symbol behind the number one, where it differs. */
  one?: string;
  from: number;
}

/** What the engine must know of a unit in order to read and print it. */
export interface UnitFacts {
  /** What is measured, with its article: `a capacitance`. */
  kind: string;
  /** Whether a value below zero makes sense. */
  signed: boolean;
  /** The unit that a number without one is in; none where that must be worked out. */
  usual?: string;
  /** Units to suggest when what was written is not one. */
  suggest: string;
  /** Written forms that take a prefix: symbols, then words. */
  prefixed: string[];
  /** SI prefixes in use with this unit, as keys of `PREFIXES`. */
  prefixes: string;
  /** Whether the prefix alone stands for the unit: `47k`, `4.7n`. */
  prefixAlone: boolean;
  /** Other written forms. They win over the prefixed ones where both exist. */
  words: Record<string, Scale>;
  /** In rising order. */
  print: PrintScale[];
}

/** SI prefixes, as powers of ten (SI Brochure, 9th edition, table 7). */
export const PREFIXES: Readonly<Record<string, number>> = {
  f: -15,
  p: -12,
  n: -9,
  u: -6,
  m: -3,
  k: 3,
  M: 6,
  G: 9,
  T: 12,
};

/** The same prefixes as words. */
export const PREFIX_WORDS: Readonly<Record<string, string>> = {
  f: 'femto',
  p: 'pico',
  n: 'nano',
  u: 'micro',
  m: 'milli',
  k: 'kilo',
  M: 'mega',
  G: 'giga',
  T: 'tera',
};

/** One scale under many spellings. */
export const alike = (scale: Scale, ...spellings: string[]): Record<string, Scale> =>
  Object.fromEntries(spellings.map((spelling) => [spelling, scale]));

/** What a unit without prefixes has in their place. */
export const unprefixed = { prefixed: [], prefixes: '', prefixAlone: false };

/** A printed unit that takes over from its own size on. */
export const printed = (symbol: string, power: number, from = 10 ** power): PrintScale => ({
  symbol,
  power,
  from,
});

/** Printed units of one symbol with each of some prefixes, in rising order; `_` is no prefix. */
export const printedWith = (symbol: string, prefixes: string): PrintScale[] =>
  [...prefixes].map((prefix) =>
    prefix === '_'
      ? printed(symbol, 0, 1)
      : printed(
          `${prefix === 'u' ? 'µ' : prefix}${symbol}`,
          PREFIXES[prefix] ?? 0,
          Number(`1e${String(PREFIXES[prefix] ?? 0)}`),
        ),
  );

/** The same with one symbol from its tenth on: 0.33 of it rather than 330 thousandths. */
export const fromTenths = (symbol: string, scales: readonly PrintScale[]): PrintScale[] =>
  scales.map((scale) => (scale.symbol === symbol ? { ...scale, from: 0.1 } : scale));
