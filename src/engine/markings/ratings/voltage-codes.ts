import type { MarkingTables } from '../../../schemas/markings.ts';
import { between, type Range } from '../../quantities/range.ts';
import { isWordBehind } from '../lexicon/behind-volts.ts';
import { caseCost } from '../lexicon/case-cost.ts';
import type { Names } from '../lexicon/names.ts';
import { isUnitOfPower } from './powers.ts';
import { say } from '../meanings/say.ts';
import { voltsFoundAt, type Item, type Scan } from '../lexicon/scan.ts';
import {
  beforeThreeFigures,
  hasNanoInLatin,
  isChipCodeAt,
  isCodeAt,
  isFigure,
  isLetter,
  madeUp,
  skipBlanks,
  wordBegins,
  wordEnds,
} from '../text/text.ts';
import type { Meaning, Need, Slot, Token } from '../meanings/token.ts';
import { inOrderOfUse } from '../meanings/use.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

type CodeRow = MarkingTables['voltageCodes'][number];
type Stands = MarkingTables['voltageSchemes'][number]['stands'];

/** The kind of voltage of a row, where it says one. */
export const kindOf = (kind: string): 'dc' | 'ac' | undefined =>
  kind === 'dc' || kind === 'ac' ? kind : undefined;

/** The place of a rated voltage: one of ac has its own, as a part may bear both. */
export const voltageSlot = (kind: string): Slot => (kind === 'ac' ? 'ac-voltage' : 'voltage');

/** A voltage in words, such as `50 V to 100 V dc`. */
export const sayVolts = (volts: Range, kind: string): string => {
  const figures =
    volts.min === volts.max
      ? say(volts.typ, 'V')
      : `${say(volts.min, 'V')} to ${say(volts.max, 'V')}`;
  return kind === '' ? figures : `${figures} ${kind}`;
};

