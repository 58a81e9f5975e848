import { paints } from './paints.ts';
import type { ColourRow, ColourTables } from './state.ts';

/** Colours as they were typed, and what could not be read. */
export interface Typed {
  marks: (string | undefined)[];
  /** Words that name no colour, as typed. */
  unknown: string[];
}

type Tables = Pick<ColourTables, 'colours' | 'colourMeanings'>;

/** The British word is the one of the tables. */
const respelt = (word: string): string => word.replace(/^gray$/i, 'grey');

/** Words of a text that may be colours, apart from figures. */
const wordsOf = (text: string): string[] =>
  text.replace(/\b(light|dark) (?=\p{L})/giu, '$1-').split(/[\s,;/]+/);

/** The colour of a figure. */
const colourOfFigure = ({ colourMeanings }: Tables, figure: string): string | undefined =>
  colourMeanings.find((row) => row.role === 'digit' && String(row.value) === figure)?.colour;

/** The colour that a figure key stands for; nothing for other keys. */
export const colourOfKey = (tables: Tables, key: string): string | undefined =>
  /^\d$/.test(key) ? colourOfFigure(tables, key) : undefined;

type Named = Pick<ColourRow, 'id' | 'name' | 'also' | 'code'>;

const wholeName = (colours: readonly Named[], word: string): string | undefined =>
  colours.find(({ id, name, also, code }) => [id, name, code.toLowerCase(), ...also].includes(word))
    ?.id;

const named = (tables: Tables, word: string): string | undefined => {
  const colours = paints(tables);
  const plain = word.toLowerCase();
  const whole = wholeName(colours, plain);
  if (whole !== undefined) return whole;
  const begun = colours.filter(({ name }) => name.startsWith(plain));
  // A word that has only begun counts where it can be no other colour.
  return begun.length === 1 ? begun[0]?.id : undefined;
};

const UNKNOWN = ['?', '-', 'x'];

/**
 * Colours that someone typed, in words, in letter codes, as figures or mixed: `yellow violet red
 * gold`, `YE VT RD GD`, `472 gold`, `4 ? 2 gold`. A question mark is a colour that one cannot tell.
 */
export const colourTyped = (tables: Tables, text: string): Typed => {
  const words = wordsOf(text).flatMap((word) => word.match(/\d|\?|[^\d?]+/g) ?? []);
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

/** Fewer colours than this are a name, such as that of a red disc. */
const FEWEST = 3;

/** The colours that a text consists of, names or letter codes alone; nothing for any other text. */
export const coloursAlone = (colours: readonly Named[], text: string): string[] | undefined => {
  const words = wordsOf(text.trim().replaceAll('-', ' ')).map((word) =>
    wholeName(colours, respelt(word).toLowerCase()),
  );
  const all = words.filter((word) => word !== undefined);
  return all.length === words.length && all.length >= FEWEST ? all : undefined;
};

/** What somebody may say about a row of colours, and that names none: a value, a power, the kind of part. */
const ABOUT_COLOURS =
  /^(?:an?|the|is|what|what's|value|of|with|and|code|colou?rs?|colou?r-coded|resistors?|capacitors?|caps?|bands?|banded|stripes?|rings?|dots?|three|four|five|six|\d|\d-bands?|ohms?|watts?|[\d.]+(?:k|m|r|w)?|1\/[248]w?)$/iu;

/** Letter codes of colours are words as well, so that beside others only names of this length count. */
const SHORTEST_NAME = 3;

/**
 * The colours that a text asks about: it consists of them, or they stand in one row among words that
 * are often said about colours, as in `5 band resistor red red black brown brown`; nothing otherwise.
 */
export const coloursAsked = (colours: readonly Named[], text: string): string[] | undefined => {
  const alone = coloursAlone(colours, text);
  if (alone !== undefined) return alone;
  const words = text.split(/[\s,;:?!-]+/u).filter((word) => word !== '');
  const marks = words.map((word) =>
    word.length < SHORTEST_NAME ? undefined : wholeName(colours, respelt(word).toLowerCase()),
  );
  const first = marks.findIndex((mark) => mark !== undefined);
  const last = marks.findLastIndex((mark) => mark !== undefined);
  const row = marks.slice(first, last + 1).filter((mark) => mark !== undefined);
  const others = words.filter((_, at) => at < first || at > last);
  const isRow = row.length === last + 1 - first && row.length >= FEWEST;
  return isRow && others.every((word) => ABOUT_COLOURS.test(word)) ? row : undefined;
};
