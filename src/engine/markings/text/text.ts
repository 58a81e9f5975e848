/** Characters that may stand between tokens without a meaning of their own. */
const SEPARATORS = new Set(',;:/|()[]{}"\'’`*·•.-–—@');

/** Whether a character is white space. */
export const isBlank = (character: string): boolean =>
  character <= ' ' || character > '~' ? character !== '' && character.trim() === '' : false;

/** Whether a character may stand between tokens. */
export const isSeparator = (character: string): boolean =>
  !isFigure(character) && (SEPARATORS.has(character) || isBlank(character));

/** Whether a character is a figure. */
export const isFigure = (character: string): boolean => character >= '0' && character <= '9';

const LETTER = /\p{L}/u;

/** Whether a character is a letter of any script. */
export const isLetter = (character: string): boolean =>
  character > '\u007f'
    ? LETTER.test(character)
    : (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z');

/** A small letter, or the character itself where the small letter is longer than one. */
export const foldCharacter = (character: string): string => {
  const small = character.toLowerCase();
  return small.length === 1 ? small : character;
};

/** What a character was taken for that cannot be read, or was perhaps read wrongly. */
export interface Assumed {
  /** Zero-based index in the marking. */
  at: number;
  /** What it was taken for. */
  as: string;
  why: 'worn' | 'look-alike';
}

/** How many of some assumptions made up what cannot be read. */
export const madeUp = (assumed: readonly Assumed[]): number =>
  assumed.reduce((sum, { why }) => sum + (why === 'worn' ? 1 : 0), 0);

/** Something else that a character may be, and what it costs to take it so. */
export interface Other {
  as: string;
  /** What it adds to the weight; below nought. */
  cost: number;
}

/** What else each character may be that is easily taken for another. */
export type LookAlikes = ReadonlyMap<string, readonly Other[]>;

/** A marking with what the tokenizer asks of it again and again. */
export interface Marking {
  text: string;
  /** Look-alikes that count; none in a plain reading. */
  lookAlikes: LookAlikes;
  /** Whether the character at an index cannot be read and is to be made up. */
  worn: readonly boolean[];
  /** How many worn figures of one number are made up. */
  mostMadeUp: number;
  /** How many figures of one number may be taken for others. */
  mostLookAlike: number;
  /** Whether it is written in Cyrillic letters, at least in part. */
  cyrillic: boolean;
  /** Whether there is any character that may be another than the one written. */
  plain: boolean;
}

/** Signs for one character that cannot be read: `?`, `_`, `#`, `▯` or the sign for unknown text. */
const WORN_SIGNS = '?_#▯\uFFFD';

/** Stands for any number of characters that cannot be read; nothing is made up for it. */
const WORN_STRETCH = '…';

/**
 * With more characters missing than this, or more than can be read, nothing is left to go by, and
 * none is made up.
 */
const MOST_WORN = 4;

/** Figures of one number that may be taken for others, in a text that can be read and in another. */
const MOST_LOOK_ALIKE = 3;
const MOST_LOOK_ALIKE_BESIDE_WORN = 1;

/** With more characters missing than these, no number has two of its figures made up. */
const MOST_WORN_FOR_TWO = 2;

/** Whether a character is a sign for one or several that cannot be read. */
export const isWornSign = (character: string): boolean =>
  character !== '' && (WORN_SIGNS.includes(character) || character === WORN_STRETCH);

const CYRILLIC = /\p{Script=Cyrillic}/u;

/** Whether a character is a Cyrillic letter. */
export const isCyrillic = (character: string): boolean =>
  character >= '\u0400' && CYRILLIC.test(character);

const NO_LOOK_ALIKES: LookAlikes = new Map();

/** Prepares a marking for the tokenizer, with the look-alikes that are to be reckoned with. */
export const markingOf = (
  text: string,
  lookAlikes: LookAlikes = NO_LOOK_ALIKES,
  cyrillic = CYRILLIC.test(text),
): Marking => {
  const signs = text.split('').map((character) => WORN_SIGNS.includes(character));
  const count = signs.filter(Boolean).length;
  const readable = text.split('').filter((one) => isFigure(one) || isLetter(one)).length;
  const hasGround = count <= MOST_WORN && count <= Math.max(1, readable);
  return {
    text,
    lookAlikes,
    worn: hasGround ? signs : signs.map(() => false),
    mostMadeUp: count <= MOST_WORN_FOR_TWO ? 2 : 1,
    mostLookAlike: count > 0 ? MOST_LOOK_ALIKE_BESIDE_WORN : MOST_LOOK_ALIKE,
    cyrillic,
    plain: count === 0 && lookAlikes.size === 0,
  };
};

/** What the character at an index may be beside what is written; nothing for most. */
export const othersAt = ({ text, lookAlikes }: Marking, at: number): readonly Other[] =>
  lookAlikes.get(text.charAt(at)) ?? [];

/** Whether the character at an index is the one written, and no other. */
export const isAsWritten = ({ text, lookAlikes, worn }: Marking, at: number): boolean =>
  worn[at] !== true && (lookAlikes.size === 0 || !lookAlikes.has(text.charAt(at)));

/** Whether words part at a character: a separator, but not the point of an abbreviation. */
const parts = ({ text }: Marking, at: number): boolean => {
  const character = text.charAt(at);
  if (character === WORN_STRETCH) return true;
  return (
    isSeparator(character) &&
    !(character === '.' && isLetter(text.charAt(at - 1)) && isLetter(text.charAt(at + 1)))
  );
};

/** Signs between the sections of one part, such as `16+16` or `2x50`. */
const SECTION_SIGNS = '+x×';

/** Whether a sign between two figures sets sections apart; what follows it begins a word. */
const setsApart = ({ text }: Marking, at: number): boolean => {
  const character = text.charAt(at);
  return (
    character !== '' &&
    SECTION_SIGNS.includes(character) &&
    isFigure(text.charAt(at - 1)) &&
    isFigure(text.charAt(at + 1))
  );
};

const TIMES =
  /(?<=[\p{L}\d.%]\s*)(?:×(?=\s*\d)|(?<=\s)[xх](?=\s+\d)|(?<=(?:\d\d|[.,]\d))[xх](?=(?:\d{2}|[1-9][.,]\d)(?!\d*\s?mm)))/uy;

/** Whether the sign between a value and its volts stands at an index, as in `100 µF × 25 V` and `100µF x 25V`. */
export const isTimesAt = ({ text }: Marking, at: number): boolean => {
  TIMES.lastIndex = at;
  return TIMES.test(text);
};

/** Whether a word may begin at an index: nothing but a separator is before it. */
export const wordBegins = (marking: Marking, at: number): boolean =>
  at === 0 || parts(marking, at - 1) || setsApart(marking, at - 1);

const THREE_FIGURES = /\d{3}(?!\d)/y;

/** Whether what stands from one index to another begins a word and three figures follow it at once. */
export const beforeThreeFigures = (marking: Marking, at: number, end: number): boolean => {
  THREE_FIGURES.lastIndex = end;
  return wordBegins(marking, at) && THREE_FIGURES.test(marking.text);
};

/** Whether a word may end before an index: nothing but a separator follows. */
export const wordEnds = (marking: Marking, end: number): boolean =>
  end >= marking.text.length || parts(marking, end);

/** Whether cutting the marking here would cut a run of figures or a run of letters in two. */
export const cutsRun = ({ text }: Marking, at: number): boolean => {
  const before = text.charAt(at - 1);
  const after = text.charAt(at);
  return (isFigure(before) && isFigure(after)) || (isLetter(before) && isLetter(after));
};

/** Index of the end of the word that begins at an index. */
export const endOfWord = (marking: Marking, at: number): number => {
  let end = at;
  while (end < marking.text.length && !parts(marking, end)) {
    end += 1;
    if (setsApart(marking, end - 1)) break;
  }
  return end;
};

/** Index of the first character from an index on that is not white space. */
export const skipBlanks = ({ text }: Marking, at: number): number => {
  let end = at;
  while (end < text.length && isBlank(text.charAt(end))) end += 1;
  return end;
};

/** Index behind the last character before an index that is not white space. */
export const skipBlanksBack = ({ text }: Marking, at: number): number => {
  let from = at;
  while (isBlank(text.charAt(from - 1))) from -= 1;
  return from;
};

const CODE = /[1-9]\d{2}(?!\d)/y;

/** Whether three figures and no more stand at an index, as a code for the value does. */
export const isCodeAt = ({ text }: Marking, at: number): boolean => {
  CODE.lastIndex = at;
  return CODE.test(text);
};

const CHIP_CODE = /[A-Za-z]\d(?![\p{L}\d])/uy;

/** Whether a letter and a figure stand at an index, as the code of the value of a small chip. */
export const isChipCodeAt = (text: string, at: number): boolean => {
  CHIP_CODE.lastIndex = at;
  return CHIP_CODE.test(text);
};

const MILITARY = /(?<![\p{L}\d])[A-Z]{2,3}\d{2}(?:[A-Z]{1,4}|[A-Z]\d[A-Z]{2})$/u;

/** Characters of the longest beginning of a type number that a value stands in. */
const LONGEST_BEGINNING = 10;

/**
 * Whether a value at an index stands in a type number of the form that the American military began, as that
 * of `RC20GF472K` does: two or three letters, two figures and letters, among which paper has a figure, stand
 * at once before it.
 */
export const isInNumber = ({ text }: Marking, at: number): boolean =>
  isLetter(text.charAt(at - 1)) &&
  MILITARY.test(text.slice(Math.max(0, at - LONGEST_BEGINNING), at));

const GANG = /[xX×] ?[2-6](?!\d|\p{L}[\p{L}\d])/uy;

/** Whether the sign of several potentiometers on one shaft stands at an index, as the `x2` of `10KBx2` does. */
export const isGangAt = ({ text }: Marking, at: number): boolean => {
  GANG.lastIndex = at;
  return GANG.test(text);
};

const IN_THOUSANDS = /\d+(?:[.,]\d+)?[kKmM](?!\d)/y;

/** Whether a number in thousands or millions stands at an index, with what may follow of a potentiometer. */
export const isInThousandsAt = ({ text }: Marking, at: number): boolean => {
  IN_THOUSANDS.lastIndex = at;
  return IN_THOUSANDS.test(text);
};

const NANO_IN_LATIN = /(?<![\p{L}\d])\d{1,3}H\d(?!\d)/u;

const SOVIET_STYLE = /(?<![\p{L}\d])[KК]\d\d[-–]\d/u;

/**
 * Whether a Soviet style is named, a K, two figures and a dash, so that letters behind it may be Latin ones
 * typed for Cyrillic, as in `K73-17 0.47 63B`.
 */
export const hasSovietStyle = (text: string): boolean => SOVIET_STYLE.test(text);

/**
 * Whether a Latin H stands between two figures, as in `3H3C`, with no more behind as there are behind the
 * volts of `1H223`: only the Cyrillic letter for nano stands so.
 */
export const hasNanoInLatin = (text: string): boolean => NANO_IN_LATIN.test(text);
