import type { Range } from '../../quantities/range.ts';
import type { Measured, Reading } from '../meanings/reading.ts';
import { withTolerance } from '../composing/spread.ts';

/** Above this a capacitance is measured at mains-ripple frequency, F. */
const LARGE = 1e-6;

/** Where a meter measures a capacitance, or several that are to be told apart: the least of them, F. */
export const meterFrequency = (farads: number): '1 kHz' | '100 or 120 Hz' =>
  farads > LARGE ? '100 or 120 Hz' : '1 kHz';

/** Taken where no tolerance is marked; old parts of most kinds keep within it. */
const ASSUMED = { minus: 0.2, plus: 0.2, unit: 'fraction' } as const;

/** What a meter reads if a reading is right; nothing for several sections or without a value. */
export const measuredOf = (reading: Reading): Measured | undefined => {
  const value = reading.capacitance ?? reading.resistance;
  if (value === undefined) return undefined;
  const isAdjustable = value.min !== value.max && reading.tolerance === undefined;
  const isMarked = reading.tolerance !== undefined || isAdjustable;
  return {
    range: isMarked ? value : withTolerance(value.typ, ASSUMED),
    with: reading.capacitance === undefined ? 'dc' : meterFrequency(value.typ),
    toleranceMarked: isMarked,
    overlaps: false,
  };
};

const overlap = (a: Range, b: Range): boolean => a.min <= b.max && b.min <= a.max;

const isOtherValue = (a: Reading, b: Reading): boolean =>
  (a.capacitance ?? a.resistance)?.typ !== (b.capacitance ?? b.resistance)?.typ;

/** The same, and whether a rival of the same kind with another value may read the same. */
export const measuredAmong = (
  readings: readonly Reading[],
  reading: Reading,
): Measured | undefined => {
  const own = measuredOf(reading);
  if (own === undefined) return undefined;
  const overlaps = readings.some((rival) => {
    if (rival.kind !== reading.kind || !isOtherValue(rival, reading)) return false;
    const other = measuredOf(rival);
    return other !== undefined && overlap(own.range, other.range);
  });
  return { ...own, overlaps };
};
