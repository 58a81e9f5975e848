import { fail, ok, type Result } from '../result.ts';
import { scanNumber } from './scan-number.ts';
import type { Scale, Unit } from './unit.ts';
import { findUnit } from './unit-words.ts';

/** How far a value may be off to one side. */
export type Deviation =
  { kind: 'share'; value: number } | { kind: 'amount'; value: number; scale?: Scale };

/** The tolerance behind a value, as written. */
export interface Tolerance {
  minus: Deviation;
  plus: Deviation;
  /** The unit of the quantity itself where the tolerance is written in it. */
  scale?: Scale;
  /** True where no unit stands behind the tolerance. */
  bare: boolean;
  at: number;
  end: number;
}

interface Side {
  value: number;
  scale?: Scale;
  /** Set where the deviation is a share of the value. */
  share?: number;
  end: number;
}

const BOTH = /^\s*\(?\s*(?:±|\+\s*\/\s*-|\+-)\s*/u;
const ONE = /^\s*\(?\s*([+-])\s*(?=[\d.,])/u;
const BETWEEN = /^\s*[/,;]?\s*([+-])\s*(?=[\d.,])/u;

/** Units that are shares themselves: ±1 % of them are points, not a share of the value. */
const IS_SHARE: ReadonlySet<Unit> = new Set(['fraction', 'ratio']);

const readSide = (text: string, from: number, unit: Unit): Side | undefined => {
  const number = scanNumber(text, from, '');
  if (number === undefined || number.negative) return undefined;
  const value = Number(`${number.digits}e${String(number.exponent)}`);
  const gap = /^\s*/u.exec(text.slice(number.end))?.[0].length ?? 0;
  const rest = text.slice(number.end + gap);
  // A difference of temperatures may be written in kelvin beside a temperature in °C.
  const own = findUnit(rest, unit) ?? (unit === 'degC' ? findUnit(rest, 'K') : undefined);
  if (own !== undefined) return { value, scale: own.scale, end: number.end + gap + own.length };
  const share = IS_SHARE.has(unit) ? undefined : findUnit(rest, 'fraction');
  return share === undefined
    ? { value, end: number.end }
    : { value, share: share.scale.power, end: number.end + gap + share.length };
};

const deviation = ({ value, scale, share }: Side): Deviation => {
  if (share !== undefined)
    return { kind: 'share', value: Number(`${String(value)}e${String(share)}`) };
  return scale === undefined ? { kind: 'amount', value } : { kind: 'amount', value, scale };
};

const closing = (text: string, end: number): number =>
  end + (/^\s*\)/u.exec(text.slice(end))?.[0].length ?? 0);

const tolerance = (
  minus: Side,
  plus: Side,
  at: number,
  end: number,
  unit: Unit,
): Result<Tolerance> => {
  if ((minus.share !== undefined || plus.share !== undefined) && unit === 'degC')
    return fail('A percentage of a temperature in °C means nothing; write ±5 K.', at);
  const scale = plus.scale ?? minus.scale;
  const bare = scale === undefined && plus.share === undefined;
  const common = { minus: deviation(minus), plus: deviation(plus), bare, at, end };
  return ok(scale === undefined ? common : { ...common, scale });
};

/** A side written without a unit takes that of the other: `+80/-20 %`. */
const borrow = (side: Side, other: Side): Side =>
  side.scale !== undefined || side.share !== undefined
    ? side
    : {
        ...side,
        ...(other.scale === undefined ? {} : { scale: other.scale }),
        ...(other.share === undefined ? {} : { share: other.share }),
      };

/** `±5 %`, `+80/-20 %`, `±0.5 pF` at an index; nothing where no tolerance starts there. */
export const findTolerance = (
  text: string,
  from: number,
  unit: Unit,
): Result<Tolerance> | undefined => {
  const gap = /^\s*/u.exec(text.slice(from))?.[0].length ?? 0;
  const at = from + gap;
  const both = BOTH.exec(text.slice(from));
  if (both) {
    const side = readSide(text, from + both[0].length, unit);
    if (side === undefined) return fail('A number is missing behind “±”.', at);
    return tolerance(side, side, at, closing(text, side.end), unit);
  }
  const opening = ONE.exec(text.slice(from));
  if (!opening) return undefined;
  const first = readSide(text, from + opening[0].length, unit);
  if (first === undefined) return undefined;
  const middle = BETWEEN.exec(text.slice(first.end));
  if (middle?.[1] === undefined || middle[1] === opening[1]) return undefined;
  const second = readSide(text, first.end + middle[0].length, unit);
  if (second === undefined) return undefined;
  const [one, two] = [borrow(first, second), borrow(second, first)];
  const end = closing(text, second.end);
  return opening[1] === '+'
    ? tolerance(two, one, at, end, unit)
    : tolerance(one, two, at, end, unit);
};
