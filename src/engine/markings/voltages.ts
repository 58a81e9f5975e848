import { between, exactly } from '../quantities/range.ts';
import type { Range } from '../quantities/range.ts';
import type { Lexicon } from './lexicon.ts';
import { caseCost, inOrderOfUse } from './lexicon.ts';
import { numbersAt } from './numbers.ts';
import { say } from './say.ts';
import type { Marking } from './text.ts';
import { isFigure, isLetter, skipBlanks, wordAt, wordBegins, wordEnds } from './text.ts';
import type { Need, Token } from './token.ts';
import { weightOf, weights } from './weights.ts';
import type { MarkingTables } from '../../schemas/markings.ts';

type WordRow = MarkingTables['voltageWords'][number];
type CodeRow = MarkingTables['voltageCodes'][number];

const kindOf = (kind: string): 'dc' | 'ac' | undefined =>
  kind === 'dc' || kind === 'ac' ? kind : undefined;

const sayVolts = (volts: Range, kind: string): string => {
  const figures =
    volts.min === volts.max
      ? say(volts.typ, 'V')
      : `${say(volts.min, 'V')} to ${say(volts.max, 'V')}`;
  return kind === '' ? figures : `${figures} ${kind}`;
};

const withWord = (at: number, end: number, row: WordRow, volts: number, note = ''): Token => ({
  at,
  end,
  ...(row.role === 'rated' ? { slot: 'voltage' as const } : {}),
  content: {
    says: 'voltage',
    volts: exactly(volts),
    kind: kindOf(row.kind),
    rated: row.role === 'rated',
  },
  weight: weightOf(weights.voltageWithUnit, row.use),
  needs: [],
  bodies: row.bodies,
  origins: row.origins,
  types: [],
  means:
    row.role === 'rated'
      ? `rated ${sayVolts(exactly(volts), row.kind)}${note}`
      : `${sayVolts(exactly(volts), row.kind)}: ${row.meaning}`,
  source: row.source,
  withUsualUnit: row.use === 'usual',
});

/** Whether a word of the table may end here: letters do not run on, save for a capital one. */
const endsWell = (marking: Marking, end: number, row: WordRow): boolean => {
  if (row.ends_word) return wordEnds(marking, end);
  const next = marking.text.charAt(end);
  return (
    !isLetter(next) || (!isLetter(marking.text.charAt(end - 1)) && next !== next.toLowerCase())
  );
};

/** The longest words of the table that stand at an index. */
const longestAt = (
  lexicon: Lexicon,
  marking: Marking,
  at: number,
  place: WordRow['place'],
): { row: WordRow; end: number }[] => {
  const found = lexicon.tables.voltageWords
    .filter((row) => row.place === place)
    .flatMap((row) => {
      const word = wordAt(marking, at, row.word);
      return word !== undefined && endsWell(marking, word.end, row) ? [{ row, end: word.end }] : [];
    });
  const longest = Math.max(...found.map(({ end }) => end));
  return found.filter(({ end }) => end === longest);
};

/** Volts with a word or sign behind the figures, such as `16V`, `600WVDC`, `275~`. */
const wordBehindAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  numbersAt(marking, at)
    .filter((number) => number.value > 0)
    .flatMap((number) => {
      const start = skipBlanks(marking, number.end);
      return longestAt(lexicon, marking, start, 'after')
        .filter(({ row }) => !row.ends_word || start === number.end)
        .map(({ row, end }) => withWord(at, end, row, number.value * row.factor));
    });

/** Two voltages with one word, such as `350/500V`: the lower one is the rating. */
const pairAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  numbersAt(marking, at).flatMap((first) => {
    if (!'/-'.includes(marking.text.charAt(first.end) || ' ')) return [];
    return numbersAt(marking, first.end + 1).flatMap((second) =>
      longestAt(lexicon, marking, skipBlanks(marking, second.end), 'after')
        .filter(() => first.value > 0 && second.value > first.value)
        .filter(({ row }) => row.role === 'rated')
        .map(({ row, end }) => {
          const high = say(second.value * row.factor, 'V');
          const token = withWord(
            at,
            end,
            row,
            first.value * row.factor,
            `; ${high} is a test or surge figure`,
          );
          return { ...token, weight: token.weight + weights.voltagePair, withUsualUnit: false };
        }),
    );
  });

