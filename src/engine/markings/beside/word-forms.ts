import { endsBehindVolts } from '../lexicon/behind-volts.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';
import type { Meaning, Need, Token } from '../meanings/token.ts';
import { weights } from '../meanings/weights.ts';
import {
  cutsRun,
  isCodeAt,
  isFigure,
  isGangAt,
  isInThousandsAt,
  isLetter,
  madeUp,
  skipBlanks,
  wordBegins,
  wordEnds,
  type Marking,
} from '../text/text.ts';

/** A word of a table as what the tokenizer finds, taken where it stands as words of its form do. */
export type WordForm = (
  word: string,
  meaning: Meaning,
  weight: number,
) => [word: string, item: Item];

/**
 * Codes as short as this are taken only at the beginning of a word, and those that are shorter only
 * as printed, in capitals.
 */
const SHORT = 3;

const isShort = (word: string): boolean => word.length <= SHORT && /^\p{L}+$/u.test(word);

/** A word that was found where its form wants it. */
export const tokenOf = (
  at: number,
  end: number,
  meaning: Meaning,
  weight: number,
  { assumed, cost }: FoundWord<Item>,
): Token => ({ at, end, meaning, weight: weight + cost, needs: [], assumed });

/** Whether a plus or an x stands between figures, where it joins the sections of a can. */
const joins = ({ text }: Marking, at: number): boolean =>
  '+xX'.includes(text.charAt(at) || ' ') &&
  isFigure(text.charAt(at - 1)) &&
  isFigure(text.charAt(at + 1)) &&
  // Behind a fraction it is the sign of a lead, and the volts follow: `4.7+35`.
  !/\d[.,]\d+$/u.test(text.slice(0, at));

/** Whether a short code may stand where and as it was found; in capitals three letters may touch figures or volts. */
const standsAsCode = (marking: Marking, at: number, { word, sameCase, end }: FoundWord<Item>) => {
  if (wordBegins(marking, at)) return sameCase || word.length === SHORT;
  const isBehind = isFigure(marking.text.charAt(at - 1)) || endsBehindVolts(marking, at, end);
  return sameCase && word.length === SHORT && isBehind;
};

const BEHIND_STYLE: readonly Need[] = ['touching-tolerance', 'style-before'];

/** What ends the number of a military part, such as the `O3` of `CM05FD101JO3`. */
const grade: WordForm = (word, meaning, weight) => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.sameCase && wordEnds(marking, found.end)
      ? { ...tokenOf(at, found.end, meaning, weight, found), needs: BEHIND_STYLE }
      : undefined;
  return [word, { kind: 'word', take }];
};

/** Whether a word may be completed where a character is worn: two letters, or figures and one, are too little. */
const mayBeCompleted = (word: string): boolean =>
  word.length > SHORT || (word.length === SHORT && isShort(word));

/** A word that is taken where it cuts no longer one. */
export const freeWord: WordForm = (word, meaning, weight) => {
  const short = isShort(word);
  const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    const { marking } = scan;
    if (short && !standsAsCode(marking, at, found)) return undefined;
    if (madeUp(found.assumed) > 0 && !mayBeCompleted(word)) return undefined;
    const standsFree = !cutsRun(marking, at) || endsBehindVolts(marking, at, found.end);
    if (!standsFree || cutsRun(marking, found.end) || joins(marking, at)) return undefined;
    const inCase = short && !found.sameCase ? weights.otherCase : 0;
    return tokenOf(at, found.end, meaning, weight + inCase, found);
  };
  return [word, { kind: 'word', take }];
};

const OF_RESISTOR: readonly Need[] = ['resistor'];

const BEFORE_OHMS: readonly Need[] = ['touching-before-value'];

/** How many are on one shaft: before a resistance, or behind it or its taper, with a gap or none. */
const gangWord: WordForm = (word, meaning, weight) => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    const { end, assumed } = found;
    if (assumed.length > 0 || isFigure(marking.text.charAt(at - 1))) return undefined;
    const ohms = isFigure(word.charAt(0)) ? skipBlanks(marking, end) : end;
    const stands = isFigure(word.charAt(0))
      ? wordBegins(marking, at) && isInThousandsAt(marking, ohms) && BEFORE_OHMS
      : isGangAt(marking, at) && OF_RESISTOR;
    return stands === false
      ? undefined
      : { ...tokenOf(at, ohms, meaning, weight, found), needs: stands };
  };
  return [word, { kind: 'word', take }];
};

/** The letter of a trimmer at once before its code, as in `W504`. */
const pinsLetter: WordForm = (word, meaning, weight) => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.sameCase && wordBegins(marking, at) && isCodeAt(marking, found.end)
      ? { ...tokenOf(at, found.end, meaning, weight, found), needs: BEFORE_OHMS }
      : undefined;
  return [word, { kind: 'word', take }];
};

