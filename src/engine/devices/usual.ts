import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import type { ConditionRow, DemandRow, FindingRow } from '../../schemas/positions.ts';
import type { Catalogue } from '../catalogue.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { deviceKnowledge } from './known.ts';
import type { DeviceCircumstances } from './model.ts';
import { deviceModels } from './models/index.ts';

/** The number of a condition that a use is reckoned with until the visitor gives one. */
export interface UsualNumber {
  condition: string;
  /** SI */
  range: Range;
  /**
   * How much of what the old part bears it is, where that one bears less or far more than usual, or that
   * it is what the old part needs, where that is more.
   */
  ofBorne: Borne | undefined;
}

/** All that the old part bears, the half of it, or what it needs. */
export type Borne = 'all' | 'half' | 'needed';

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

/** What a number that follows from the rating is, where the old part bears so much. */
const fromBorne = (
  borne: number,
  usual: Range,
  telling: number,
): Pick<UsualNumber, 'range' | 'ofBorne'> => {
  if (borne < usual.typ) return { range: exactly(borne), ofBorne: 'all' };
  if (borne > telling) return { range: exactly(borne / 2), ofBorne: 'half' };
  return { range: usual, ofBorne: undefined };
};

/**
 * How many times a number of the use the old part needs by one demand on it: 2.2 where it needs 22 µF
 * and the number is 10. The finding is a share that goes with the number, or a figure of the part that
 * the number is the limit of.
 */
const timesNeeded = (
  { condition, typ = 1 }: ConditionRow,
  { limit = 1, limit_of }: DemandRow,
  finding: FindingRow,
  found: Range,
  si: { condition: number; finding: number },
): number => {
  if (limit_of === condition && finding.better === 'low')
    return found.max / (limit * typ * si.condition);
  const isShare =
    limit_of === '' && finding.better === 'high' && finding.conditions[0] === condition;
  return isShare && found.min > 0 ? (limit * si.finding) / found.min : 0;
};

/** What the old part needs of a number, if that is more than usual: the circuit has proved itself. */
const withNeeds = (
  circumstances: DeviceCircumstances,
  row: ConditionRow,
  usual: UsualNumber,
): UsualNumber => {
  const { catalogue, use, original } = circumstances;
  const { demands, findings, conditionDefinitions } = catalogue.devices;
  const si = (unit = ''): number => catalogue.units[unit]?.factor ?? 1;
  const unit = conditionDefinitions.find(({ id }) => id === row.condition)?.unit;
  const times = demands
    .filter(({ position }) => position === use.id)
    .flatMap((demand) => {
      const finding = findings.find(({ id }) => id === demand.finding);
      const outcome = deviceModels[demand.finding]?.measure(original, circumstances);
      return finding === undefined || outcome?.status !== 'known'
        ? []
        : [
            timesNeeded(row, demand, finding, outcome.value, {
              condition: si(unit),
              finding: si(finding.unit),
            }),
          ];
    });
  const most = Math.max(1, ...times);
  return most === 1
    ? usual
    : { ...usual, range: exactly(usual.range.typ * most), ofBorne: 'needed' };
};

/**
 * What a use is reckoned with where the visitor says nothing. A number that follows from the rating
 * of the old part is the usual one, or what that part bears if this is less: the circuit has proved
 * itself with it. Where the old part bears more than the row's `max`, it was chosen for its rating, and
 * half of what it bears is taken. A number that follows from what the old part needs is the usual one,
 * or more where that part needs more.
 * @param old the device that is being replaced; without one, the usual numbers of the use alone
 */
export const usualNumbers = (
  catalogue: Catalogue,
  use: UseRow,
  old: DeviceRow | undefined,
): UsualNumber[] => {
  const { conditions, conditionDefinitions } = catalogue.devices;
  const rows = conditions.filter(({ position }) => position === use.id);
  const usual = rows.map((row): UsualNumber => {
    const unit = conditionDefinitions.find(({ id }) => id === row.condition)?.unit ?? '';
    const typ = row.typ ?? 0;
    const factor = catalogue.units[unit]?.factor ?? 1;
    if (row.follows === 'rating') {
      const usual = exactly(typ * factor);
      const most = old === undefined ? undefined : borne(catalogue, row, old);
      const telling = (row.max ?? Infinity) * factor;
      return {
        condition: row.condition,
        ...(most === undefined
          ? { range: usual, ofBorne: undefined }
          : fromBorne(most, usual, telling)),
      };
    }
    const range = scale({ min: row.min ?? typ, typ, max: row.max ?? typ }, factor);
    return { condition: row.condition, range, ofBorne: undefined };
  });
  if (old === undefined) return usual;
  const settled = Object.fromEntries(usual.map(({ condition, range }) => [condition, range]));
  const circumstances = { catalogue, use, original: old, conditions: settled };
  return usual.map((one, index) => {
    const row = rows[index];
    return row?.follows === 'needed' ? withNeeds(circumstances, row, one) : one;
  });
};
