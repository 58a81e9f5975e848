import { formatValue, writeQuantity, type Range, type Reading } from '../engine/index.ts';
import { printTolerance } from '../substitution/typed-numbers.ts';
import type { PartOfLine } from './part-of-line.ts';
import type { Line } from './model.ts';

type Told = Pick<PartOfLine, 'type' | 'capacitance' | 'tolerance' | 'ratedVoltage'>;

const only = (typ: number): Range => ({ min: typ, typ, max: typ });

/** The tolerance as a fraction of the value, whatever it is marked as; nothing without a value. */
export const toleranceOf = ({ tolerance, capacitance, resistance }: Reading): Told['tolerance'] => {
  const whole = { fraction: 1, F: capacitance?.typ, ohm: resistance?.typ }[
    tolerance?.unit ?? 'fraction'
  ];
  const isOfValue = capacitance !== undefined || resistance !== undefined;
  return tolerance === undefined || whole === undefined || !isOfValue
    ? undefined
    : { minus: tolerance.minus / whole, plus: tolerance.plus / whole };
};

/** What a reading of a capacitor's marking tells; the type only where it suggests a single one. */
export const toldBy = (reading: Reading): Told => {
  const { capacitance, ratedVoltage, types } = reading;
  const typ = capacitance?.typ;
  return {
    capacitance: typ === undefined ? undefined : only(typ),
    tolerance: toleranceOf(reading),
    ratedVoltage,
    type: types.length === 1 ? types[0] : undefined,
  };
};

/** The same as one would type it, no digit lost, for the fields of the line that are still empty. */
export const typedFrom = (reading: Reading, line: Line): Partial<Line> => {
  const { capacitance, tolerance, ratedVoltage, type } = toldBy(reading);
  const said: Partial<Line> = {
    kind: reading.kind,
    ...(capacitance === undefined ? {} : { value: writeQuantity(capacitance, 'F') }),
    ...(reading.resistance === undefined
      ? {}
      : { value: writeQuantity(only(reading.resistance.typ), 'ohm') }),
    ...(tolerance === undefined ? {} : { tolerance: printTolerance(tolerance) }),
    ...(ratedVoltage === undefined ? {} : { volts: writeQuantity(ratedVoltage, 'V') }),
    ...(type === undefined ? {} : { type }),
  };
  const empty = Object.entries(said).filter(([field]) => line[field as keyof Line] === '');
  return Object.fromEntries(empty);
};

/** A reading as an answer to choose: `capacitor, 100 nF, ±10 %, 63 V`. */
export const inWords = (reading: Reading): string => {
  const { capacitance, tolerance, ratedVoltage } = toldBy(reading);
  return [
    reading.kind,
    capacitance && formatValue(capacitance.typ, 'F'),
    reading.sections?.map((section) => formatValue(section.capacitance.typ, 'F')).join(' + '),
    reading.resistance && formatValue(reading.resistance.typ, 'ohm'),
    tolerance && printTolerance(tolerance),
    ratedVoltage && formatValue(ratedVoltage.typ, 'V'),
    // Colours may say the same on parts of another look.
    reading.colours?.name,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
};
