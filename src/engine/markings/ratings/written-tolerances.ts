import type { MarkingTables } from '../../../schemas/markings.ts';
import { filledIn } from '../text/filled-in.ts';
import { sayTolerance } from '../meanings/say.ts';
import type { Scan } from '../lexicon/scan.ts';
import { isFigure } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { weights } from '../meanings/weights.ts';

type Met = MarkingTables['toleranceLetters'][number]['met'];

const NUMBER = String.raw`(\d{1,3}(?:[.,]\d{1,3})?|[.,]\d{1,3})`;
const BOTH = new RegExp(String.raw`(?:±|\+\s?/?\s?[-−–])\s?${NUMBER}\s?(%|pF)`, 'y');
const TWO = new RegExp(
  String.raw`([-−–+])\s?${NUMBER}\s?%?\s?[/,]?\s?([-−–+])\s?${NUMBER}\s?%`,
  'y',
);
const BARE = new RegExp(String.raw`${NUMBER}\s?%`, 'y');
/**
 * Without its sign: `+50-20`, `±10`, and the middle one of `0,1/10/250`, a value, its tolerance and its volts.
 */
const TWO_BARE = /([-−–+])\s?(\d{1,3})\s?\/?\s?([-−–+])\s?(\d{1,3})(?![\d.,])/y;
const BOTH_BARE = /(?<=[\p{L}\d]\s*)±\s?(\d{1,2})(?=$|\s(?!\s*(?:%|[pnuµμ]F)))/uy;
const BETWEEN_STROKES = new RegExp(
  String.raw`(?<=\d\s?/\s?)${NUMBER}(?=\s?/\s?(\d{2,4})(?![\d.,/]|\s\d))`,
  'y',
);

/** The same behind a small value and before its volts, with gaps: `0,68 10 250`, `47n 5 63`, `n33 2,5 630`. */
const BETWEEN_GAPS =
  /(?<=(?:^|\s)(?:0?[.,]\d{1,4}|(?:\d{1,3}[pnuµμ]\d{0,2}|[pnuµμ]\d{1,3})(?:F|f)?)\s)(\d{1,2}(?:[.,]\d{1,2})?|[.,]\d)(?=\s(\d{2,4})(?![\d.,/]))/uy;

/** The same behind plain picofarads, where it is a tolerance of films alone: `4700 2,5 25`. */
const BEHIND_PLAIN =
  /(?<=(?:^|\s)[1-9]\d{2,4}\s)(0[.,]5|1|1[.,]25|2|2[.,]5|5|10|20)(?=\s(\d{2,4})(?![\d.,/]))/uy;

/** Picofarads without their unit, which a part of a few of them has: `5.6 ±.25`. */
const FEW_BARE = new RegExp(
  String.raw`(?:±|\+\s?/?\s?[-−–])\s?(0?[.,]\d{1,2})(?![\d.,]|\s?(?:%|pF))`,
  'y',
);

/** Capacitances, F, that have their tolerance in picofarads: below this. */
const BELOW_FOR_FEW = 10.5e-12;

/** No part has less than nothing of its value. */
const MOST_PERCENT = 100;

/** Whether a written tolerance may begin with a character. */
const mayBegin = (character: string): boolean =>
  isFigure(character) || '±+-−–.,'.includes(character);

const matchAt = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

const numberOf = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));

/** A tolerance as it is written, and its end. */
interface Written {
  end: number;
  minus: number;
  plus: number;
  unit: '%' | 'pF';
  /** The capacitances that it is one of, F: below one, or from one on; nothing where it is of all. */
  belowF?: number;
  fromF?: number;
}

/** A tolerance that differs each way, by the match of its two signs and figures. */
const twoSizes = (two: RegExpExecArray | null, at: number): Written | undefined => {
  if (two === null || (two[1] === '+') === (two[3] === '+')) return undefined;
  const [first, second] = [numberOf(two[2]), numberOf(two[4])];
  const [minus, plus] = two[1] === '+' ? [second, first] : [first, second];
  return { end: at + two[0].length, minus, plus, unit: '%' };
};

const sizesAt = (text: string, at: number): Written | undefined => {
  if (!mayBegin(text.charAt(at))) return undefined;
  const two = twoSizes(matchAt(TWO, text, at), at);
  if (two !== undefined) return two;
  const both = matchAt(BOTH, text, at);
  if (both !== null) {
    const size = numberOf(both[1]);
    const unit = both[2] === '%' ? '%' : 'pF';
    return { end: at + both[0].length, minus: size, plus: size, unit };
  }
  const bare = isFigure(text.charAt(at - 1)) ? null : matchAt(BARE, text, at);
  if (bare === null) return undefined;
  const size = numberOf(bare[1]);
  return { end: at + bare[0].length, minus: size, plus: size, unit: '%' };
};