const DESIGNATOR = /\d{1,4}[a-zA-Z]?(?:\s*[:=]|(?=\s))(?=.*\d)/y;

const ALONE = /\d{1,2}\s*$/y;

/** The designator that a list begins its line with, as in `R5 10k` and `C3: 22n`; what it stands for follows. */
const designator: WordForm = (letters, meaning, weight) => {
  const { content } = meaning;
  // Two letters and a figure that no capacitor nor resistor has tell the part by themselves.
  const tells = letters.length > 1 && content.says === 'designator' && content.ofOther === true;
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    if (marking.text.slice(0, at).trim() !== '' || found.assumed.length > 0) return undefined;
    DESIGNATOR.lastIndex = found.end;
    ALONE.lastIndex = found.end;
    const rest =
      DESIGNATOR.exec(marking.text)?.[0] ?? (tells ? ALONE.exec(marking.text)?.[0] : undefined);
    return rest === undefined
      ? undefined
      : tokenOf(at, found.end + rest.length, meaning, weight, found);
  };
  return [letters, { kind: 'word', take }];
};

const STYLE = /\d{1,4}[A-Za-zА-Яа-я]?(?![\p{L}\d])/uy;

/** Where the figures of a style such as `CM15` or `К73-17` end. */
const styleEnd = ({ text }: Marking, prefixEnd: number): number | undefined => {
  STYLE.lastIndex = prefixEnd;
  const figures = STYLE.exec(text)?.[0];
  return figures === undefined ? undefined : prefixEnd + figures.length;
};

const LONG_STYLE = /\d{2}(?:[A-Z]{0,2}|[A-Z]\d[A-Z]{2})(?=\d{3}(?!\d))/y;

/** Where a style ends that goes on with letters and the value, such as `CM05FD101`. */
const longStyleEnd = ({ text }: Marking, prefixEnd: number): number | undefined => {
  LONG_STYLE.lastIndex = prefixEnd;
  const rest = LONG_STYLE.exec(text)?.[0];
  return rest === undefined ? undefined : prefixEnd + rest.length;
};

const WHOLE_STYLE = /\d\d$/u;

/** Where a style ends that stands with its figures in the table: before the letter of the voltage. */
const wholeStyleEnd = ({ text }: Marking, end: number): number | undefined =>
  isLetter(text.charAt(end)) ? end : undefined;

/** A style: letters of the table, then figures; of the military with the value in the same word. */
const style: WordForm = (prefix, meaning, weight) => {
  const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    // Letters enough to be no others are often typed small, as in `mks4`.
    const isCased = found.sameCase || (isShort(prefix) && prefix.length === SHORT);
    if (!isCased || !wordBegins(scan.marking, at)) return undefined;
    const inCase = found.sameCase ? 0 : weights.otherCase;
    const end = WHOLE_STYLE.test(prefix)
      ? wholeStyleEnd(scan.marking, found.end)
      : (styleEnd(scan.marking, found.end) ?? longStyleEnd(scan.marking, found.end));
    return end === undefined ? undefined : tokenOf(at, end, meaning, weight + inCase, found);
  };
  return [prefix, { kind: 'word', take }];
};

const SHEET_AND_LINE = /\d{2}[-–]\d{4}[A-Z]?(?![\p{L}\d])/uy;

/** The number of a specification with those of its sheet and line, such as `M39014/01-1553`. */
const specification: WordForm = (prefix, meaning, weight) => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    if (!wordBegins(marking, at) || found.assumed.length > 0) return undefined;
    SHEET_AND_LINE.lastIndex = found.end;
    const rest = SHEET_AND_LINE.exec(marking.text)?.[0];
    return rest === undefined
      ? undefined
      : tokenOf(at, found.end + rest.length, meaning, weight, found);
  };
  return [prefix, { kind: 'word', take }];
};

const BEHIND_RATING: readonly Need[] = ['rating-before', 'whole-word'];

/** A bare figure that is a limit of the part behind its rated voltage, such as the 105 of `100uF 35V 105`. */
const limit: WordForm = (word, meaning, weight) => {
  const take = (_: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.assumed.length > 0
      ? undefined
      : { ...tokenOf(at, found.end, meaning, weight, found), needs: BEHIND_RATING };
  return [word, { kind: 'word', take }];
};

/** How words are taken, by the names that `dielectric-codes.csv` and `mark-groups.csv` use for it. */
export const wordForms = {
  word: freeWord,
  prefix: style,
  specification,
  designator,
  gang: gangWord,
  grade,
  limit,
  pins: pinsLetter,
} as const satisfies Record<string, WordForm>;
