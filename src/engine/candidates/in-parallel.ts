import type { OfferedPart } from '../assessment/parts.ts';
import type { TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { allowedSpan, singlesWithin, leastSecond } from './singles.ts';

export type Pair = readonly [OfferedPart, OfferedPart];

/** Parts that go together: of one tolerance, rated for one kind of voltage. */
const kindred = (parts: readonly OfferedPart[]): OfferedPart[][] => {
  const groups = new Map<string, OfferedPart[]>();
  for (const part of parts) {
    const key = `${part.voltageKind} ${String(part.tolerance.minus)} ${String(part.tolerance.plus)}`;
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [part]);
    else own.push(part);
  }
  return [...groups.values()];
};

/** One part a value, of the lowest rating, by rising value. */
const onePerValue = (parts: readonly OfferedPart[]): OfferedPart[] => {
  const rising = parts.toSorted(
    (a, b) => a.capacitance - b.capacitance || a.ratedVoltage - b.ratedVoltage,
  );
  return rising.filter((part, index) => part.capacitance !== rising[index - 1]?.capacitance);
};

/** How far (fraction) a pair is from a value, in steps of half a percent: finer is no matter. */
const misses = ([a, b]: Pair, wanted: number): number =>
  Math.round(Math.abs((a.capacitance + b.capacitance) / wanted - 1) * 200);

/** The best pairs of parts that rise in value: each larger one with what comes nearest below. */
const pairsOf = (rising: readonly OfferedPart[], wanted: number): Pair[] => {
  const pairs: Pair[] = [];
  let at = 0;
  // As the larger part falls, what is left to make up rises, so that one pass finds all partners.
  for (const larger of rising.toReversed()) {
    const missing = wanted - larger.capacitance;
    while ((rising[at + 1]?.capacitance ?? Infinity) <= missing) at += 1;
    for (const smaller of rising.slice(at, at + 2)) {
      if (smaller.capacitance <= larger.capacitance) pairs.push([larger, smaller]);
    }
  }
  return pairs;
};

/**
 * The few pairs of a type that come nearest to the old value in parallel, within what the position
 * allows: first those of the usual tolerance; two alike before two that differ, if as near.
 * @param most pairs of each tolerance
 */
export const nearestPairs = (type: TypeId, circumstances: Circumstances, most: number): Pair[] => {
  const wanted = circumstances.original.capacitance;
  const [low, high] = allowedSpan(circumstances);
  const singles = singlesWithin(type, [leastSecond(circumstances), high], circumstances);
  return kindred(singles).flatMap((alike) =>
    pairsOf(onePerValue(alike), wanted)
      .filter(([a, b]) => {
        const together = a.capacitance + b.capacitance;
        return together >= low && together <= high;
      })
      .toSorted(
        (a, b) =>
          misses(a, wanted) - misses(b, wanted) ||
          a[0].capacitance / a[1].capacitance - b[0].capacitance / b[1].capacitance,
      )
      .slice(0, most),
  );
};
