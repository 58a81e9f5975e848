/** Names with a bit for each, so that lists of them are compared in one step. */
export interface Names {
  /** All bits; what a row is tied to that names none. */
  all: number;
  /** The bits of some names, all of them where there is none; unknown names have no bit. */
  bitsOf: (names: readonly string[]) => number;
  /** The names of some bits, in their order; none where all bits are set. */
  namesOf: (bits: number) => readonly string[];
}

/** The same names, where a row that names none is tied to some of them only. */
export const namesWithin = (names: Names, within: readonly string[]): Names => {
  const bits = names.bitsOf(within);
  return { ...names, bitsOf: (some) => (some.length === 0 ? bits : names.bitsOf(some)) };
};

/** Names that fit the bits of a whole number. */
const MOST = 30;

/** Gives each of some names a bit; at most 30 different ones. */
export const namesFrom = (names: Iterable<string>): Names => {
  const known = [...new Set(names)];
  if (known.length > MOST) throw new RangeError(`more than ${MOST} names: ${known.join(', ')}`);
  const all = 2 ** known.length - 1;
  const bitOf = new Map(known.map((name, index) => [name, 2 ** index]));
  return {
    all,
    bitsOf: (some) =>
      some.length === 0 ? all : some.reduce((bits, name) => bits | (bitOf.get(name) ?? 0), 0),
    namesOf: (bits) => (bits === all ? [] : known.filter((name) => bits & (bitOf.get(name) ?? 0))),
  };
};

/** Bodies by what a table without bodies of its own is about. */
export interface BodyNames {
  any: Names;
  capacitor: Names;
  resistor: Names;
}
