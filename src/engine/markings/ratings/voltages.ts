import type { MarkingTables } from '../../../schemas/markings.ts';
import { exactly } from '../../quantities/range.ts';
import { isWordBehind } from '../lexicon/behind-volts.ts';
import { significant, type WrittenNumber } from '../lexicon/numbers.ts';
import { say } from '../meanings/say.ts';
import { voltsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import {
  isBlank,
  isFigure,
  isInNumber,
  isLetter,
  madeUp,
  skipBlanks,
  wordBegins,
  wordEnds,
  type Assumed,
} from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { kindOf, sayVolts, voltageSlot } from './voltage-codes.ts';
import { weightOf, weights } from '../meanings/weights.ts';

type WordRow = MarkingTables['voltageWords'][number];

interface FoundVolts {
  row: WordRow;
  bodies: number;
  origins: number;
  end: number;
  assumed: readonly Assumed[];
  cost: number;
}

/** What else there is to a number of volts. */
interface OfVolts {
  /** Index behind all of it. */
  end: number;
  /** Of the unit, where that is not the one of its word. */
  factor?: number | undefined;
  /** What the words for it end with. */
  note?: string;
}

/** What of a number counts for the volts that it says. */
type Volts = Pick<WrittenNumber, 'value' | 'cost' | 'assumed' | 'grouped'>;

/** A number of volts with its word. */
const voltsToken = (
  at: number,
  number: Volts,
  word: FoundVolts,
  { end, factor = word.row.factor, note = '' }: OfVolts,
): Token => {
  const { row } = word;
  const volts = exactly(number.value * factor);
  const rated = row.role === 'rated';
  return {
    at,
    end,
    meaning: {
      ...(rated ? { slot: voltageSlot(row.kind) } : {}),
      content: { says: 'voltage', volts, kind: kindOf(row.kind), rated },
      bodies: word.bodies,
      origins: word.origins,
      types: [],
      means: () =>
        rated
          ? `rated ${sayVolts(volts, row.kind)}${note}`
          : `${sayVolts(volts, row.kind)}: ${row.meaning}`,
      source: row.source,
    },
    weight: weightOf(weights.voltageWithUnit, row.use) + number.cost + word.cost,
    needs: [],
    assumed: [...number.assumed, ...word.assumed],
    // In 2 500 V the figures before the gap may be a value of their own.
    withUsualUnit: row.use === 'usual' && word.assumed.length === 0 && !number.grouped,
  };
};

/** Whether a word of the table may end here: letters do not run on, save for a capital one or a word of its own. */
const endsWell = (scan: Scan, end: number, row: WordRow): boolean => {
  const { marking } = scan;
  if (row.ends_word) return wordEnds(marking, end);
  const next = marking.text.charAt(end);
  return (
    !isLetter(next) ||
    (!isLetter(marking.text.charAt(end - 1)) && next !== next.toLowerCase()) ||
    isWordBehind(scan, end)
  );
};

/** Whether a sign for DC volts is the minus of a temperature, as in `100V -25+85`. */
const isMinus = ({ marking: { text } }: Scan, end: number): boolean =>
  text.slice(0, end).endsWith(' -') && isFigure(text.charAt(end));

/** Every word of the table that stands at an index. */
const standingAt = (scan: Scan, at: number, place: WordRow['place']): FoundVolts[] =>
  voltsFoundAt(scan, at).flatMap(({ item, end, assumed, cost }): FoundVolts[] => {
    if (item.row.place !== place) return [];
    if (!endsWell(scan, end, item.row) || isMinus(scan, end)) return [];
    return [{ ...item, end, assumed, cost }];
  });

/** The longest words of each role that stand behind figures, the shorter ones at a cost. */
const rolesAt = (scan: Scan, at: number): FoundVolts[] => {
  const found = standingAt(scan, at, 'after');
  if (found.length === 0) return found;
  const ends = (words: readonly FoundVolts[]): number => Math.max(...words.map(({ end }) => end));
  return [...Map.groupBy(found, ({ row }) => row.role).values()].flatMap((ofRole) =>
    ofRole
      .filter(({ end }) => end === ends(ofRole))
      .map((word) =>
        word.end === ends(found) ? word : { ...word, cost: word.cost + weights.shorterVolts },
      ),
  );
};

/** The longest words of the table that stand at an index. */
const longestAt = (scan: Scan, at: number, place: WordRow['place']): FoundVolts[] => {
  const found = standingAt(scan, at, place);
  const longest = Math.max(...found.map(({ end }) => end));
  return found.filter(({ end }) => end === longest);
};

/**
 * Whether a number may be that of a voltage: above nought, and one that is usual if
 * figures in it are made up or a gap stands in it: `473 100V` is a value and its volts.
 */
const isVoltage = ({ lexicon }: Scan, { value, assumed, grouped }: WrittenNumber): boolean =>
  value > 0 && ((madeUp(assumed) === 0 && !grouped) || lexicon.usualVolts.has(value));

/** `2V104` begins with a code of two signs; volts of one figure do not run into what follows. */
const isCode = ({ marking }: Scan, { digits }: WrittenNumber, end: number): boolean =>
  digits.length === 1 && isFigure(marking.text.charAt(end));

const TANTALUM_CODE = /^[1-9]\d[4-7]$/;

/** Series that tantalum chips are made in. */
const OF_TANTALUM: ReadonlySet<string | undefined> = new Set(['E3', 'E6', 'E12']);

/** Whether a text has no other figures than a stretch of it. */
const hasNoOthers = (text: string, at: number, end: number): boolean =>
  !/\d/u.test(text.slice(0, at) + text.slice(end));

/**
 * Whether figures and a V are rather the code of a tantalum chip and its letter for 35 V, as `226V` by itself
 * is: beside a value they are its volts.
 */
const isCodeOfChip = (
  { lexicon, marking }: Scan,
  at: number,
  { digits, value, decimal }: WrittenNumber,
  end: number,
): boolean =>
  !decimal &&
  TANTALUM_CODE.test(digits) &&
  OF_TANTALUM.has(lexicon.places.get(significant(digits.slice(0, 2)))) &&
  !lexicon.usualVolts.has(value) &&
  hasNoOthers(marking.text, at, end) &&
  marking.text.charAt(end - 1) === 'V' &&
  isFigure(marking.text.charAt(end - 2)) &&
  wordEnds(marking, end);

/** The lowest rating there is, V: below, `1V` is rather the code of a chip. */
const LOWEST_RATING = 1.5;

const lowCost = ({ role }: WordRow, volts: number): number =>
  role !== 'rated' || volts >= LOWEST_RATING ? 0 : weights.lowestVolts;

/** Volts with a word or sign behind the figures, such as `16V`, `600WVDC`, `275~`. */
const wordBehindAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at)
    // In a type number the figures are the value, and the letter behind is its tolerance: `CP53B1FF105V`.
    .filter((number) => isVoltage(scan, number) && !isInNumber(scan.marking, at))
    .flatMap((number) => {
      const start = skipBlanks(scan.marking, number.end);
      return rolesAt(scan, start)
        .filter(({ row }) => !row.ends_word || start === number.end)
        .filter(({ end }) => !isCode(scan, number, end) && !isCodeOfChip(scan, at, number, end))
        .map((word) => {
          const cost = word.cost + lowCost(word.row, number.value * word.row.factor);
          return voltsToken(at, number, { ...word, cost }, { end: word.end });
        });
    });

