import type { Catalogue } from '../../engine/index.ts';
import { decadeOf } from '../../engine/values/series.ts';
import type { UsualPartRow, UsualPlaceRow } from '../../schemas/job.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import type { PartOfLine } from './part-of-line.ts';

/** What a part rather is, and where it rather sits, by its value and rating alone, where a list says no more. */

/** Whether a number is between two bounds, both included; one that is not known is only where no bound asks. */
const isWithin = (
  value: number | undefined,
  least: number | undefined,
  most: number | undefined,
): boolean =>
  (least === undefined && most === undefined) ||
  (value !== undefined && value >= (least ?? 0) && value <= (most ?? Infinity));

/** The series that took the place of older values on capacitors. */
const PREFERRED = decadeOf('E12');

const isNear = (one: number, other: number): boolean =>
  Math.abs(one - other) <= FLOAT_ERROR * 10 * other;

/** Whether a value (SI) was usual before preferred numbers and is none of them, as 0.05 µF and 25 nF. */
const isOldValue = ({ markings: { oldMantissas } }: Catalogue, value: number): boolean => {
  const mantissa = Number(
    (value / 10 ** Math.floor(Math.log10(value) + FLOAT_ERROR)).toPrecision(6),
  );
  return (
    oldMantissas.some((row) => isNear(row.value, mantissa)) &&
    !PREFERRED.some((preferred) => isNear(preferred, mantissa))
  );
};

/** The row that says what a capacitor rather is; nothing where none does, or where it is marked for AC. */
const usualPart = (
  catalogue: Catalogue,
  { capacitance, ratedVoltage, voltageKind }: PartOfLine,
): UsualPartRow | undefined => {
  const value = capacitance?.typ;
  if (voltageKind === 'ac' || value === undefined) return undefined;
  return catalogue.job.usualParts.find(
    (row) =>
      isWithin(value, row.value_min, row.value_max) &&
      isWithin(ratedVoltage?.typ, row.volts_min, row.volts_max) &&
      (!row.old_values || isOldValue(catalogue, value)),
  );
};

/** Whether a type is of those that a capacitor rather is; nothing where nothing speaks for any. */
export const isRatherOf = (
  catalogue: Catalogue,
  part: PartOfLine,
  type: TypeRow,
): boolean | undefined => {
  const row = usualPart(catalogue, part);
  if (row === undefined) return undefined;
  return row.types.includes(type.id) || (row.polarity !== '' && row.polarity === type.polarity);
};

/** A place as far as a row of usual places may name it. */
interface Place {
  id: string;
  group: string;
}

/**
 * How late a place is offered where nothing names one: the row that comes first and speaks of the part tells
 * which places go before all.
 * @param polarity of the part's type, where it has one
 */
export const usualPlace = (
  { job: { usualPlaces } }: Catalogue,
  part: PartOfLine,
  polarity: string,
): ((place: Place) => number) => {
  const value = part.capacitance?.typ ?? part.value?.typ;
  const rating = part.ratedVoltage?.typ ?? part.rating?.typ;
  const row = usualPlaces.find(
    (one: UsualPlaceRow) =>
      one.kind === part.kind &&
      (one.polarity === '' || one.polarity === polarity) &&
      isWithin(value, one.value_min, one.value_max) &&
      (one.rating_min === undefined || (rating !== undefined && rating >= one.rating_min)) &&
      (rating === undefined || rating <= (one.rating_max ?? Infinity)),
  );
  return ({ id, group }) =>
    row !== undefined && (row.positions.includes(id) || row.groups.includes(group)) ? 0 : 1;
};
