import { dissipation } from '../equations/heat.ts';
import { overloadStood, thermalNoise, voltageStood } from '../equations/resistor.ts';
import { overloadBy } from '../laws.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import type { KindPositionRow, KindTypeRow } from '../../schemas/kinds.ts';
import type { ConditionRow } from '../../schemas/positions.ts';
import { rowNamed } from '../assessment/original.ts';
import type { ResolvedCondition } from '../assessment/conditions.ts';
import { plainDefault } from '../assessment/derived-default.ts';
import { readTolerance } from '../candidates/generate.ts';
import type { Catalogue, ConditionId } from '../catalogue.ts';
import { rangeOf } from '../findings/model.ts';
import type { Unit } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import type { KindCircumstances, KindPart, KindRequest } from './part.ts';

/** The usual value of a position, as far as the type was made in it. */
const usualValue = (type: KindTypeRow, position: KindPositionRow): number | undefined => {
  const { reference } = position;
  if (reference === undefined) return undefined;
  return Math.min(Math.max(reference, type.old_min ?? 0), type.old_max ?? Infinity);
};

/** What parts of a kind have besides their type, where they have it. */
const partOf = (
  catalogue: Catalogue,
  type: KindTypeRow,
  value: number | undefined,
  own: Pick<KindPart, 'tolerance' | 'rating'>,
): KindPart => {
  const kind = catalogue.kinds[type.kind];
  return {
    type: type.id,
    ...(value === undefined ? {} : { value, unit: kind?.unit as Unit }),
    ...own,
    ...(own.rating === undefined ? {} : { ratingUnit: kind?.rating_unit as Unit }),
  };
};

const completeOriginal = (
  catalogue: Catalogue,
  { original }: KindRequest,
  position: KindPositionRow,
): KindPart => {
  const type = rowNamed(catalogue.kindTypes, original.type, 'type');
  const tolerance =
    original.tolerance ??
    (type.old_tolerance === '' ? undefined : readTolerance(type.old_tolerance));
  const rating = original.rating?.typ ?? type.old_rating;
  return partOf(catalogue, type, original.value?.typ ?? usualValue(type, position), {
    ...(tolerance === undefined ? {} : { tolerance }),
    ...(rating === undefined ? {} : { rating }),
  });
};

/** Voltage (V) that puts a share of its rating into the old part, at most a given one. */
const voltageOfShare = (share: number, { value, rating }: KindPart, most: number): number =>
  voltageStood(value ?? 0, share * (rating ?? 0), most);

/** Current (A) that puts a share of its rating into the whole of the old part. */
const currentOfShare = (share: number, original: KindPart): number =>
  (original.value ?? 0) > 0 ? voltageOfShare(share, original, Infinity) / (original.value ?? 1) : 0;

/** Whether a condition is a current and no voltage. */
const isCurrent = ({ conditionDefinitions, units }: Catalogue, { condition }: ConditionRow) =>
  units[conditionDefinitions[condition]?.unit ?? '']?.si === 'A';

/** The most (A) that a current is taken for. */
const mostCurrent = (catalogue: Catalogue, { max, condition }: ConditionRow): number => {
  const unit = catalogue.units[catalogue.conditionDefinitions[condition]?.unit ?? ''];
  return max === undefined ? Infinity : max * (unit?.factor ?? 1);
};

/** Voltage (V) that the body of the old part bears for sure: no circuit has proved itself with more. */
const borneBy = (catalogue: Catalogue, original: KindPart): number =>
  rangeOf({ catalogue }, original, 'voltage-limit')?.min ?? Infinity;

/** Numbers of a position that are given or plain defaults, SI; 0 where it does not ask. */
type Settled = (condition: ConditionId) => number;

/** Noise (V) of the old part by its warmth alone, which none of its value is below. */
const noiseOfOld = ({ value = 0 }: KindPart, settled: Settled): number =>
  thermalNoise(
    value,
    settled('t-max'),
    Math.min(settled('frequency'), settled('f-work')),
    Math.max(settled('frequency'), settled('f-work')),
  );

