import type { Range } from '../../quantities/range.ts';
import type { Trade } from '../lexicon/trade.ts';
import type { Measured, Reading } from '../meanings/reading.ts';
import { withTolerance } from '../composing/spread.ts';

/** The rules of thumb that tell what a meter reads. */
export type Metering = Pick<Trade, 'unmarkedTolerance' | 'largestAt1kHz'>;

/**
 * Where a meter measures a capacitance, or several that are to be told apart: the least of them.
 * @param farads F
 * @param largestAt1kHz what is larger is measured at the frequency of a rectified mains, F
 */
export const meterFrequency = (farads: number, largestAt1kHz: number): '1 kHz' | '100 or 120 Hz' =>
  farads > largestAt1kHz ? '100 or 120 Hz' : '1 kHz';

/** What a meter reads if a reading is right; nothing for several sections or without a value. */
export const measuredOf = (
  { unmarkedTolerance: taken, largestAt1kHz }: Metering,
  reading: Reading,
): Measured | undefined => {
  const value = reading.capacitance ?? reading.resistance;
  if (value === undefined) return undefined;
  const isAdjustable = value.min !== value.max && reading.tolerance === undefined;
  const isMarked = reading.tolerance !== undefined || isAdjustable;
  return {
    range: isMarked
      ? value
      : withTolerance(value.typ, { minus: taken, plus: taken, unit: 'fraction' }),
    with: reading.capacitance === undefined ? 'dc' : meterFrequency(value.typ, largestAt1kHz),
    ...(isMarked ? {} : { toleranceTaken: taken }),
    overlaps: false,
  };
};

const overlap = (a: Range, b: Range): boolean => a.min <= b.max && b.min <= a.max;

const isOtherValue = (a: Reading, b: Reading): boolean =>
  (a.capacitance ?? a.resistance)?.typ !== (b.capacitance ?? b.resistance)?.typ;

/** The same, and whether a rival of the same kind with another value may read the same. */
export const measuredAmong = (
  metering: Metering,
  readings: readonly Reading[],
  reading: Reading,
): Measured | undefined => {
  const own = measuredOf(metering, reading);
  if (own === undefined) return undefined;
  const overlaps = readings.some((rival) => {
    if (rival.kind !== reading.kind || !isOtherValue(rival, reading)) return false;
    const other = measuredOf(metering, rival);
    return other !== undefined && overlap(own.range, other.range);
  });
  return { ...own, overlaps };
};
