import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import type { ConditionRow } from '../../schemas/positions.ts';
import type { Catalogue } from '../catalogue.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { deviceKnowledge } from './known.ts';

/** The number of a condition that a use is reckoned with until the visitor gives one. */
export interface UsualNumber {
  condition: string;
  /** SI */
  range: Range;
  /** Whether it gave way because the old part would not have stood the usual one. */
  isBorne: boolean;
}

/** Per cent, in which the limits of ratings are given. */
const PERCENT = 0.01;

/**
 * The most of a condition that the old part bears by the hard demands of a use on its ratings, SI;
 * nothing where no demand speaks of it alone or its rating is not known.
 */
const borne = (
  catalogue: Catalogue,
  { position, condition }: ConditionRow,
  old: DeviceRow,
): number | undefined => {
  const { demands, findings } = catalogue.devices;
  const most = demands
    .filter((demand) => demand.position === position && demand.weight === 'hard')
    .flatMap(({ finding, limit }) => {
      const row = findings.find(({ id }) => id === finding);
      const [property, ...others] = row?.properties ?? [];
      const isRating = row?.unit === '%' && row.better === 'low' && others.length === 0;
      if (!isRating || property === undefined || limit === undefined) return [];
      if (row.conditions.length !== 1 || row.conditions[0] !== condition) return [];
      const rating = deviceKnowledge(catalogue, old, property)?.range.min;
      return rating === undefined ? [] : [rating * limit * PERCENT];
    });
  return most.length === 0 ? undefined : Math.min(...most);
};

/**
 * What a use is reckoned with where the visitor says nothing. A number that follows from the rating
 * of the old part is the usual one, or what that part bears if this is less: the circuit has proved
 * itself with it.
 * @param old the device that is being replaced; without one, the usual numbers of the use alone
 */
export const usualNumbers = (
  catalogue: Catalogue,
  use: UseRow,
  old: DeviceRow | undefined,
): UsualNumber[] => {
  const { conditions, conditionDefinitions } = catalogue.devices;
  return conditions
    .filter(({ position }) => position === use.id)
    .map((row) => {
      const unit = conditionDefinitions.find(({ id }) => id === row.condition)?.unit ?? '';
      const typ = row.typ ?? 0;
      const range = scale(
        { min: row.min ?? typ, typ, max: row.max ?? typ },
        catalogue.units[unit]?.factor ?? 1,
      );
      const most =
        row.follows === 'rating' && old !== undefined ? borne(catalogue, row, old) : undefined;
      return most !== undefined && most < range.typ
        ? { condition: row.condition, range: exactly(most), isBorne: true }
        : { condition: row.condition, range, isBorne: false };
    });
};