/** Characters of the longest written tolerance that is looked through for a worn one. */
const LONGEST_WRITTEN = 10;

/** How often a written tolerance is met, by the letters that stand for it; nothing where none does. */
const metAs = (tables: MarkingTables, { minus, plus, unit }: Written): Met[] =>
  tables.toleranceLetters
    .filter((row) => row.minus === minus && row.plus === plus)
    .filter((row) => row.unit === (unit === '%' ? 'percent' : 'pF'))
    .map((row) => row.met);

const MET_MOST_FIRST = ['often', 'sometimes', 'seldom'] as const;

type Made = Pick<Token, 'assumed'> & { written: Written; cost: number };

/** The tolerances that one worn figure may make, of those that have a letter. */
const wornTolerancesAt = ({ lexicon, marking }: Scan, at: number): Made[] =>
  filledIn(marking, at, LONGEST_WRITTEN).flatMap(({ text, at: worn, as }): Made[] => {
    const written = sizesAt(text, at);
    if (written === undefined || written.end <= worn) return [];
    const met = metAs(lexicon.tables, written);
    const most = MET_MOST_FIRST.find((one) => met.includes(one));
    return most === undefined
      ? []
      : [
          {
            written,
            cost: weights.completedLetter[most],
            assumed: [{ at: worn, as, why: 'worn' }],
          },
        ];
  });

/** The same without a sign for per cent, where figures and what stands about them leave little else. */
const bareSizesAt = ({ lexicon, marking: { text } }: Scan, at: number): Written[] => {
  const two = twoSizes(matchAt(TWO_BARE, text, at), at);
  if (two !== undefined) return [two];
  const both = matchAt(BOTH_BARE, text, at);
  if (both !== null) {
    const size = numberOf(both[1]);
    return [{ end: at + both[0].length, minus: size, plus: size, unit: '%' }];
  }
  const few = matchAt(FEW_BARE, text, at);
  if (few !== null) {
    const [minus, plus] = [numberOf(few[1]), numberOf(few[1])];
    const end = at + few[0].length;
    return [
      { end, minus, plus, unit: 'pF', belowF: BELOW_FOR_FEW },
      { end, minus, plus, unit: '%', fromF: BELOW_FOR_FEW },
    ];
  }
  const [all, figures, volts] =
    matchAt(BETWEEN_STROKES, text, at) ??
    matchAt(BETWEEN_GAPS, text, at) ??
    matchAt(BEHIND_PLAIN, text, at) ??
    [];
  if (all === undefined || !lexicon.usualVolts.has(Number(volts))) return [];
  const size = numberOf(figures);
  return [{ end: at + all.length, minus: size, plus: size, unit: '%' }];
};

const plainToleranceAt = (scan: Scan, at: number): Made[] => {
  const written = sizesAt(scan.marking.text, at);
  if (written !== undefined) return [{ written, cost: 0, assumed: [] }];
  return bareSizesAt(scan, at)
    .filter((bare) => metAs(scan.lexicon.tables, bare).length > 0)
    .map((bare) => ({ written: bare, cost: weights.bareTolerance, assumed: [] }));
};

/** Tolerances written out, such as `±10 %`, `-20+80%`, `±0.5 pF`. */
export const writtenTolerancesAt = (scan: Scan, at: number): Token[] => {
  const { lexicon } = scan;
  const made = plainToleranceAt(scan, at).concat(wornTolerancesAt(scan, at));
  if (made.length === 0) return [];
  const row = lexicon.tables.unitWords.find((unit) => unit.quantity === 'fraction');
  if (row === undefined) return [];
  return made
    .filter(({ written }) => written.minus <= MOST_PERCENT)
    .map(({ written: { minus, plus, unit, end, belowF, fromF }, cost, assumed }) => {
      const factor = unit === '%' ? row.factor : 1e-12;
      return {
        at,
        end,
        meaning: {
          slot: 'tolerance',
          content: {
            says: 'tolerance',
            ...(unit === 'pF' ? { of: 'capacitance' as const } : {}),
            ...(belowF === undefined ? {} : { belowF }),
            ...(fromF === undefined ? {} : { fromF }),
            tolerance: {
              minus: minus * factor,
              plus: plus * factor,
              unit: unit === '%' ? 'fraction' : 'F',
            },
          },
          bodies: lexicon.bodies.all,
          origins: lexicon.origins.all,
          types: [],
          means: () => sayTolerance(minus, plus, unit),
          source: row.source,
        },
        weight: weights.writtenTolerance + cost,
        needs: [],
        assumed,
      };
    });
};