/** A default that follows from the old part. */
const derivedDefault = (
  catalogue: Catalogue,
  row: ConditionRow,
  original: KindPart,
  settled: Settled,
): Range => {
  const rule = row.typ ?? 0;
  switch (row.follows) {
    case 'thermal':
      return exactly(
        Math.max(
          plainDefault(catalogue, row).typ,
          ruleOf(catalogue, 'thermal-noise-over') * noiseOfOld(original, settled),
        ),
      );
    case 'value':
      return exactly(rule * (original.value ?? 0));
    case 'power':
      if (isCurrent(catalogue, row))
        return exactly(Math.min(currentOfShare(rule, original), mostCurrent(catalogue, row)));
      return exactly(
        voltageOfShare(
          rule,
          original,
          // What a fault puts there is not what the part was chosen for.
          Math.min(
            row.max ?? Infinity,
            row.condition === 'vdc' ? borneBy(catalogue, original) : Infinity,
          ),
        ),
      );
    default:
      throw new Error(`condition ${row.condition} at ${row.position} cannot follow so`);
  }
};

/** Whether a place holds its parts to what they stand for seconds at switch-on. */
const isOverloadAsked = ({ demands }: Catalogue, { position }: ConditionRow): boolean =>
  demands.some((demand) => demand.position === position && demand.finding === 'overload-voltage');

/**
 * A usual voltage of the place, or what puts half its rating into the old part, where the usual one would
 * have burnt that: 400 V on a bleeder of 1 kΩ 10 W. Only of a value that somebody gave, as the usual part
 * of a place is what the place is told by. At switch-on a place has no more than the old part stands for
 * seconds: a collector load of 4.7 kΩ and a quarter watt never saw the supply of valves.
 */
const usualOrBorne = (
  catalogue: Catalogue,
  row: ConditionRow,
  original: KindPart,
): Pick<ResolvedCondition, 'range' | 'from'> => {
  const range = plainDefault(catalogue, row);
  const { value = 0, rating = 0 } = original;
  if (row.condition === 'v-surge' && isOverloadAsked(catalogue, row)) {
    const least = value * (1 - (original.tolerance?.minus ?? 0));
    const stood = overloadStood(least, rating, borneBy(catalogue, original), overloadBy(catalogue));
    return stood > 0 && stood < range.typ
      ? { range: exactly(stood), from: 'derived' }
      : { range, from: 'default' };
  }
  const isBurnt =
    row.condition === 'vdc' && rating > 0 && value > 0 && dissipation(range.typ, value) > rating;
  if (!isBurnt) return { range, from: 'default' };
  const cool = rating / ruleOf(catalogue, 'resistor-power-in-hand');
  return { range: exactly(voltageStood(value, cool, range.typ)), from: 'derived' };
};

/** Everything that an assessment of such a part starts from, filled in. */
export interface KindSituation {
  original: KindPart;
  conditions: ResolvedCondition[];
}

/**
 * The old part completed and every condition of the position.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const resolveKindSituation = (catalogue: Catalogue, request: KindRequest): KindSituation => {
  const position = rowNamed(catalogue.kindPositions, request.position, 'position');
  const original = completeOriginal(catalogue, request, position);
  const rows = catalogue.conditions.filter((row) => row.position === position.id);
  const settled: Settled = (condition) => {
    const row = rows.find((one) => one.condition === condition);
    const plain = row?.follows === '' ? plainDefault(catalogue, row) : undefined;
    return (request.conditions?.[condition] ?? plain)?.max ?? 0;
  };
  const conditions = rows.map((row): ResolvedCondition => {
    const given = request.conditions?.[row.condition];
    if (given !== undefined) return { id: row.condition, range: given, from: 'given', row };
    if (row.follows === '' && request.original.value !== undefined)
      return { id: row.condition, ...usualOrBorne(catalogue, row, original), row };
    return row.follows === ''
      ? { id: row.condition, range: plainDefault(catalogue, row), from: 'default', row }
      : {
          id: row.condition,
          range: derivedDefault(catalogue, row, original, settled),
          from: 'derived',
          row,
        };
  });
  return { original, conditions };
};

/**
 * What the findings of a request are worked out from.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const kindCircumstances = (
  catalogue: Catalogue,
  request: KindRequest,
): KindCircumstances => {
  const { original, conditions } = resolveKindSituation(catalogue, request);
  const position = rowNamed(catalogue.kindPositions, request.position, 'position');
  return {
    catalogue,
    kind: rowNamed(catalogue.kinds, position.kind, 'kind'),
    position,
    conditions: Object.fromEntries(conditions.map(({ id, range }) => [id, range])),
    original,
  };
};