/** Volts with a word before the figures, such as `WVDC 400` or `T.E. 1500 V`. */
const wordBeforeAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  wordBegins(marking, at)
    ? longestAt(lexicon, marking, at, 'before').flatMap(({ row, end }) =>
        numbersAt(marking, skipBlanks(marking, end))
          .filter((number) => number.value > 0)
          .map((number) => {
            const unit = longestAt(lexicon, marking, skipBlanks(marking, number.end), 'after').find(
              (word) => word.row.role === 'rated',
            );
            const factor = unit?.row.factor ?? row.factor;
            return withWord(at, unit?.end ?? number.end, row, number.value * factor);
          }),
      )
    : [];

/** One meaning of a voltage code. */
export interface VoltageMeaning {
  /** V. */
  volts: Range;
  kind?: 'dc' | 'ac';
  scheme: CodeRow['scheme'];
  use: CodeRow['use'];
  bodies: readonly string[];
  origins: readonly string[];
  source: string;
}

const voltsOf = (row: CodeRow): Range => between(row.volts_min, row.volts_max);

/** Every meaning of a voltage code by itself, such as `2A` or a chip's `V`, the usual one first. */
export const readVoltageCode = (tables: MarkingTables, code: string): VoltageMeaning[] =>
  inOrderOfUse(tables.voltageCodes.filter((row) => row.code === code)).map((row) => {
    const kind = kindOf(row.kind);
    return {
      volts: voltsOf(row),
      ...(kind === undefined ? {} : { kind }),
      scheme: row.scheme,
      use: row.use,
      bodies: row.bodies,
      origins: row.origins,
      source: row.source,
    };
  });

const whereCodesStand = {
  'figure-letter': { needs: [], weights: weights.voltageCode },
  'chip-letter': { needs: ['touching-before-value'], weights: weights.voltageLetter },
  'small-letter': { needs: ['touching-tolerance'], weights: weights.voltageLetter },
  'soviet-letter': { needs: ['touching-temperature'], weights: weights.voltageLetter },
  figures: { needs: ['value-before'], weights: weights.voltageFigures },
  words: { needs: [], weights: weights.voltageWithUnit },
} as const satisfies Record<
  CodeRow['scheme'],
  { needs: Need[]; weights: Record<CodeRow['use'], number> }
>;

/** Whether a letter begins a word and three figures follow it. */
const beforeThreeFigures = (marking: Marking, letter: { end: number }): boolean =>
  wordBegins(marking, letter.end - 1) && /^\d{3}(?!\d)/.test(marking.text.slice(letter.end));

/** Whether a code of the table stands at an index, and where it ends. */
const codeAt = (
  marking: Marking,
  at: number,
  row: CodeRow,
): { end: number; sameCase: boolean } | undefined => {
  const exact = row.scheme !== 'figure-letter' && row.scheme !== 'words';
  const found = wordAt(marking, at, row.code, exact);
  if (found === undefined || isFigure(marking.text.charAt(at - 1))) return undefined;
  const next = marking.text.charAt(found.end);
  if (row.scheme === 'chip-letter') return beforeThreeFigures(marking, found) ? found : undefined;
  if (isLetter(next)) return undefined;
  const figuresRunOn =
    isFigure(next) || (next === '.' && isFigure(marking.text.charAt(found.end + 1)));
  return row.scheme === 'figures' && figuresRunOn ? undefined : found;
};

/** Coded voltages at an index. */
export const codedVoltagesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] =>
  lexicon.tables.voltageCodes.flatMap((row): Token[] => {
    const found = codeAt(marking, at, row);
    if (found === undefined) return [];
    const place = whereCodesStand[row.scheme];
    const volts = voltsOf(row);
    return [
      {
        at,
        end: found.end,
        slot: 'voltage',
        content: { says: 'voltage', volts, kind: kindOf(row.kind), rated: true },
        weight:
          weightOf(place.weights, row.use) +
          caseCost(lexicon, marking.text.slice(at, found.end), row.code),
        needs: [...place.needs],
        bodies: row.bodies,
        origins: row.origins,
        types: [],
        means: `rated ${sayVolts(volts, row.kind)}`,
        source: row.source,
      },
    ];
  });

/** Voltages with a word or sign at an index. */
export const writtenVoltagesAt = (lexicon: Lexicon, marking: Marking, at: number): Token[] => [
  ...wordBehindAt(lexicon, marking, at),
  ...pairAt(lexicon, marking, at),
  ...wordBeforeAt(lexicon, marking, at),
];
