import { fail, ok, type Result } from '../result.ts';
import { toSi } from './decimal.ts';
import { readPart, strayText, type Part } from './part.ts';
import { scalesOf, valueOf } from './part-value.ts';
import type { Range } from './range.ts';
import { plainText, skipSpaces } from './text.ts';
import { findTolerance, type Tolerance } from './tolerance.ts';
import type { Scale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { scaleOf } from './unit-words.ts';

/** Nobody writes a quantity longer than this; what is longer was pasted by mistake. */
const LONGEST = 200;

/** A range from its two ends, or from its lowest, typical and highest value, in either order. */
const rangeOf = (values: readonly number[], parts: readonly Part[]): Result<Range> => {
  const [first = 0, second = first, last = second] = values;
  const min = Math.min(first, last);
  const max = Math.max(first, last);
  if (values.length < 3) {
    const sum = min + max;
    return ok({ min, typ: Number.isFinite(sum) ? sum / 2 : min / 2 + max / 2, max });
  }
  if (second < min || second > max)
    return fail('The middle figure must lie between the two outer ones.', parts[1]?.at);
  return ok({ min, typ: second, max });
};

/** The range that a tolerance makes of a value. */
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

/** `<5`: from zero up to a limit. */
const upTo = (range: Range, unit: Unit, at: number): Result<Range> => {
  if (range.min !== range.max) return fail('“<” goes before one number, not before a range.', at);
  if (range.max < 0 || unit === 'degC')
    return fail('“<” gives no lower end here; write a range such as -40..85.', at);
  return ok({ min: 0, typ: range.max / 2, max: range.max });
};

/** What stands before a range's second or third figure. */
const SEPARATOR = /^\s*(?:\.{2,3}|…|–|—|‒|-|to(?![\p{L}]))/iu;

/** Three figures are lowest, typical and highest; only dots can part them. */
const DOTS = /^\s*(?:\.|…)/u;

/** The figures of a range up to its end, the first of which is read already. */
const readRange = (text: string, first: Part, unit: Unit): Result<Part[]> => {
  const parts = [first];
  let index = first.end;
  while (parts.length < 3) {
    const separator = SEPARATOR.exec(text.slice(index))?.[0];
    if (separator === undefined || (parts.length === 2 && !DOTS.test(separator))) break;
    const part = readPart(text, index + separator.length, unit);
    if (!part.ok) return part;
    parts.push(part.value);
    index = part.value.end;
  }
  return ok(parts);
};

const valuesOf = (
  parts: readonly Part[],
  scales: readonly Scale[],
  unit: Unit,
): Result<number[]> => {
  const values: number[] = [];
  for (const [position, part] of parts.entries()) {
    const value = valueOf(part, scales[position] as Scale, unit);
    if (!value.ok) return value;
    values.push(value.value);
  }
  return ok(values);
};

/** What is read, and what for. */
interface Written {
  text: string;
  /** The SI unit that is wanted. */
  unit: Unit;
  /** That of numbers without one. */
  bare: string | undefined;
}

/** `10–20 V`, `4n7`, `10..12..20` from an index to the end of the text. */
const untoleranced = ({ text, unit, bare }: Written, first: Part): Result<Range> => {
  const parts = readRange(text, first, unit);
  if (!parts.ok) return parts;
  const fault = leftOver(text, parts.value.at(-1)?.end ?? 0, unit);
  if (fault !== undefined) return fault;
  const scales = scalesOf(parts.value, unit, bare);
  if (!scales.ok) return scales;
  const values = valuesOf(parts.value, scales.value, unit);
  return values.ok ? rangeOf(values.value, parts.value) : values;
};

const leftOver = (text: string, end: number, unit: Unit): Result<never> | undefined => {
  const rest = skipSpaces(text, end);
  return rest < text.length ? strayText(text, rest, unit) : undefined;
};

/** `10 nF ±5 %`: a part with the tolerance behind it. */
const toleranced = (
  { text, unit, bare }: Written,
  part: Part,
  tolerance: Tolerance,
): Result<Range> => {
  const fault = leftOver(text, tolerance.end, unit);
  if (fault !== undefined) return fault;
  if (tolerance.bare && part.scale !== undefined)
    return fail('Is that a percentage or an amount? Write its unit too.', tolerance.at);
  // `10 ±1 V`: the unit behind the tolerance is that of the number as well.
  const scale = part.scale ?? tolerance.scale;
  const named = scale === undefined ? part : { ...part, scale };
  const scales = scalesOf([named], unit, bare);
  if (!scales.ok) return scales;
  const values = valuesOf([named], scales.value, unit);
  if (!values.ok) return values;
  return spread(values.value[0] as number, tolerance, scales.value[0] as Scale, unit);
};

/** `±10 %` with nothing before it is a range about zero, where the unit allows one. */
const aboutZero = ({ text, unit, bare }: Written, tolerance: Tolerance): Result<Range> => {
  const fault = leftOver(text, tolerance.end, unit);
  if (fault !== undefined) return fault;
  const isShare = tolerance.minus.kind === 'share' || tolerance.plus.kind === 'share';
  if (!UNIT_FACTS[unit].signed || isShare)
    return fail('The number that this tolerance belongs to is missing.', tolerance.at);
  const usual = scaleOf(bare ?? UNIT_FACTS[unit].usual ?? '', unit) ?? { power: 0 };
  return spread(0, tolerance, usual, unit);
};

const readFigures = (written: Written, from: number): Result<Range> => {
  const { text, unit } = written;
  const alone = findTolerance(text, from, unit);
  if (alone !== undefined) return alone.ok ? aboutZero(written, alone.value) : alone;
  const first = readPart(text, from, unit);
  if (!first.ok) return first;
  const tolerance = findTolerance(text, first.value.end, unit);
  if (tolerance === undefined) return untoleranced(written, first.value);
  return tolerance.ok ? toleranced(written, first.value, tolerance.value) : tolerance;
};

/** Before a figure: an upper limit, or a sign that it is only about right, which has no width. */
const LIMIT = /^(?:<=?|≤)/u;
const ABOUT = /^[~≈]/u;

const readQuantity = (written: Written): Result<Range> => {
  const { text, unit } = written;
  if (text.length > LONGEST) return fail('That is too long for a quantity.', LONGEST);
  const start = skipSpaces(text, 0);
  const rest = text.slice(start);
  if (rest === '') return fail('Nothing is written here; write a number.', 0);
  if (/^[>≥]/u.test(rest))
    return fail('“>” gives no upper end; write a range such as 10..20.', start);
  const limit = LIMIT.exec(rest)?.[0];
  const about = ABOUT.exec(rest)?.[0];
  const range = readFigures(written, start + (limit ?? about ?? '').length);
  return range.ok && limit !== undefined ? upTo(range.value, unit, start) : range;
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
  readQuantity({ text: plainText(text), unit, bare });
