import { writtenAt, type Scan } from '../lexicon/scan.ts';
import { skipBlanks } from '../text/text.ts';
import { behindUnit } from './unit-behind.ts';

/** A number of a list, with the sign of its section before it, where there is one. */
interface Numbered {
  value: number;
  figures: string;
  symbol?: string | undefined;
  /** Whether a nought stands before it, as in dates. */
  padded?: boolean;
  end: number;
}

/** Numbers that stand for several values of one part, with what stands between them. */
export interface NumberList {
  numbers: Omit<Numbered, 'end'>[];
  /** `+`, `x`, or a sign that may as well mean something else. */
  sign: '+' | 'x' | 'stroke';
  end: number;
}

/** Sections of one can. */
const MOST_SECTIONS = 6;

const PLUS = '+&';
const STROKES = '/-–';
const TIMES = 'xX×';

/** The number at an index, as it is plainly written. */
export const plainNumberAt = (scan: Scan, at: number) =>
  writtenAt(scan, at).findLast(
    ({ grouped, assumed, figures }) => !grouped && assumed.length === 0 && figures !== '',
  );

/** The drawn sign of a section at an index, such as `▲`; its name in letters is a word by itself. */
const symbolAt = ({ lexicon, marking }: Scan, at: number): string | undefined => {
  const character = marking.text.charAt(at);
  // No letter or figure is a drawn sign.
  if (character <= '\u007f') return undefined;
  return lexicon.tables.sectionSymbols.find(({ sign }) => sign === character)?.symbol;
};

/** A number, with the sign of its section before it. */
const sectionAt = (scan: Scan, at: number): Numbered | undefined => {
  const symbol = symbolAt(scan, at);
  const from = symbol === undefined ? at : skipBlanks(scan.marking, at + 1);
  const number = plainNumberAt(scan, from);
  return number && { ...number, symbol };
};

/** `2x50`: as many sections as the first number says. */
const timesAt = (scan: Scan, at: number): NumberList | undefined => {
  const { text } = scan.marking;
  const count = Number(text.charAt(at));
  const sign = skipBlanks(scan.marking, at + 1);
  if (!(count >= 2 && count <= MOST_SECTIONS) || !TIMES.includes(text.charAt(sign) || ' '))
    return undefined;
  const number = plainNumberAt(scan, skipBlanks(scan.marking, sign + 1));
  if (number === undefined) return undefined;
  const { value, figures, end } = number;
  return { numbers: Array.from({ length: count }, () => ({ value, figures })), sign: 'x', end };
};

/** `16x16`: two sections alike, of more than there could be as many of. */
const TWINS = /(?<!\d)(\d{1,3})[xX×хХ]\1(?![\d.,]|\s?mm)/uy;

const twinsAt = (scan: Scan, at: number): NumberList[] => {
  TWINS.lastIndex = at;
  const [all, figures = ''] = TWINS.exec(scan.marking.text) ?? [];
  const first = plainNumberAt(scan, at);
  if (all === undefined || first === undefined || Number(figures) <= MOST_SECTIONS) return [];
  return [{ numbers: [first, first], sign: 'stroke', end: at + all.length }];
};

interface Joint {
  sign: NumberList['sign'];
  /** The stroke itself. */
  stroke?: string | undefined;
  end: number;
}

/** Dots between the ends of what can be set, as in `6...30 pF`. */
const DOTS = /(?:\.{2,3}|…)(?=\d)/y;

/** The sign that joins sections behind an index, of which the first has a drawn one or has not, and where it ends. */
const signBehind = (scan: Scan, at: number, isSigned: boolean): Joint | undefined => {
  const { text } = scan.marking;
  const touching = text.charAt(at) || ' ';
  if (STROKES.includes(touching)) return { sign: 'stroke', stroke: touching, end: at + 1 };
  DOTS.lastIndex = at;
  const dots = DOTS.exec(text)?.[0];
  if (dots !== undefined) return { sign: 'stroke', stroke: '…', end: at + dots.length };
  const spaced = skipBlanks(scan.marking, at);
  if (PLUS.includes(text.charAt(spaced) || ' '))
    return { sign: '+', end: skipBlanks(scan.marking, spaced + 1) };
  // The drawn sign of the next section parts it from this one: `□ 40 △ 20`.
  return isSigned && symbolAt(scan, spaced) !== undefined ? { sign: '+', end: spaced } : undefined;
};

/**
 * `16+16+8`, `40/40`, `16 µF + 16 µF`, `▲40-■20`, `▲40 ■20`; where strokes join them, the last may be the
 * voltage, as in `8-8-450`, so that they stand without it as well.
 */
const joinedAt = (scan: Scan, at: number): NumberList[] => {
  const first = sectionAt(scan, at);
  if (first === undefined) return [];
  const numbers = [first];
  let sign: NumberList['sign'] = '+';
  let stroke: string | undefined;
  for (;;) {
    const behind = behindUnit(scan, numbers.at(-1)?.end ?? at);
    const joint = signBehind(scan, behind, first.symbol !== undefined);
    const next = joint === undefined ? undefined : sectionAt(scan, joint.end);
    if (joint === undefined || next === undefined || numbers.length >= MOST_SECTIONS) break;
    // Behind values with a plus, or with another stroke, a stroke parts the voltage from them.
    if (numbers.length > 1 && (joint.sign !== sign || joint.stroke !== stroke)) break;
    ({ sign, stroke } = joint);
    numbers.push(next);
  }
  const list = (some: Numbered[]): NumberList => ({
    numbers: some,
    sign,
    end: some.at(-1)?.end ?? at,
  });
  const shorter = sign === 'stroke' && numbers.length > 2 ? [list(numbers.slice(0, -1))] : [];
  return numbers.length > 1 ? [list(numbers), ...shorter] : [];
};

/** The lists of numbers that may begin at an index. */
export const listsAt = (scan: Scan, at: number): NumberList[] => {
  const many = timesAt(scan, at);
  return [...(many === undefined ? [] : [many]), ...twinsAt(scan, at), ...joinedAt(scan, at)];
};
