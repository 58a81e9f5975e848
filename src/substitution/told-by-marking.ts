import {
  voltageKindOf,
  type Catalogue,
  type Reading,
  type Tolerance,
  type TypeId,
} from '../engine/index.ts';
import type { Rated } from './rated-voltage.ts';

/** The tolerance as a fraction of the value, whatever it is marked as; nothing without a value. */
export const toleranceTold = (reading: Reading): Tolerance | undefined => {
  const { tolerance, capacitance, resistance } = reading;
  const whole = { fraction: 1, F: capacitance?.typ, ohm: resistance?.typ }[
    tolerance?.unit ?? 'fraction'
  ];
  const isOfValue = capacitance !== undefined || resistance !== undefined;
  return tolerance === undefined || whole === undefined || !isOfValue
    ? undefined
    : { minus: tolerance.minus / whole, plus: tolerance.plus / whole };
};

/**
 * The rating of a part that is of one of the types: where all of those are rated in AC, never the DC
 * that may be marked too or alone, which is higher. One that is marked for AC alone stays one for AC.
 */
export const ratingTold = (
  { types: known }: Catalogue,
  { ratedVoltage, voltageKind, acVoltage }: Reading,
  types: readonly TypeId[],
): Rated | undefined => {
  const rows = types.flatMap((id) => (Object.hasOwn(known, id) ? (known[id] ?? []) : []));
  const isInAc = rows.length > 0 && rows.every((row) => voltageKindOf(row) === 'ac');
  const volts = isInAc && voltageKind === 'dc' ? acVoltage : ratedVoltage;
  if (volts === undefined) return undefined;
  return { volts, ...(!isInAc && voltageKind === 'ac' ? { kind: 'ac' } : {}) };
};
