import {
  isAsWritten,
  isFigure,
  isLetter,
  madeUp,
  othersAt,
  type Assumed,
  type Marking,
} from '../text/text.ts';
import { weights } from '../meanings/weights.ts';

/** A number as it is written in a marking. */
export interface WrittenNumber {
  end: number;
  value: number;
  /** The figures alone, without leading and closing noughts: what tells its place in a series. */
  figures: string;
  /** All figures that are written, without the point. */
  digits: string;
  /** Whether a nought stands first without a point behind it, as in `010`. */
  padded: boolean;
  /** Whether it has a decimal point or comma. */
  decimal: boolean;
  /** Whether its thousands are set apart, as in `10 000`. */
  grouped: boolean;
  assumed: readonly Assumed[];
  /** What the assumptions cost. */
  cost: number;
}

/** Figures without anything between them. */
export interface FigureRun {
  end: number;
  digits: string;
  assumed: readonly Assumed[];
  cost: number;
}

/** Figures of one number. */
const MOST_FIGURES = 7;
const MOST_DECIMALS = 6;
const MOST_GROUPED = 9;

/** Figures without leading and closing noughts. */
export const significant = (digits: string): string => {
  let [from, to] = [0, digits.length];
  while (from < to && digits.charAt(from) === '0') from += 1;
  while (to > from && digits.charAt(to - 1) === '0') to -= 1;
  return digits.slice(from, to);
};

const FIGURES = '0123456789';

/** The ways to take one more character of a run for a figure. */
const oneMore = (marking: Marking, run: FigureRun): FigureRun[] => {
  const at = run.end;
  const character = marking.text.charAt(at);
  const more = (as: string, why?: Assumed['why'], cost = 0): FigureRun => ({
    end: at + 1,
    digits: run.digits + as,
    assumed: why === undefined ? run.assumed : [...run.assumed, { at, as, why }],
    cost: run.cost + cost,
  });
  if (marking.worn[at])
    return madeUp(run.assumed) < marking.mostMadeUp
      ? FIGURES.split('').map((figure) => more(figure, 'worn', weights.wornFigure))
      : [];
  const plain = isFigure(character) ? [more(character)] : [];
  if (run.assumed.length - madeUp(run.assumed) >= marking.mostLookAlike) return plain;
  const others = othersAt(marking, at)
    .filter(({ as }) => isFigure(as))
    .map(({ as, cost }) => more(as, 'look-alike', cost));
  return [...plain, ...others];
};

const NO_RUN: FigureRun[] = [];

/** The run of figures at an index; nothing where it or what ends it may be others than written. */
const plainRun = (marking: Marking, at: number, most: number): FigureRun[] | undefined => {
  let end = at;
  while (isFigure(marking.text.charAt(end)) && isAsWritten(marking, end)) end += 1;
  if (!isAsWritten(marking, end)) return undefined;
  return end === at || end - at > most
    ? NO_RUN
    : [{ end, digits: marking.text.slice(at, end), assumed: [], cost: 0 }];
};

/**
 * Every run of figures at an index that does not end before a further plain figure, of so many at
 * most; where a character is worn, every figure is tried.
 */
export const runsAt = (marking: Marking, at: number, most = MOST_FIGURES): FigureRun[] => {
  const plain = plainRun(marking, at, most);
  if (plain !== undefined) return plain;
  let growing: FigureRun[] = [{ end: at, digits: '', assumed: [], cost: 0 }];
  const runs: FigureRun[] = [];
  while (growing.length > 0) {
    growing = growing.flatMap((run) => oneMore(marking, run));
    runs.push(...growing.filter(({ end }) => !isFigure(marking.text.charAt(end))));
    growing = growing.filter(({ digits }) => digits.length < most);
  }
  return runs;
};

/** Whether at least one figure is as it is written. */
const isSupported = ({ digits, assumed }: WrittenNumber): boolean => assumed.length < digits.length;

const wholeOf = ({ end, digits, assumed, cost }: FigureRun): WrittenNumber => ({
  end,
  value: Number(digits),
  figures: significant(digits),
  digits,
  padded: digits.startsWith('0'),
  decimal: false,
  grouped: false,
  assumed,
  cost,
});

const THOUSANDS = 3;

/** What three decimals cost that end in a nought, as in `10,000`. */
const noughtsCost = (whole: string, decimals: string): number =>
  significant(whole) !== '' && decimals.length === THOUSANDS && decimals.endsWith('0')
    ? weights.noughtsBehindPoint
    : 0;

const decimalOf = (before: FigureRun | undefined, after: FigureRun): WrittenNumber => {
  const whole = before?.digits ?? '';
  const digits = whole + after.digits;
  return {
    end: after.end,
    value: Number(`${whole === '' ? '0' : whole}.${after.digits}`),
    figures: significant(digits),
    digits,
    padded: false,
    decimal: true,
    grouped: false,
    assumed: before === undefined ? after.assumed : [...before.assumed, ...after.assumed],
    cost: (before?.cost ?? 0) + after.cost + noughtsCost(whole, after.digits),
  };
};

/** Whether a character is a decimal point: a point, a comma, or the raised point of old British parts. */
const isPoint = (character: string): boolean =>
  character === '.' || character === ',' || character === '·';

const decimalsAt = (
  marking: Marking,
  at: number,
  wholes: readonly FigureRun[],
): WrittenNumber[] => {
  // A comma at once behind a letter parts two words, as in `47uf,450v`.
  if (marking.text.charAt(at) === ',' && isLetter(marking.text.charAt(at - 1))) return [];
  const starts = isPoint(marking.text.charAt(at)) ? [undefined] : wholes;
  return starts.flatMap((before) => {
    const point = before?.end ?? at;
    if (!isPoint(marking.text.charAt(point))) return [];
    return runsAt(marking, point + 1, MOST_DECIMALS).map((after) => decimalOf(before, after));
  });
};

const GROUPED = /[1-9]\d{0,2}(?:[ \u00A0\u2009\u202F,.']\d{3})+(?!\d)/y;

/** Whether figures end a style, as in `KSO-2 500V`: what follows them is another number. */
const endsStyle = ({ text }: Marking, at: number): boolean =>
  text.charAt(at - 1) === '-' && isLetter(text.charAt(at - 2));

const groupedAt = (marking: Marking, at: number): WrittenNumber[] => {
  if (endsStyle(marking, at)) return [];
  GROUPED.lastIndex = at;
  const grouped = GROUPED.exec(marking.text)?.[0];
  const digits = grouped?.replace(/\D/g, '') ?? '';
  if (grouped === undefined || digits.length > MOST_GROUPED) return [];
  const run = { end: at + grouped.length, digits, assumed: [], cost: 0 };
  return [{ ...wholeOf(run), padded: false, grouped: true }];
};

const NO_NUMBER: WrittenNumber[] = [];

/** Every way to read a number at an index; none where a longer run of figures would be cut. */
export const numbersAt = (marking: Marking, at: number): WrittenNumber[] => {
  const first = marking.text.charAt(at);
  if (isFigure(marking.text.charAt(at - 1))) return [];
  if (!isFigure(first) && !isPoint(first) && isAsWritten(marking, at)) return NO_NUMBER;
  const wholes = runsAt(marking, at);
  const numbers = [
    ...wholes.map(wholeOf),
    ...decimalsAt(marking, at, wholes),
    ...(isFigure(first) ? groupedAt(marking, at) : []),
  ];
  return marking.plain ? numbers : numbers.filter(isSupported);
};