/**
 * Index after a sign for volts that touches the figures, or the same index where there is none. A
 * dash between two voltages is no sign for direct ones, as that of `350-500V` is not.
 */
const behindVolts = (scan: Scan, at: number): number =>
  voltsFoundAt(scan, at)
    .filter(({ item: { row }, assumed }) => row.place === 'after' && assumed.length === 0)
    .filter(({ word }) => !word.endsWith('-'))
    .findLast(({ item: { row } }) => row.role === 'rated')?.end ?? at;

/** Two voltages, such as `350/500V` and `350V/385V`: the lower one is the rating. */
const pairAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at).flatMap((first) => {
    if (madeUp(first.assumed) > 0) return [];
    const stroke = behindVolts(scan, first.end);
    if (!'/-'.includes(scan.marking.text.charAt(stroke) || ' ')) return [];
    return writtenAt(scan, stroke + 1)
      .filter((second) => first.value > 0 && second.value > first.value)
      .filter((second) => isVoltage(scan, first) && isVoltage(scan, second))
      .flatMap((second) =>
        longestAt(scan, skipBlanks(scan.marking, second.end), 'after')
          .filter(({ row }) => row.role === 'rated')
          .map((word) => {
            const note = `; ${say(second.value * word.row.factor, 'V')} is a test or surge figure`;
            const token = voltsToken(at, first, word, { end: word.end, note });
            const assumed = [...first.assumed, ...second.assumed, ...word.assumed];
            const weight = token.weight + second.cost + weights.voltagePair;
            return { ...token, assumed, weight, withUsualUnit: false };
          }),
      );
  });

const BARE_PAIR = /(\d{2,3})\/(\d{2,3})(?![\d.,/]|\s?\p{L})/uy;
const BEHIND_VALUE: readonly Need[] = ['value-before', 'whole-word'];