/** One meaning of a voltage code. */
export interface VoltageMeaning {
  /** V. */
  volts: Range;
  kind?: 'dc' | 'ac';
  /** Id in `voltage-schemes.csv`. */
  scheme: string;
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

/** The codes of all schemes that stand in one way, in the order of their table. */
export const voltageCodesThat = (
  { voltageSchemes, voltageCodes }: Pick<MarkingTables, 'voltageSchemes' | 'voltageCodes'>,
  stands: Stands,
): CodeRow[] => {
  const own = new Set(voltageSchemes.filter((row) => row.stands === stands).map(({ id }) => id));
  return voltageCodes.filter(({ scheme }) => own.has(scheme));
};

const whereCodesStand = {
  beside: { needs: [], weights: weights.voltageCode },
  'before-figures': { needs: ['touching-before-value'], weights: weights.voltageLetter },
  'behind-figures': { needs: ['touching-value'], weights: weights.voltageLetterBehind },
  'behind-tolerance': { needs: ['touching-tolerance'], weights: weights.voltageLetter },
  'behind-temperature': { needs: ['touching-temperature'], weights: weights.voltageLetter },
  'behind-value': { needs: ['value-before'], weights: weights.voltageFigures },
  'behind-style': { needs: ['touching-style'], weights: weights.voltageLetterBehind },
  'by-itself': { needs: [], weights: weights.voltageWithUnit },
} as const satisfies Record<Stands, { needs: Need[]; weights: Record<CodeRow['use'], number> }>;

const CODE_BEFORE = /(?<!\d)\d{2}[1-9]$/;

/** Whether a letter ends a word and a code of three figures alone stands before it; one of chips counts noughts. */
const behindCode = ({ marking }: Scan, at: number, end: number): boolean =>
  wordEnds(marking, end) && CODE_BEFORE.test(marking.text.slice(Math.max(0, at - 4), at));

const FEW_FIGURES = /\d{1,2}(?!\d)/y;

/** Whether the letter of a code is rather the point of a value, as that of `2P8` is, and of `1E5`. */
const isPointOfValue = ({ lexicon, marking }: Scan, end: number): boolean => {
  FEW_FIGURES.lastIndex = end;
  if (marking.text.charAt(end - 1) === 'H' && hasNanoInLatin(marking.text)) return true;
  return (
    FEW_FIGURES.test(marking.text) &&
    (lexicon.values.points.get(marking.text.charAt(end - 1)) ?? []).some(
      ({ quantity, places, use }) =>
        places.includes('middle') && (quantity === 'resistance' || use === 'usual'),
    )
  );
};

/** Whether a code behind a gap is rather a power, as the `2W` of `47K 2W` is. */
const isPower = (scan: Scan, at: number, end: number): boolean =>
  (at > 0 || end < scan.marking.text.length) &&
  wordBegins(scan.marking, at) &&
  wordEnds(scan.marking, end) &&
  isUnitOfPower(scan, end - 1, end);

/** What the figures beside a figure and a letter make of their being a code. */
const besideFigures = (scan: Scan, at: number, end: number): number =>
  (isPower(scan, at, end) ? weights.voltageCodeForPower : 0) +
  (beforeThreeFigures(scan.marking, at, end) ? weights.voltageCodeBeforeThree : 0);

/** Whether a code that was made up in part stands where it is expected. */
const standsClear = (scan: Scan, at: number, end: number): boolean =>
  beforeThreeFigures(scan.marking, at, end) || wordEnds(scan.marking, end);

/** Whether figures run on behind an index, be it behind a point or comma. */
const figuresRunOn = ({ marking: { text } }: Scan, end: number): boolean =>
  /^[.,]?\d/u.test(text.slice(end, end + 2));

/** Whether the figures that a letter belongs to stand where they have to. */
const isBesideCode = (scan: Scan, at: number, stands: Stands, end: number): boolean =>
  stands === 'behind-style' ? isCodeAt(scan.marking, end) : behindCode(scan, at, end);

/** Whether a letter touches the figures that is none of a tolerance, as that of `226 16K` is, nor of a word. */
const isLetterBehind = (scan: Scan, stands: Stands, end: number): boolean => {
  const letter = scan.marking.text.charAt(end);
  if (!isLetter(letter)) return false;
  const mayBeTolerance =
    stands === 'behind-value' &&
    wordEnds(scan.marking, end + 1) &&
    voltsFoundAt(scan, end).length === 0 &&
    scan.lexicon.tables.toleranceLetters.some(
      (row) => row.met === 'often' && row.letter === letter,
    );
  return !mayBeTolerance && !(stands === 'behind-value' && isWordBehind(scan, end));
};

/** Whether a code is the end of a fraction of a watt, as the `2W` of `1/2W` and the 4 of `1/4 W` are. */
const endsFraction = (scan: Scan, at: number, end: number): boolean =>
  /(?<![\d.,])\d\/$/u.test(scan.marking.text.slice(0, at)) &&
  (isUnitOfPower(scan, end - 1, end) || isUnitOfPower(scan, skipBlanks(scan.marking, end)));

/** Whether a letter and a figure are all that follows a letter, as the code of a small chip does: `JA7`. */
const isBeforeChipCode = ({ marking }: Scan, at: number, end: number): boolean =>
  at === 0 && end === 1 && marking.text.length === end + 2 && isChipCodeAt(marking.text, end);

const IN_TYPE_NUMBER = /(?<![\p{L}\d])\p{L}{2}[\p{L}\d]*\d{3}\p{L}{1,2}$/u;

/** Whether one figure stands behind the tolerance letter of a type number, where it is a grade: `CQ09A1MC104K3`. */
const isGradeOfNumber = ({ marking: { text } }: Scan, at: number, end: number): boolean =>
  end - at === 1 && IN_TYPE_NUMBER.test(text.slice(0, at));

/** Whether the value of a chip follows a letter, in three figures or in a letter and a figure. */
const isBeforeCode = (scan: Scan, at: number, end: number): boolean =>
  beforeThreeFigures(scan.marking, end - 1, end) || isBeforeChipCode(scan, at, end);

/** Whether figures behind a value may be its volts: a letter first makes a lot code of them sooner. */
const mayBeFigures = (scan: Scan, at: number, end: number): boolean =>
  !isGradeOfNumber(scan, at, end) && !figuresRunOn(scan, end);

/** Whether a code of the table may stand where it was found. */
const mayStand = (scan: Scan, at: number, stands: Stands, found: FoundWord<Item>): boolean => {
  const { text } = scan.marking;
  const exact = stands !== 'beside' && stands !== 'by-itself';
  if (exact && !found.sameCase) return false;
  if (stands === 'behind-figures' || stands === 'behind-style')
    return madeUp(found.assumed) === 0 && isBesideCode(scan, at, stands, found.end);
  const inFigures = isFigure(text.charAt(at));
  // A tolerance may end in a figure, and letters of a case or of leads follow: `106X9035`, `225K035AS`.
  if (stands === 'behind-tolerance' && inFigures) return !isFigure(text.charAt(found.end));
  if (isFigure(text.charAt(at - 1))) return false;
  if (madeUp(found.assumed) > 0 && !standsClear(scan, at, found.end)) return false;
  if (stands === 'before-figures') return isBeforeCode(scan, at, found.end);
  if (isLetterBehind(scan, stands, found.end)) return false;
  return stands !== 'behind-value' || (inFigures && mayBeFigures(scan, at, found.end));
};

/** What the volts of Soviet mica stand behind and before: `КСО-2 500 Г 510`, `КСОТ-5 Б 500 5100`. */
const STYLE_BEFORE = /^\p{Lu}{2,4}-?\d{0,2}\s(?:[А-Г]\s)?$/u;
// A В behind them is that of volts.
const VALUE_BEHIND = /^\s(?:[АБГ]\s)?\d{2,5}(?![\d.,])/u;
const GROUP = /\s[А-Г]\s/u;
const BEHIND_TYPE: readonly Need[] = ['type-before', 'whole-word'];

/** Whether volts without a word stand between a type and the value, with the letter of its group beside them. */
const isBehindType = ({ marking: { text } }: Scan, at: number, end: number): boolean => {
  const [before, behind] = [text.slice(0, at), text.slice(end)];
  return (
    STYLE_BEFORE.test(before) &&
    VALUE_BEHIND.test(behind) &&
    GROUP.test(before) !== GROUP.test(behind)
  );
};

/** Behind a gap three figures are volts where a series of tantalum is named: `TAP 106M 016`. */
const BEHIND_GAP: readonly Need[] = ['after-tolerance', 'type-before'];

const isApart = ({ marking }: Scan, at: number, stands: Stands): boolean =>
  stands === 'behind-tolerance' && isFigure(marking.text.charAt(at)) && wordBegins(marking, at);

/** What a code must have about it where it stands. */
const needsOf = (scan: Scan, at: number, stands: Stands, end: number): readonly Need[] => {
  if (isApart(scan, at, stands)) return BEHIND_GAP;
  return stands === 'behind-value' && isBehindType(scan, at, end)
    ? BEHIND_TYPE
    : whereCodesStand[stands].needs;
};

/** A code as it is written, with a comma for its point as well: `6,3`. */
const writtenWays = (code: string): string[] => [...new Set([code, code.replace('.', ',')])];

/** The voltage codes as words to be found. */
export const voltageCodeItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => {
  const schemes = new Map(tables.voltageSchemes.map(({ id, stands }) => [id, stands]));
  return tables.voltageCodes.flatMap((row): [word: string, item: Item][] => {
    const stands = schemes.get(row.scheme);
    if (stands === undefined) return [];
    const place = whereCodesStand[stands];
    const volts = voltsOf(row);
    const meaning: Meaning = {
      slot: voltageSlot(row.kind),
      content: { says: 'voltage', volts, kind: kindOf(row.kind), rated: true },
      bodies: bodies.bitsOf(row.bodies),
      origins: origins.bitsOf(row.origins),
      types: [],
      means: () => `rated ${sayVolts(volts, row.kind)}`,
      source: row.source,
    };
    const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined =>
      !endsFraction(scan, at, found.end) && mayStand(scan, at, stands, found)
        ? {
            at,
            end: found.end,
            meaning,
            weight:
              weightOf(place.weights, row.use) +
              caseCost(scan, at, found) +
              found.cost +
              (isPointOfValue(scan, found.end) ? weights.voltageCodeForPoint : 0) +
              (stands === 'beside' ? besideFigures(scan, at, found.end) : 0) +
              (madeUp(found.assumed) > 0 ? weights.completedVoltage : 0) +
              (stands === 'before-figures' && isFigure(scan.marking.text.charAt(at))
                ? weights.figureForLetter
                : 0),
            needs: needsOf(scan, at, stands, found.end),
            assumed: found.assumed,
          }
        : undefined;
    const item: Item = { kind: 'word', take };
    return writtenWays(row.code).map((code) => [code, item]);
  });
};
