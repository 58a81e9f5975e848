import {
  exactly,
  formatValue,
  writeQuantity,
  type Catalogue,
  type Range,
  type Reading,
} from '../../engine/index.ts';
import { ratingPhrase } from '../../substitution/phrases.ts';
import { writeRated } from '../../substitution/rated-voltage.ts';
import { ratingTold, toleranceTold } from '../../substitution/told-by-marking.ts';
import { printTolerance } from '../../substitution/typed-numbers.ts';
import type { Line } from '../model/job.ts';
import type { PartOfLine } from './part-of-line.ts';

type Told = Pick<PartOfLine, 'type' | 'capacitance' | 'tolerance' | 'ratedVoltage' | 'voltageKind'>;

/** What a part is ordered by, F: an adjustable one, whose range is marked, by its maximum. */
export const valueOrdered = ({ tolerance }: Reading, { typ, max }: Range): number =>
  tolerance === undefined && max > typ ? max : typ;

/** What a reading of a capacitor's marking tells; the type only where it suggests a single one. */
export const toldBy = (
  catalogue: Catalogue,
  reading: Reading,
  { type }: Pick<Line, 'type'>,
): Told => {
  const { capacitance, types } = reading;
  const typ = capacitance && valueOrdered(reading, capacitance);
  const rated = ratingTold(catalogue, reading, type === '' ? types : [type]);
  return {
    capacitance: typ === undefined ? undefined : exactly(typ),
    tolerance: toleranceTold(reading),
    ratedVoltage: rated?.volts,
    voltageKind: rated?.kind,
    type: types.length === 1 ? types[0] : undefined,
  };
};

/** Rated power, W, as it is spoken of; nothing where none is marked. */
const watts = ({ power }: Reading): string | undefined =>
  power && ratingPhrase(power.typ, 'W').replace('\u00A0', ' ');

/** The same as one would type it, no digit lost, for the fields of the line that are still empty. */
export const typedFrom = (catalogue: Catalogue, reading: Reading, line: Line): Partial<Line> => {
  const { capacitance, tolerance, ratedVoltage, voltageKind, type } = toldBy(
    catalogue,
    reading,
    line,
  );
  const power = watts(reading);
  const said: Partial<Line> = {
    kind: reading.kind,
    ...(capacitance === undefined ? {} : { value: writeQuantity(capacitance, 'F') }),
    ...(reading.resistance === undefined
      ? {}
      : { value: writeQuantity(exactly(reading.resistance.typ), 'ohm') }),
    ...(tolerance === undefined ? {} : { tolerance: printTolerance(tolerance) }),
    ...(ratedVoltage === undefined
      ? {}
      : { volts: writeRated({ volts: ratedVoltage, kind: voltageKind }) }),
    ...(power === undefined ? {} : { volts: power }),
    ...(type === undefined ? {} : { type }),
  };
  const empty = Object.entries(said).filter(([field]) => line[field as keyof Line] === '');
  return Object.fromEntries(empty);
};

/** A reading as an answer to choose: `capacitor, 100 nF, ±10 %, 63 V`. */
export const inWords = (catalogue: Catalogue, reading: Reading, line: Line): string => {
  const { capacitance, tolerance, ratedVoltage, voltageKind } = toldBy(catalogue, reading, line);
  return [
    reading.kind,
    capacitance && formatValue(capacitance.typ, 'F'),
    reading.sections?.map((section) => formatValue(section.capacitance.typ, 'F')).join(' + '),
    reading.resistance && formatValue(reading.resistance.typ, 'ohm'),
    tolerance && printTolerance(tolerance),
    watts(reading),
    ratedVoltage && formatValue(ratedVoltage.typ, 'V') + (voltageKind === 'ac' ? ' AC' : ''),
    // Colours may say the same on parts of another look.
    reading.colours?.name,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
};
