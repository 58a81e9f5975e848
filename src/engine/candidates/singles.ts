import type { OfferedPart, Tolerance } from '../assessment/parts.ts';
import type { TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { neededRating } from '../findings/voltage.ts';
import { ROUNDING } from '../quantities/within.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { readTolerance } from './generate.ts';
import { madeValues } from './made-values.ts';
import { offersOf } from './offers.ts';

/** Values from one to another, F. */
export type Span = readonly [low: number, high: number];

/** The span of values that the position allows. */
export const allowedSpan = ({ original, position }: Circumstances): Span => [
  original.capacitance * position.value_low * (1 - ROUNDING),
  original.capacitance * position.value_high * (1 + ROUNDING),
];

/** Values from which two may be joined, worked out once a series for each set of circumstances. */
const nearValues = new WeakMap<Circumstances, Map<string, number[]>>();

/** The least value (F) of a second part: a smaller one would trim the first, not help it. */
export const leastSecond = ({ catalogue, original }: Circumstances): number =>
  original.capacitance * ruleOf(catalogue, 'smallest-second-part');

const valuesOfSeries = (series: string, circumstances: Circumstances): number[] => {
  const known = nearValues.get(circumstances) ?? new Map<string, number[]>();
  nearValues.set(circumstances, known);
  const [, high] = allowedSpan(circumstances);
  const values =
    known.get(series) ??
    madeValues(
      circumstances.catalogue,
      series,
      leastSecond(circumstances) * (1 - ROUNDING),
      2 * high * (1 + ROUNDING),
    );
  known.set(series, values);
  return values;
};

/** The tolerance that is usual for an offer, and the closest one where that is another. */
const worthTrying = (cells: readonly string[]): Tolerance[] => {
  const all = cells.map(readTolerance);
  const closest = all.reduce<Tolerance | undefined>(
    (best, one) => (best === undefined || one.plus < best.plus ? one : best),
    undefined,
  );
  return all.filter((one, index) => index === 0 || one === closest);
};

/**
 * The offered parts of a type with values in a span, each of the lowest rating that serves as half
 * of a pair; none where no rating does. The span lies between the smallest share of the old value
 * that makes a pair and twice the largest that the position allows.
 * @param share of the voltage that the part must stand, by its tolerance
 */
export const singlesWithin = (
  type: TypeId,
  [low, high]: Span,
  circumstances: Circumstances,
  share: (tolerance: Tolerance) => number = () => 1,
): OfferedPart[] =>
  offersOf(circumstances.catalogue, type).flatMap((offer) => {
    const part = {
      type,
      voltageKind: offer.voltage_kind,
      style: offer.style,
      pitch: offer.pitch_mm,
      series: offer.series,
    };
    const needed = neededRating(part, circumstances) * (1 - ROUNDING);
    const suitable = worthTrying(offer.tolerances).flatMap((tolerance) => {
      const ratedVoltage = offer.voltages.find((volts) => volts >= needed * share(tolerance));
      return ratedVoltage === undefined ? [] : [{ ...part, tolerance, ratedVoltage }];
    });
    const least = Math.max(low, offer.c_min) * (1 - ROUNDING);
    const most = Math.min(high, offer.c_max) * (1 + ROUNDING);
    return valuesOfSeries(offer.series, circumstances)
      .filter((farad) => farad >= least && farad <= most)
      .flatMap((capacitance) => suitable.map((one) => ({ ...one, capacitance })));
  });
