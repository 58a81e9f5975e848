import { fail, ok } from '../result.ts';
import type { Result } from '../result.ts';
import { toSi } from './decimal.ts';
import { exactly } from './range.ts';
import type { Range } from './range.ts';
import { scanNumber } from './scan-number.ts';
import type { ScannedNumber } from './scan-number.ts';
import { findTolerance } from './tolerance.ts';
import type { Tolerance } from './tolerance.ts';
import type { Scale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { findUnit, otherKind, pointLetters, scaleOf } from './unit-words.ts';

/** A number as written, with its unit where it has one. */
interface Part {
  at: number;
  number: ScannedNumber;
  scale?: Scale;
  end: number;
}

/** Nobody writes a quantity longer than this; what is longer was pasted by mistake. */
const LONGEST = 200;

/** One character for every way of writing the same thing; length and indices stay the same. */
const plain = (text: string): string =>
  text
    .replace(/[\u00a0\u2000-\u200a\u202f\t\r\n]/gu, ' ')
    .replace(/\u03bc/gu, 'µ')
    .replace(/\u2126/gu, 'Ω')
    .replace(/º/gu, '°')
    .replace(/[\u2212\u2011\u2010\ufe63\uff0d]/gu, '-')
    .replace(/\u2044|\u2215/gu, '/');

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const skipSpaces = (text: string, from: number): number => {
  let index = from;
  while (text.charAt(index) === ' ') index += 1;
  return index;
};

/** What stands at an index where a unit, or nothing, was expected. */
const strayText = (text: string, at: number, unit: Unit): Result<never> => {
  const { kind, suggest } = UNIT_FACTS[unit];
  const rest = text.slice(at).trimEnd();
  if (/^[.,]?\d/u.test(rest))
    return fail('There are two numbers here; write one, or a range such as 10..20.', at);
  const word = /^[^\s\d+±…–—<>-]+/u.exec(rest)?.[0];
  if (word === undefined || !/[\p{L}°%‰℃"″×]/u.test(word))
    return fail(`“${rest}” cannot be understood here.`, at);
  const other = otherKind(word, unit);
  if (other !== undefined) return fail(`That is ${UNIT_FACTS[other].kind}; ${kind} is wanted.`, at);
  const bare = kind.replace(/^an? /u, '');
  return fail(`“${word}” is not a unit of ${bare}; write ${suggest}.`, at);
};

const readPart = (text: string, from: number, unit: Unit): Result<Part> => {
  const at = skipSpaces(text, from);
  const number = scanNumber(text, at, pointLetters(unit));
  if (number === undefined)
    return text.slice(at).trim() === ''
      ? fail('A number is missing here.', at)
      : fail(`There is no number in “${text.slice(at).trim()}”.`, at);
  const unitAt = skipSpaces(text, number.end);
  const found = findUnit(text.slice(unitAt), unit);
  if (number.letter !== undefined) {
    const scale = scaleOf(number.letter, unit);
    if (scale === undefined) return strayText(text, number.end - 1, unit);
    if (found === undefined) return ok({ at, number, scale, end: number.end });
    // Behind `4n7` only the unit itself may follow, without a second prefix.
    if (found.scale.power !== 0 || found.scale.factor !== undefined)
      return fail('There are two units here; write one.', unitAt);
    return ok({ at, number, scale, end: unitAt + found.length });
  }
  return found === undefined
    ? ok({ at, number, end: number.end })
    : ok({ at, number, scale: found.scale, end: unitAt + found.length });
};

/**
 * The unit of capacitances written without one, by the habit of the trade: below one they are in
 * microfarad (`.01`), whole numbers from one up in picofarad (`470`). Scientific notation is SI.
 */
const usualCapacitance = (parts: readonly Part[]): Scale | undefined => {
  if (parts.every(({ number }) => number.scientific)) return { power: 0 };
  if (parts.some(({ number }) => number.scientific)) return undefined;
  const values = parts.map(({ number }) => Number(number.digits));
  if (values.every((value) => value < 1)) return { power: -6 };
  const whole = parts.every(({ number }) => /^\d+$/u.test(number.digits));
  return whole && values.every((value) => value === 0 || value >= 1) ? { power: -12 } : undefined;
};

/** Each part's scale; a part without a unit takes that of the next part that has one. */
const scalesOf = (
  parts: readonly Part[],
  unit: Unit,
  bare: string | undefined,
): Result<Scale[]> => {
  const scales: Scale[] = [];
  for (const [index, part] of parts.entries()) {
    const written = parts.slice(index).find(({ scale }) => scale !== undefined)?.scale;
    const usual = bare ?? UNIT_FACTS[unit].usual;
    const scale =
      written ??
      // Behind a part with a unit, a part without one can only mean the same: `10 nF..20`.
      parts.slice(0, index).findLast((earlier) => earlier.scale !== undefined)?.scale ??
      (usual === undefined ? usualCapacitance(parts) : scaleOf(usual, unit));
    if (scale === undefined) {
      const { suggest } = UNIT_FACTS[unit];
      return fail(`The unit is missing; write ${suggest} behind the number.`, part.end);
    }
    scales.push(scale);
  }
  return ok(scales);
};

const valueOf = ({ number, at }: Part, scale: Scale, unit: Unit): Result<number> => {
  const digits = `${number.negative ? '-' : ''}${number.digits}`;
  const { power, factor = 1, offset = 0 } = scale;
  // The prefix goes into the exponent, so that 4n7, 4.7n and 4700 pF are the same number.
  const value = Number(`${digits}e${String(number.exponent + power)}`) * factor + offset;
  const nothing = /^[0.]*$/u.test(number.digits);
  if (!Number.isFinite(value)) return fail('That number is too large.', at);
  if (value === 0 && !nothing && offset === 0) return fail('That number is too small.', at);
  if (value < 0 && !UNIT_FACTS[unit].signed)
    return fail(`${capital(UNIT_FACTS[unit].kind)} cannot be below zero.`, at);
  return ok(value === 0 ? 0 : value);
};

/** A range from its two ends, or from its lowest, typical and highest value, in either order. */
const rangeOf = (values: readonly number[], parts: readonly Part[]): Result<Range> => {
  const [first = 0, second = first, third = second] = values;
  if (values.length === 1) return ok(exactly(first));
  const last = values.length === 2 ? second : third;
  const min = Math.min(first, last);
  const max = Math.max(first, last);
  if (values.length === 2) {
    const sum = min + max;
    return ok({ min, typ: Number.isFinite(sum) ? sum / 2 : min / 2 + max / 2, max });
  }
  if (second < min || second > max)
    return fail('The middle figure must lie between the two outer ones.', parts[1]?.at);
  return ok({ min, typ: second, max });
};

const spread = (
  nominal: number,
  { minus, plus, at }: Tolerance,
  scale: Scale,
  unit: Unit,
): Result<Range> => {
  const ends: number[] = [];
  for (const [deviation, sign] of [
    [minus, -1],
    [plus, 1],
  ] as const) {
    // A share of the value, or a difference in the unit itself, where a zero point has no say.
    const step =
      deviation.kind === 'share'
        ? deviation.value * Math.abs(nominal)
        : toSi(deviation.value, { ...(deviation.scale ?? scale), offset: 0 });
    ends.push(nominal + sign * step);
  }
  const [min = nominal, max = nominal] = ends;
  if (!Number.isFinite(min) || !Number.isFinite(max)) return fail('That number is too large.', at);
  if (min < 0 && !UNIT_FACTS[unit].signed)
    return fail(
      `With this tolerance it could be below zero; ${UNIT_FACTS[unit].kind} cannot be.`,
      at,
    );
  return ok({ min, typ: nominal, max });
};

const SEPARATOR = /^\s*(?:\.{2,3}|…|–|—|‒|-|to(?![\p{L}]))/iu;

/** `<5`: from zero up to a limit. */
const upTo = (range: Range, unit: Unit, at: number): Result<Range> => {
  if (range.min !== range.max) return fail('“<” goes before one number, not before a range.', at);
  if (range.max < 0 || unit === 'degC')
    return fail('“<” gives no lower end here; write a range such as -40..85.', at);
  return ok({ min: 0, typ: range.max / 2, max: range.max });
};

const readQuantity = (text: string, unit: Unit, bare: string | undefined): Result<Range> => {
  if (text.length > LONGEST) return fail('That is too long for a quantity.', LONGEST);
  const start = skipSpaces(text, 0);
  if (start === text.length) return fail('Nothing is written here; write a number.', 0);
  if (/^[>≥]/u.test(text.slice(start)))
    return fail('“>” gives no upper end; write a range such as 10..20.', start);
  const limit = /^(?:<=?|≤)/u.exec(text.slice(start))?.[0].length ?? 0;
  const about = /^[~≈]/u.exec(text.slice(start))?.[0].length ?? 0;
  let index = skipSpaces(text, start + limit + about);

  const alone = findTolerance(text, index, unit);
  if (alone !== undefined) {
    if (!alone.ok) return alone;
    if (alone.value.end < text.trimEnd().length) return strayText(text, alone.value.end, unit);
    return toleranceAlone(alone.value, unit, bare);
  }

  const parts: Part[] = [];
  let tolerance: Tolerance | undefined;
  for (;;) {
    const part = readPart(text, index, unit);
    if (!part.ok) return part;
    parts.push(part.value);
    index = part.value.end;
    const found = parts.length === 1 ? findTolerance(text, index, unit) : undefined;
    if (found !== undefined) {
      if (!found.ok) return found;
      tolerance = found.value;
      index = tolerance.end;
      break;
    }
    const separator = SEPARATOR.exec(text.slice(index));
    if (separator === null || parts.length === 3) break;
    // Three figures are lowest, typical and highest; only dots can part them.
    if (parts.length === 2 && !/^\s*(?:\.|…)/u.test(separator[0])) break;
    index += separator[0].length;
  }
  const rest = skipSpaces(text, index);
  if (rest < text.length) return strayText(text, rest, unit);

  const named = tolerance?.scale;
  const [only] = parts;
  // `10 ±1 V`: the unit behind the tolerance is that of the number as well.
  if (named !== undefined && only !== undefined && only.scale === undefined) only.scale = named;
  const scales = scalesOf(parts, unit, bare);
  if (!scales.ok) return scales;
  const values: number[] = [];
  for (const [position, part] of parts.entries()) {
    const value = valueOf(part, scales.value[position] as Scale, unit);
    if (!value.ok) return value;
    values.push(value.value);
  }
  if (tolerance !== undefined) {
    if (tolerance.bare && only?.scale !== undefined)
      return fail('Is that a percentage or an amount? Write its unit too.', tolerance.at);
    return spread(values[0] as number, tolerance, scales.value[0] as Scale, unit);
  }
  const range = rangeOf(values, parts);
  return range.ok && limit > 0 ? upTo(range.value, unit, start) : range;
};

/** `±10 %` with nothing before it is a range about zero, where the unit allows one. */
const toleranceAlone = (
  tolerance: Tolerance,
  unit: Unit,
  bare: string | undefined,
): Result<Range> => {
  if (!UNIT_FACTS[unit].signed)
    return fail('The number that this tolerance belongs to is missing.', tolerance.at);
  const usual = scaleOf(bare ?? UNIT_FACTS[unit].usual ?? '', unit) ?? { power: 0 };
  for (const deviation of [tolerance.minus, tolerance.plus])
    if (deviation.kind === 'share')
      return fail('The number that this tolerance belongs to is missing.', tolerance.at);
  return spread(0, tolerance, usual, unit);
};

/**
 * Reads what people write for a quantity, in SI units. Never throws.
 *
 * Understood are single values (`4n7`, `4,7 nF`, `0.01 MFD`, `47 kohm`, `-40`), values with a
 * tolerance (`10 nF ±5 %`, `100 nF +80/-20 %`, `4.7 pF ±0.5 pF`), ranges (`10–20 V`, `10..20`,
 * `10 to 20 V`), lowest, typical and highest value (`10..12..20`) and upper limits (`<5`, from
 * zero). The typical value of a range is its arithmetic middle, that of a tolerance the value
 * itself. About the ways of grouping digits see `scanNumber`.
 *
 * A number without a unit is in the unit usual for its kind (V, Ω, Hz, s, °C, %, mm, ppm/K, nH,
 * V/µs …), or in `bare` where that is given. A bare capacitance is in microfarad below one and in
 * picofarad if a whole number, in farad in scientific notation; otherwise its unit must be written.
 *
 * @param unit the SI unit that is wanted, which decides what the letters mean
 * @param bare the unit of numbers without one, as people would write it: `years`, `mV`
 * @returns the range, or one sentence about what is wrong and where
 */
export const parseQuantity = (text: string, unit: Unit, bare?: string): Result<Range> =>
  readQuantity(plain(text), unit, bare);
