import { inLatin } from './cyrillic-units.ts';
import { PREFIXES, PREFIX_WORDS, type Scale, type Unit } from './unit.ts';
import { UNIT_FACTS, UNITS } from './unit-facts.ts';

/** A unit found in a text. */
export interface FoundUnit {
  scale: Scale;
  /** Length of text that it takes up. */
  length: number;
}

interface Words {
  exact: ReadonlyMap<string, Scale>;
  /** By lower-cased spelling. */
  folded: ReadonlyMap<string, Scale>;
}

/** No unit is written longer than `volts per microsecond` with room to spare. */
const LONGEST = 32;

/** How a unit is looked up: without spaces and full stops, in ASCII for the micro and ohm signs. */
const unitKey = (written: string): string =>
  inLatin(
    written
      .replace(/\s+per\s+(?!cent)/gi, '/')
      .replace(/[\s.]/g, '')
      .replace(/µ/g, 'u')
      .replace(/Ω/g, 'ohm')
      .replace(/[·⋅]/g, '*')
      .replace(/m3$/, 'm³'),
  );

const collect = (unit: Unit): Words => {
  const facts = UNIT_FACTS[unit];
  const exact = new Map<string, Scale>();
  for (const base of facts.prefixed) {
    exact.set(base, { power: 0 });
    for (const prefix of facts.prefixes) {
      const scale = { power: PREFIXES[prefix] ?? 0 };
      exact.set(prefix + base, scale);
      exact.set((PREFIX_WORDS[prefix] ?? '') + base, scale);
    }
  }
  for (const [word, scale] of Object.entries(facts.words)) exact.set(word, scale);
  const folded = new Map<string, Scale>();
  // What is listed by hand comes last and decides: mf is the old microfarad, not a millifarad.
  for (const [word, scale] of exact) folded.set(word.toLowerCase(), scale);
  if (facts.prefixAlone) {
    for (const prefix of facts.prefixes) {
      if (prefix === 'f') continue;
      const scale = { power: PREFIXES[prefix] ?? 0 };
      exact.set(prefix, scale);
      // M is never taken for m: the two are nine decades apart.
      if (prefix !== 'm' && prefix !== 'M') folded.set(prefix.toLowerCase(), scale);
    }
  }
  return { exact, folded };
};

const WORDS = Object.fromEntries(UNITS.map((unit) => [unit, collect(unit)])) as Record<Unit, Words>;

/** The scale that a written unit stands for, if it is one of this kind. */
export const scaleOf = (written: string, unit: Unit): Scale | undefined => {
  const key = unitKey(written);
  return WORDS[unit].exact.get(key) ?? WORDS[unit].folded.get(key.toLowerCase());
};

const collectLetters = (unit: Unit): string => {
  const { prefixAlone, prefixes, prefixed } = UNIT_FACTS[unit];
  if (!prefixAlone) return '';
  const bases = prefixed.filter((base) => base.length === 1);
  const letters = [...prefixes].filter((prefix) => prefix !== 'f');
  const capitals = letters.filter((letter) => letter !== 'm').map((letter) => letter.toUpperCase());
  // 4r7 and 3v3 are typed in haste; a small f would be a prefix.
  const smalls = bases.filter((base) => 'RV'.includes(base)).map((base) => base.toLowerCase());
  return [...new Set([...letters, ...capitals, ...bases, ...smalls, 'µ'])].join('');
};

const LETTERS = Object.fromEntries(UNITS.map((unit) => [unit, collectLetters(unit)])) as Record<
  Unit,
  string
>;

/** Letters that may stand where the decimal point would: `4n7`, `4k7`, `4R7`, `3V3`. */
export const pointLetters = (unit: Unit): string => LETTERS[unit];

const WORD_CHARACTER = /[\p{L}µΩ°%‰℃⁻¹³]/u;

/** The longest unit of the wanted kind at the start of a text. */
export const findUnit = (text: string, unit: Unit): FoundUnit | undefined => {
  const stop = text.search(/\.\.|[\d+±…–—<>]/u);
  const end = Math.min(stop === -1 ? text.length : stop, LONGEST);
  for (let length = end; length > 0; length -= 1) {
    const written = text.slice(0, length);
    // A hyphen joins two halves of a word; at either end it opens a range.
    if (/\s$|^\s|-$|-[^\p{L}]/u.test(written)) continue;
    if (length < text.length && /\p{L}$/u.test(written) && WORD_CHARACTER.test(text.charAt(length)))
      continue;
    const scale = scaleOf(written, unit);
    if (scale !== undefined) return { scale, length };
  }
  return undefined;
};

/** Letters that mean too much to tell from them what kind of quantity was meant. */
const VAGUE = new Set(['K', 'c', 'C', 'x', 'a', 'd']);

/** The kind of quantity that a written unit belongs to, if it tells one. */
export const kindOf = (written: string): Unit | undefined => {
  const key = unitKey(written);
  if (VAGUE.has(key) || key in PREFIXES) return undefined;
  return (
    UNITS.find((unit) => WORDS[unit].exact.has(key)) ??
    // In haste, capitals are mixed up; of single letters nothing is made that way.
    (key.length > 1 ? UNITS.find((unit) => WORDS[unit].folded.has(key.toLowerCase())) : undefined)
  );
};
