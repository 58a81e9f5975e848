import type { MarkingTables } from '../../../schemas/markings.ts';
import { caseCost } from '../lexicon/case-cost.ts';
import type { Names } from '../lexicon/names.ts';
import { sayNumber } from '../meanings/say.ts';
import { significant } from '../lexicon/numbers.ts';
import type { Item, Scan } from '../lexicon/scan.ts';
import {
  isCodeAt,
  isFigure,
  isGangAt,
  isInThousandsAt,
  isLetter,
  wordBegins,
  wordEnds,
  type Marking,
} from '../text/text.ts';
import type { Meaning, Need, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

type Row = MarkingTables['tapers'][number];

const BEFORE_VALUE: readonly Need[] = ['touching-before-value'];
const BEHIND_VALUE: readonly Need[] = ['touching-value', 'resistor'];
const BEHIND_GAP: readonly Need[] = ['after-value', 'resistor'];
const BEHIND_GANGS: readonly Need[] = ['resistor'];
const BEHIND_DASH: readonly Need[] = ['value-before', 'resistor'];
const BY_ITSELF: readonly Need[] = [];

/** Thousands or millions and a dash or a stroke before a letter, as in `500K-A` and `M1/G`. */
const DASH_BEFORE = /(?:\d[kKMmкКмМ]\d?|[kKM]\d{1,2})[-/]$/u;

/** How many are on one shaft, at once before a letter or before the gap there, as in `10kx2A`. */
const GANGS_BEFORE = /\d\s?[kKM]?\s?[xX×] ?[2-6]\s?$/u;

/** Whether ohms in thousands or millions stand behind a gap, as in `B 25K`. */
const isBeforeThousands = (marking: Marking, at: number): boolean =>
  ' -'.includes(marking.text.charAt(at) || '.') && isInThousandsAt(marking, at + 1);

/** What a letter by itself must have before it: a value, or what says how many are on one shaft. */
const letterNeeds = ({ text }: Marking, at: number, begins: boolean): readonly Need[] => {
  const before = text.slice(Math.max(0, at - 8), at);
  if (GANGS_BEFORE.test(before)) return BEHIND_GANGS;
  if (DASH_BEFORE.test(before)) return BEHIND_DASH;
  return begins ? BEHIND_GAP : BEHIND_VALUE;
};

/** Whether a letter is short for a word, as the w of `w/ switch` is. */
const isShortFor = (next: string, word: string): boolean => word.length === 1 && next === '/';

/** What a taper must have about it where it stands; nothing where it cannot stand. */
const needsAt = (
  { marking }: Scan,
  at: number,
  { word, end }: FoundWord<Item>,
): readonly Need[] | undefined => {
  const begins = wordBegins(marking, at);
  const next = marking.text.charAt(end);
  if (begins && isShortFor(next, word)) return undefined;
  if (begins && (isFigure(next) || marking.worn[end] === true)) return BEFORE_VALUE;
  if (begins && word.length === 1 && isBeforeThousands(marking, end)) return BY_ITSELF;
  const gang = isGangAt(marking, end);
  if (!gang && (isLetter(next) || !wordEnds(marking, end))) return undefined;
  if (word.length === 1) return letterNeeds(marking, at, begins);
  return begins ? BY_ITSELF : BEHIND_VALUE;
};

const sayTaper = ({ law, half_min_percent: least, half_max_percent: most }: Row): string =>
  `${law} taper: ${sayNumber(least)} to ${sayNumber(most)} % of the whole at half travel`;

/** Letters that pots usually bear: others before a code of three figures are rather something else. */
const lettersMet = ({ tapers }: MarkingTables): ReadonlySet<string> =>
  new Set(tapers.filter(({ use }) => use === 'usual').map(({ letter }) => letter));

/** Letters that resistors often bear for their tolerance, which they rather are behind a gap. */
const lettersOfTolerance = ({ resistorTolerances }: MarkingTables): ReadonlySet<string> =>
  new Set(resistorTolerances.filter(({ met }) => met !== 'seldom').map(({ letter }) => letter));

/** Whether a code of three figures stands at an index, and no letter of thousands behind it. */
const isBareCode = ({ marking }: Scan, at: number): boolean =>
  isCodeAt(marking, at) && !'kKmM'.includes(marking.text.charAt(at + 3) || ' ');

/** Three figures for millions, as codes of microfarads have them. */
const MILLIONS = /([1-9]\d)[5-7](?!\d)/y;

/** Series that tantalum chips are made in, and hardly any pot of more than a million. */
const OF_TANTALUM: ReadonlySet<string | undefined> = new Set(['E3', 'E6']);

/** Whether a code at an index is rather that of a tantalum chip, as the 475 of `A475`: `A105` is a pot of 1 MΩ. */
const isRatherTantalum = ({ lexicon, marking }: Scan, at: number): boolean => {
  MILLIONS.lastIndex = at;
  const figures = significant(MILLIONS.exec(marking.text)?.[1] ?? '');
  return figures !== '1' && OF_TANTALUM.has(lexicon.places.get(figures));
};

/** The letters and words for tapers of potentiometers, to be found. */
export const taperItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => {
  const met = lettersMet(tables);
  const ofTolerance = lettersOfTolerance(tables);
  const isRatherTolerance = (needs: readonly Need[], letter: string): boolean =>
    needs === BEHIND_GAP && ofTolerance.has(letter);
  return tables.tapers.map((row) => {
    const meaning: Meaning = {
      slot: 'taper',
      content: {
        says: 'taper',
        taper: row.law,
        settle: row.settle,
      },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: [],
      means: () => sayTaper(row),
      source: row.source,
    };
    const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
      const needs = needsAt(scan, at, found);
      if (needs === undefined || found.assumed.length > 0) return undefined;
      const behindFigures = needs !== BEHIND_GANGS && isFigure(scan.marking.text.charAt(at - 1));
      const weight =
        weightOf(weights.taper, row.use) +
        (behindFigures ||
        isRatherTolerance(needs, row.letter) ||
        (!met.has(row.letter) && isBareCode(scan, found.end)) ||
        isRatherTantalum(scan, found.end)
          ? weights.taperBesideCode
          : 0) +
        caseCost(scan, at, found);
      return { at, end: found.end, meaning, weight, needs, assumed: [] };
    };
    return [row.letter, { kind: 'word', take }];
  });
};
