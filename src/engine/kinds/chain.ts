import { isChip } from '../assessment/mounting.ts';
import type { Catalogue } from '../catalogue.ts';
import { dissipation } from '../equations/heat.ts';
import { largestShare } from '../equations/resistor.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { findKindStandIns, type KindAssessment } from './assess.ts';
import { rmsVoltage } from './findings/of-part.ts';
import type { KindCandidate, KindRequest } from './part.ts';
import { kindCircumstances, resolveKindSituation } from './situation.ts';

/** Equal parts in series in place of one that stands neither the voltage nor the power. */
export interface KindChain {
  count: number;
  /** One of them, as it sees the circuit. */
  each: KindAssessment;
}

/** What a part of a chain has less of than one that stands alone. */
const MENDED: readonly string[] = [
  'resistor-power',
  'resistor-voltage',
  'overload-voltage',
  'power-practice',
];

/** As many as are still soldered in place of one. */
const COUNTS = [2, 3, 4];

/** What every shop has, with leads. */
const isPlain = (catalogue: Catalogue, { candidate, buy }: KindAssessment): boolean =>
  catalogue.kindTypes[candidate.type]?.market === 'common' &&
  buy !== undefined &&
  !isChip(catalogue, buy.style);

/** Whether a part falls short by what a chain mends, among other things. */
const isShort = ({ findings }: KindAssessment): boolean =>
  findings.some(({ finding, verdict }) => verdict !== 'fits' && MENDED.includes(finding));

/**
 * What the largest part of a chain is asked by the circuit: it has its share of the voltage, and what is charged
 * through all of them is to it as many times as large. Noise that is allowed goes by that share too, which
 * is on the safe side, as that of several adds up by squares.
 */
export const askedOfEach = (
  catalogue: Catalogue,
  request: KindRequest,
  count: number,
): KindRequest => {
  const share = largestShare(count, ruleOf(catalogue, 'chain-tolerance'));
  const { original, conditions } = resolveKindSituation(catalogue, request);
  const { type, tolerance, value, rating } = original;
  const seen = (id: string, range: Range): Range => {
    const unit = catalogue.conditionDefinitions[id]?.unit ?? '';
    const si = catalogue.units[unit]?.si;
    if (si === 'V') return scale(range, share);
    return si === 'F' ? scale(range, count) : range;
  };
  const each = (whole: number | undefined): Range | undefined =>
    whole === undefined ? undefined : exactly(whole / count);
  return {
    position: request.position,
    original: { type, tolerance, value: each(value), rating: each(rating) },
    conditions: Object.fromEntries(conditions.map(({ id, range }) => [id, seen(id, range)])),
  };
};

/** What one part of a chain bears in its circuit. */
export interface Borne {
  /** V */
  volts: number;
  /** W */
  watts: number;
}

/**
 * What the largest part of a chain bears, by its mark; nothing where the place asks for no voltage.
 * @param asked of each part, as `askedOfEach` has it
 */
export const borneByEach = (
  catalogue: Catalogue,
  asked: KindRequest,
  { value = 0 }: KindCandidate,
): Borne | undefined => {
  const circumstances = kindCircumstances(catalogue, asked);
  if (circumstances.conditions['vdc'] === undefined || value <= 0) return undefined;
  const volts = rmsVoltage(circumstances);
  return { volts, watts: dissipation(volts, value) };
};

/** Whether the whole of a chain is as close to the old value as any of the usual steps. */
const isClose = (catalogue: Catalogue, whole: number, old: number): boolean =>
  Math.abs(whole / old - 1) <= ruleOf(catalogue, 'chain-value');

/**
 * The shortest chain of equal parts with leads, of a type that every shop has, that fits where no single
 * one does, for want of voltage or power; none where a single one fits. What has a wiper is one part.
 * @param assessments of single parts, best first
 */
export const kindChain = (
  catalogue: Catalogue,
  request: KindRequest,
  assessments: readonly KindAssessment[],
): KindChain | undefined => {
  const { kind, original } = kindCircumstances(catalogue, request);
  const plain = assessments.filter((one) => isPlain(catalogue, one));
  const short = new Set(plain.filter(isShort).map(({ candidate }) => candidate.type));
  if (kind.wiper !== '' || short.size === 0 || plain.some(({ verdict }) => verdict === 'fits'))
    return undefined;
  const fits = (count: number, one: KindAssessment): boolean =>
    one.verdict === 'fits' &&
    short.has(one.candidate.type) &&
    isPlain(catalogue, one) &&
    (one.candidate.tolerance?.plus ?? 1) <= ruleOf(catalogue, 'chain-tolerance') &&
    isClose(catalogue, count * (one.candidate.value ?? 0), original.value ?? 0);
  for (const count of COUNTS) {
    const found = findKindStandIns(catalogue, askedOfEach(catalogue, request, count)).find((one) =>
      fits(count, one),
    );
    if (found !== undefined) return { count, each: found };
  }
  return undefined;
};