/** The word that volts without one would have. */
const standingWord = ({ tables, bodies, origins }: Scan['lexicon']): FoundVolts | undefined => {
  const row = tables.voltageWords.find(({ word, role }) => word === 'V' && role === 'rated');
  return row && { row, bodies: bodies.all, origins: origins.all, end: 0, assumed: [], cost: 0 };
};

/** The same without a word, behind the value of a can: `16+16 450/525`. */
const barePairAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  BARE_PAIR.lastIndex = at;
  const [all, first, second] = (wordBegins(marking, at) && BARE_PAIR.exec(marking.text)) || [];
  const [volts, surge] = [Number(first), Number(second)];
  const word = standingWord(lexicon);
  const { lowestOfCan, highestSurge } = lexicon.trade;
  if (all === undefined || word === undefined) return [];
  const isRating = volts >= lowestOfCan && lexicon.usualVolts.has(volts);
  if (!isRating || surge <= volts || surge > volts * highestSurge) return [];
  const note = `; ${say(surge, 'V')} is a surge figure`;
  const written = { value: volts, cost: 0, assumed: [], grouped: false };
  const token = voltsToken(at, written, word, { end: at + all.length, note });
  return [
    { ...token, weight: weights.voltageFigures.usual, needs: BEHIND_VALUE, withUsualUnit: false },
  ];
};

/** Volts with a word before the figures, such as `WVDC 400` or `T.E. 1500 V`. */
const wordBeforeAt = (scan: Scan, at: number): Token[] =>
  wordBegins(scan.marking, at)
    ? longestAt(scan, at, 'before').flatMap((word) =>
        writtenAt(scan, skipBlanks(scan.marking, word.end))
          .filter((number) => isVoltage(scan, number))
          .map((number) => {
            const start = skipBlanks(scan.marking, number.end);
            const unit = rolesAt(scan, start).find(({ row }) => row.role === 'rated');
            const end = unit?.end ?? number.end;
            return voltsToken(at, number, word, { end, factor: unit?.row.factor });
          }),
      )
    : [];

const SIGNS = '+-−±';
const BEHIND_RATING: readonly Need[] = ['rating-before'];

/** The voltage of a rail, with its sign, behind the rating of the part: the second of `470/25 +12 V`. */
const railAt = (scan: Scan, at: number): Token[] => {
  const { text } = scan.marking;
  if (!SIGNS.includes(text.charAt(at) || ' ') || !isBlank(text.charAt(at - 1))) return [];
  return wordBehindAt(scan, at + 1).map((token) => ({
    ...token,
    at,
    meaning: {
      content: { says: 'remark' },
      bodies: token.meaning.bodies,
      origins: token.meaning.origins,
      types: [],
      means: () => 'voltage of a rail in the circuit, not its rating',
      source: token.meaning.source,
    },
    weight: weights.rail,
    needs: BEHIND_RATING,
    withUsualUnit: false,
  }));
};

const RATING_BEFORE = /(\d+(?:[.,]\d+)?)\s?V[=~-]?[,;]?\s+$/u;

/** How many times the rating a part is tested at, at least. */
const LEAST_OF_TEST = 1.25;

/** A higher voltage of the same kind behind the rating, as in `250V- 750V-`: what the part was tested with. */
const testAt = (scan: Scan, at: number): Token[] => {
  if (!isBlank(scan.marking.text.charAt(at - 1))) return [];
  const [before, figures = ''] = RATING_BEFORE.exec(scan.marking.text.slice(0, at)) ?? [];
  if (before === undefined) return [];
  const sign = (text: string): string => (text.includes('~') ? '~' : '');
  return wordBehindAt(scan, at).flatMap((token): Token[] => {
    const { content } = token.meaning;
    if (content.says !== 'voltage' || !content.rated) return [];
    const written = scan.marking.text.slice(at, token.end);
    const isTest = content.volts.typ >= LEAST_OF_TEST * Number(figures.replace(',', '.'));
    if (!isTest || sign(written) !== sign(before)) return [];
    const { bodies, origins, source, types } = token.meaning;
    return [
      {
        ...token,
        meaning: {
          content: { ...content, rated: false },
          bodies,
          origins,
          types,
          means: () => `${say(content.volts.typ, 'V')}: a test or surge figure, not the rating`,
          source,
        },
        needs: BEHIND_RATING,
        withUsualUnit: false,
      },
    ];
  });
};

/** Voltages with a word or sign at an index. */
export const writtenVoltagesAt = (scan: Scan, at: number): Token[] => [
  ...railAt(scan, at),
  ...testAt(scan, at),
  ...wordBehindAt(scan, at),
  ...pairAt(scan, at),
  ...barePairAt(scan, at),
  ...wordBeforeAt(scan, at),
];
