import type { MarkingTables } from '../../../schemas/markings.ts';
import { endsBehindVolts } from '../lexicon/behind-volts.ts';
import type { Names } from '../lexicon/names.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import {
  cutsRun,
  isCodeAt,
  isFigure,
  isGangAt,
  isInThousandsAt,
  isLetter,
  madeUp,
  wordBegins,
  wordEnds,
  type Marking,
} from '../text/text.ts';
import type { Content, Meaning, Need, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

/**
 * Codes as short as this are taken only at the beginning of a word, and those that are shorter only
 * as printed, in capitals.
 */
const SHORT = 3;

const isShort = (word: string): boolean => word.length <= SHORT && /^\p{L}+$/u.test(word);

const tokenOf = (
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
const grade = (word: string, meaning: Meaning, weight: number): [string, Item] => {
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
const freeWord = (word: string, meaning: Meaning, weight: number): [string, Item] => {
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
const gangWord = (word: string, meaning: Meaning, weight: number): [string, Item] => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    const { end, assumed } = found;
    if (assumed.length > 0 || isFigure(marking.text.charAt(at - 1))) return undefined;
    const stands = isFigure(word.charAt(0))
      ? wordBegins(marking, at) && isInThousandsAt(marking, end) && BEFORE_OHMS
      : isGangAt(marking, at) && OF_RESISTOR;
    return stands === false
      ? undefined
      : { ...tokenOf(at, end, meaning, weight, found), needs: stands };
  };
  return [word, { kind: 'word', take }];
};

/** The letter of a trimmer at once before its code, as in `W504`. */
const pinsLetter = (word: string, meaning: Meaning, weight: number): [string, Item] => {
  const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.sameCase && wordBegins(marking, at) && isCodeAt(marking, found.end)
      ? { ...tokenOf(at, found.end, meaning, weight, found), needs: BEFORE_OHMS }
      : undefined;
  return [word, { kind: 'word', take }];
};

const DESIGNATOR = /\d{1,4}[a-zA-Z]?(?:\s*[:=]|(?=\s))(?=.*\d)/y;

const ALONE = /\d{1,2}\s*$/y;

/** The designator that a list begins its line with, as in `R5 10k` and `C3: 22n`; what it stands for follows. */
const designator = (letters: string, meaning: Meaning, weight: number): [string, Item] => {
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
const style = (prefix: string, meaning: Meaning, weight: number): [string, Item] => {
  const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
    if (!found.sameCase || !wordBegins(scan.marking, at)) return undefined;
    const end = WHOLE_STYLE.test(prefix)
      ? wholeStyleEnd(scan.marking, found.end)
      : (styleEnd(scan.marking, found.end) ?? longStyleEnd(scan.marking, found.end));
    return end === undefined ? undefined : tokenOf(at, end, meaning, weight, found);
  };
  return [prefix, { kind: 'word', take }];
};

const SHEET_AND_LINE = /\d{2}[-–]\d{4}[A-Z]?(?![\p{L}\d])/uy;

/** The number of a specification with those of its sheet and line, such as `M39014/01-1553`. */
const specification = (prefix: string, meaning: Meaning, weight: number): [string, Item] => {
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

const taken = { word: freeWord, prefix: style, specification };

/** Letters and the number of a series with a gap between them, as in `MKT 1822`. */
const SERIES_NUMBER = /\p{L} \d+$/u;

/** Letters and words that say what the part is made of. */
const dielectricItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.dielectricCodes.map((row) => {
    const meaning: Meaning = {
      slot: 'dielectric',
      content: { says: 'types', style: row.form === 'prefix' },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: row.types,
      countsZeros: row.counts_zeros,
      means: () =>
        row.construction === '' ? row.dielectric : `${row.construction}, ${row.dielectric}`,
      source: row.source,
    };
    const weight =
      weightOf(weights.word, row.use) + (SERIES_NUMBER.test(row.code) ? weights.seriesNumber : 0);
    return taken[row.form](row.code, meaning, weight);
  });

/** Marks of mains duty. */
const safetyItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.safetyClasses.map((row): [string, Item] => {
    const meaning: Meaning = {
      slot: 'safety',
      content: { says: 'safety', class: row.class },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: row.types,
      means: () => `class ${row.class}: ${row.meaning}`,
      source: row.source,
    };
    const take = ({ marking }: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
      const next = marking.text.charAt(found.end);
      if (cutsRun(marking, at) || isLetter(next) || isFigure(next)) return undefined;
      // A letter at once behind figures is a tolerance, and a small one is no class.
      const isLetterAlone = row.mark.length === 1;
      if (isLetterAlone && !(found.sameCase && wordBegins(marking, at))) return undefined;
      const weight = weightOf(weights.safety, row.use) + (found.sameCase ? 0 : weights.otherCase);
      return tokenOf(at, found.end, meaning, weight, found);
    };
    return [row.mark, { kind: 'word', take }];
  });

type MarkRow = MarkingTables['bodyMarks'][number];

/** What a mark says beside its meaning in words. */
const saidBy = ({ group, mark, polarity }: MarkRow): Content => {
  if (group === 'gang') return { says: 'gangs', count: Number(/\d/.exec(mark)) };
  if (group === 'other-designator') return { says: 'designator', ofOther: true };
  if (group === 'size' || group === 'material' || group === 'designator') return { says: group };
  return polarity === '' ? { says: 'remark' } : { says: 'polarity', polarity };
};

const BEHIND_RATING: readonly Need[] = ['rating-before', 'whole-word'];

/** A bare figure that is a limit of the part behind its rated voltage, such as the 105 of `100uF 35V 105`. */
const limit = (word: string, meaning: Meaning, weight: number): [string, Item] => {
  const take = (_: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
    found.assumed.length > 0
      ? undefined
      : { ...tokenOf(at, found.end, meaning, weight, found), needs: BEHIND_RATING };
  return [word, { kind: 'word', take }];
};

/** How a mark of a group is taken. */
const markTaken = ({ group }: MarkRow) => {
  if (group === 'gang') return gangWord;
  if (group === 'grade') return grade;
  if (group === 'limit') return limit;
  if (group === 'designator' || group === 'other-designator') return designator;
  return group === 'pins' ? pinsLetter : freeWord;
};

/** Polarity, outer foil, approvals and other words. */
const markItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.bodyMarks
    .filter((row) => row.printed)
    .map((row) =>
      markTaken(row)(
        row.mark,
        {
          content: saidBy(row),
          bodies: bodies.bitsOf(row.bodies),
          origins: origins.bitsOf(row.origins),
          types: row.types,
          means: () => row.meaning,
          source: row.source,
        },
        weightOf(weights.mark, row.use),
      ),
    );

/** Signs of the sections of a can. */
const symbolItems = (tables: MarkingTables, bodies: Names, origins: Names) =>
  tables.sectionSymbols.map((row) =>
    freeWord(
      row.sign,
      {
        content: { says: 'symbol', symbol: row.symbol },
        bodies: bodies.bitsOf(row.bodies),
        origins: origins.all,
        types: [],
        means: () => `the section with the sign ${row.symbol}`,
        source: row.source,
      },
      weights.symbol,
    ),
  );

/** Words of the tables that say something by themselves, to be found. */
export const wordItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => [
  ...dielectricItems(tables, bodies, origins),
  ...safetyItems(tables, bodies, origins),
  ...markItems(tables, bodies, origins),
  ...symbolItems(tables, bodies, origins),
];
