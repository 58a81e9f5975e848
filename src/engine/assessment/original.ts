import type { Catalogue } from '../catalogue.ts';
import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { readTolerance } from '../candidates/generate.ts';
import { voltageKindOf } from '../candidates/voltage-kind.ts';
import { rmsOfSine } from '../equations/sine.ts';
import { nearestVoltage } from '../values/index.ts';
import type { OldPart, Original, Part } from './parts.ts';

/** A named row, or a clear error for a name that the catalogue does not have. */
export const rowNamed = <Row>(
  rows: Readonly<Record<string, Row>>,
  id: string,
  kind: 'type' | 'position' | 'finding' | 'kind',
): Row => {
  const row = Object.hasOwn(rows, id) ? rows[id] : undefined;
  if (row === undefined) throw new RangeError(`no ${kind} is called ${id}`);
  return row;
};

/**
 * The position's usual value, that of electrolytics for such a type, where the type was made in it,
 * else the nearest that it was.
 */
export const usualCapacitance = (
  { families }: Pick<Catalogue, 'families'>,
  type: TypeRow,
  position: PositionRow,
): number => {
  const isRoomy = families[type.family]?.roomy === true;
  const usual = (isRoomy ? position.roomy_c : undefined) ?? position.reference_c;
  const low = Math.max(type.old_c_min, position.usual_c_min);
  const high = Math.min(type.old_c_max, position.usual_c_max);
  return Math.min(Math.max(usual, low), Math.max(low, high));
};

/** What the circuit is known to put across the old part, V. */
export interface KnownStress {
  /** Highest steady voltage, in use or at switch-on. */
  peak: number;
  /** AC voltage, RMS. */
  rms: number;
}

/**
 * What a rating of such a kind must be to bear a stress, V. What comes with AC voltage at
 * switch-on, a part that is rated for it is made to bear.
 */
const bearing = (
  kind: Part['voltageKind'],
  { peak, rms }: KnownStress,
  { voltage_sense: sense }: PositionRow,
): number => {
  if (kind === 'dc') return peak;
  return sense === 'ac' ? rms : Math.max(rms, rmsOfSine(peak));
};

/** The rating common for the type, or the next higher one that bears what is known. */
const usualRating = (
  catalogue: Catalogue,
  type: TypeRow,
  stress: KnownStress,
  position: PositionRow,
): number => {
  const kind = voltageKindOf(type);
  const least = bearing(kind, stress, position);
  if (type.old_v_typical >= least) return type.old_v_typical;
  const preferred = catalogue.voltages.filter((row) => row.kind === kind).map((row) => row.volts);
  return nearestVoltage(least, preferred) ?? least;
};

/** Age (s) of a part of the type as it is commonly met. */
export const usualAge = (catalogue: Catalogue, type: TypeRow): number =>
  type.old_age * (catalogue.units['years']?.factor ?? 0);

/**
 * The old part with everything filled in that the visitor did not say.
 * @throws RangeError for a type that the catalogue does not have
 */
export const completeOriginal = (
  catalogue: Catalogue,
  original: Original,
  position: PositionRow,
  stress: KnownStress,
): OldPart => {
  const type = rowNamed(catalogue.types, original.type, 'type');
  return {
    type: type.id,
    capacitance: original.capacitance?.typ ?? usualCapacitance(catalogue, type, position),
    tolerance: original.tolerance ?? readTolerance(type.old_tolerance),
    ratedVoltage: original.ratedVoltage?.typ ?? usualRating(catalogue, type, stress, position),
    voltageKind: original.voltageKind ?? voltageKindOf(type),
    age: original.age?.typ ?? usualAge(catalogue, type),
  };
};
