/** What the first search of a visit may fetch, and what it is tried with. */

/** At most so many bytes on the way to a browser, scripts packed by gzip. */
export const MOST_BYTES = 130_000;

/** What people look for, in words: these stand in `docs/measured.md`. */
export const MEASURED: readonly string[] = [
  'leakage',
  'tantalum decoupling',
  'ripple current',
  'paper oil leakage',
];

/** The same and more: longer, in sentences, by number. */
export const QUESTIONS: readonly string[] = [
  ...MEASURED,
  'microphonic',
  'dielectric absorption',
  'hum in the output',
  'what replaces a wax paper capacitor',
  'cold temperature drift capacitor',
  'colour bands resistor tolerance',
  'control scratches',
  'thin bass',
  '4066',
  'TL072',
];
