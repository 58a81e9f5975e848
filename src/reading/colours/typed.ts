import { paints } from './paints.ts';
import type { ColourTables } from './state.ts';

/** Colours as they were typed, and what could not be read. */
export interface Typed {
  marks: (string | undefined)[];
  /** Words that name no colour, as typed. */
  unknown: string[];
}

type Tables = Pick<ColourTables, 'colours' | 'colourMeanings'>;

/** The colour of a figure. */
const colourOfFigure = ({ colourMeanings }: Tables, figure: string): string | undefined =>
  colourMeanings.find((row) => row.role === 'digit' && String(row.value) === figure)?.colour;

/** The colour that a figure key stands for; nothing for other keys. */
export const colourOfKey = (tables: Tables, key: string): string | undefined =>
  /^\d$/.test(key) ? colourOfFigure(tables, key) : undefined;

const named = (tables: Tables, word: string): string | undefined => {
  const colours = paints(tables);
  const plain = word.toLowerCase();
  const whole = colours.find(({ id, name, code }) =>
    [id, name, code.toLowerCase()].includes(plain),
  );
  if (whole !== undefined) return whole.id;
  const begun = colours.filter(({ name }) => name.startsWith(plain));
  // A word that has only begun counts where it can be no other colour.
  return begun.length === 1 ? begun[0]?.id : undefined;
};

const UNKNOWN = ['?', '-', 'x'];

/** The British word is the one of the tables. */
const respelt = (word: string): string => word.replace(/^gray$/i, 'grey');

/**
 * Colours that someone typed, in words, in letter codes, as figures or mixed: `yellow violet red
 * gold`, `YE VT RD GD`, `472 gold`, `4 ? 2 gold`. A question mark is a colour that one cannot tell.
 */
export const colourTyped = (tables: Tables, text: string): Typed => {
  const words = text
    .replace(/\b(light|dark) (?=\p{L})/giu, '$1-')
    .split(/[\s,;/]+/)
    .flatMap((word) => word.match(/\d|\?|[^\d?]+/g) ?? []);
  const marks: (string | undefined)[] = [];
  const unknown: string[] = [];
  for (const word of words) {
    const colour = colourOfKey(tables, word) ?? named(tables, respelt(word));
    if (colour !== undefined) marks.push(colour);
    else if (UNKNOWN.includes(word)) marks.push(undefined);
    else unknown.push(word);
  }
  return { marks, unknown };
};

/** Colours whose name begins with a letter, in the order of the table. */
export const coloursWith = (tables: Tables, letter: string): string[] =>
  paints(tables)
    .filter(({ name }) => name.startsWith(letter.toLowerCase()))
    .map(({ id }) => id);
