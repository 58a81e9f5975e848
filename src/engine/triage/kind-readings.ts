import type { KindTriageRow } from '../../schemas/triage.ts';
import type { Tolerance } from '../assessment/parts.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { knownRange } from '../known-range.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { FLOAT_ERROR } from '../quantities/within.ts';

/** What is known of an old part that goes by ohms; all of it may be missing. */
export interface KindEvidence {
  /** Measured, ohm; a meter that shows more than its range gives no upper end. */
  resistance?: Range | undefined;
}

/** Such a part as it is marked. */
export interface MarkedKind {
  type: TypeId;
  /** ohm; nothing where nobody gave it. */
  value?: number | undefined;
  tolerance?: Tolerance | undefined;
}

/** A reading beside the mark that it is judged by. */
interface Beside {
  read: Range;
  value: number;
  tolerance: Tolerance;
  /** Change of its type in a thousand hours at full load, fraction; nothing where none is known. */
  drift: number | undefined;
}

const above = ({ value, tolerance }: Beside, ohm: number): number =>
  (ohm / value - 1) / tolerance.plus;
const below = ({ value, tolerance }: Beside, ohm: number): number =>
  (1 - ohm / value) / tolerance.minus;

/** How each kind of rule sees one end of a reading; nothing where it cannot. */
const SEEN: Readonly<
  Record<KindTriageRow['reading'], (beside: Beside, ohm: number) => number | undefined>
> = {
  none: () => undefined,
  taken: () => 0,
  mark: ({ value }, ohm) => ohm / value,
  'above-tolerance': above,
  'below-tolerance': below,
  'off-tolerance': (beside, ohm) => Math.max(above(beside, ohm), below(beside, ohm)),
  drift: ({ value, tolerance, drift }, ohm) =>
    drift === undefined ? undefined : (ohm / value / (1 + tolerance.plus) - 1) / drift,
};

/** Whether a rule holds at both ends of a reading: one that reaches over its limit proves nothing. */
const holds = (
  { reading, comparison, limit = NaN }: KindTriageRow,
  factor: number,
  beside: Beside,
) => {
  const ends = [beside.read.min, beside.read.max].map((ohm) => SEEN[reading](beside, ohm));
  return ends.every((end) => {
    if (end === undefined) return false;
    if (comparison === 'any') return true;
    // A reading at the very end of a tolerance is within it.
    const over = end - limit * factor;
    return comparison === 'above' ? over > FLOAT_ERROR : over <= FLOAT_ERROR;
  });
};

const besideMark = (
  { kindTypes, knowledge }: Catalogue,
  { type, value, tolerance }: MarkedKind,
  { resistance: read }: KindEvidence,
): Beside | undefined => {
  const isMarked = kindTypes[type] !== undefined && value !== undefined && value > 0;
  if (!isMarked || read === undefined || tolerance === undefined) return undefined;
  if (tolerance.plus <= 0 || tolerance.minus <= 0) return undefined;
  const drift = knownRange(knowledge[type]?.['full-load-change'])?.max;
  return { read, value, tolerance, drift };
};

/** A tolerance of 1 % shows in the fourth digit. */
const DIGITS = 4;

const ohms = (ohm: number): string => formatQuantity(exactly(ohm), 'ohm', { digits: DIGITS });

const readInWords = ({ min, typ, max }: Range): string =>
  max === Infinity
    ? `More than ${ohms(min)}`
    : formatQuantity({ min, typ, max }, 'ohm', { digits: DIGITS });

/** `28 % above`, `64 times`, `equal to`: a reading beside its mark. */
const besideInWords = ({ read, value }: Beside): string => {
  const times = (read.max === Infinity ? read.min : read.typ) / value;
  if (times >= 2) return `${formatValue(times, 'ratio')} its mark of ${ohms(value)}`;
  const off = Math.abs(times - 1);
  const way = times > 1 ? 'above' : 'below';
  return off < FLOAT_ERROR
    ? 'as it is marked'
    : `${formatValue(off, 'fraction')} ${way} its mark of ${ohms(value)}`;
};

/** The reading, the mark and what tolerance and drift allow, in words. */
const workingOf = (beside: Beside, { reading }: KindTriageRow): string => {
  const { read, value, tolerance, drift = 0 } = beside;
  const [least, most] = [value * (1 - tolerance.minus), value * (1 + tolerance.plus)];
  const allowed = `its tolerance allows ${ohms(least)} to ${ohms(most)}`;
  const further =
    reading === 'drift'
      ? `, and ${formatValue(drift, 'fraction')} of drift up to ${ohms(most * (1 + drift))}`
      : '';
  return `${readInWords(read)}, ${besideInWords(beside)}; ${allowed}${further}`;
};

/** A rule that a reading bears out, with the numbers that it went by. */
export interface BorneOut {
  row: KindTriageRow;
  working: string;
}

/**
 * What a reading says of an old part: the first rule that it bears out. A rule of its type counts
 * instead of that of its kind by the same kind of reading. Nothing without a reading, a mark or a
 * tolerance, or where the reading reaches over a limit.
 */
export const borneOut = (
  catalogue: Catalogue,
  marked: MarkedKind,
  evidence: KindEvidence,
): BorneOut | undefined => {
  const beside = besideMark(catalogue, marked, evidence);
  if (beside === undefined) return undefined;
  const kind = catalogue.kindTypes[marked.type]?.kind ?? '';
  const ofType = catalogue.kindTriage.filter(({ types }) => types.includes(marked.type));
  const own = new Set(ofType.map(({ reading }) => reading));
  const row = catalogue.kindTriage
    .filter((one) => ofType.includes(one) || (one.kinds.includes(kind) && !own.has(one.reading)))
    .find((one) => holds(one, catalogue.units[one.unit]?.factor ?? 1, beside));
  return row && { row, working: workingOf(beside, row) };
};
