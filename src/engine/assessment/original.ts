import type { Catalogue } from '../catalogue.ts';
import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { readTolerance } from '../candidates/generate.ts';
import { voltageKindOf } from '../candidates/voltage-kind.ts';
import { nearestVoltage } from '../values/index.ts';
import type { OldPart, Original } from './parts.ts';

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

/** The position's usual value where the type was made in it, else the nearest that it was. */
export const usualCapacitance = (type: TypeRow, position: PositionRow): number => {
  const low = Math.max(type.old_c_min, position.usual_c_min);
  const high = Math.min(type.old_c_max, position.usual_c_max);
  return Math.min(Math.max(position.reference_c, low), Math.max(low, high));
};

/** The rating common for the type, or the next higher one that stands the working voltage. */
const usualRating = (catalogue: Catalogue, type: TypeRow, peak: number): number => {
  if (type.old_v_typical >= peak) return type.old_v_typical;
  const preferred = catalogue.voltages.filter((row) => row.kind === 'dc').map((row) => row.volts);
  return nearestVoltage(peak, preferred) ?? peak;
};

/** Age (s) of a part of the type as it is commonly met. */
export const usualAge = (catalogue: Catalogue, type: TypeRow): number =>
  type.old_age * (catalogue.units['years']?.factor ?? 0);

/**
 * The old part with everything filled in that the visitor did not say.
 * @param peak highest voltage (V) that the circuit is known to put across it
 * @throws RangeError for a type that the catalogue does not have
 */
export const completeOriginal = (
  catalogue: Catalogue,
  original: Original,
  position: PositionRow,
  peak: number,
): OldPart => {
  const type = rowNamed(catalogue.types, original.type, 'type');
  return {
    type: type.id,
    capacitance: original.capacitance?.typ ?? usualCapacitance(type, position),
    tolerance: original.tolerance ?? readTolerance(type.old_tolerance),
    ratedVoltage: original.ratedVoltage?.typ ?? usualRating(catalogue, type, peak),
    voltageKind: voltageKindOf(type),
    age: original.age?.typ ?? usualAge(catalogue, type),
  };
};
