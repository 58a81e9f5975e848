import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import type { Catalogue, PositionId, TypeId } from '../catalogue.ts';
import { formatValue } from '../quantities/index.ts';

/** Why a type is not met in a position. */
interface NotMet {
  met: false;
  why: string;
  /** Where it is for the values: those that the type was made in, those that the position takes. */
  apart?: { made: string; taken: string };
}

/** Whether a type is met in a position in practice, and if not, why. */
export type Pairing = { met: true } | NotMet;

const span = (low: number, high: number): string =>
  `${formatValue(low, 'F')} to ${formatValue(high, 'F')}`;

const valuesApart = (type: TypeRow, position: PositionRow): NotMet | undefined => {
  if (type.old_c_max >= position.usual_c_min && type.old_c_min <= position.usual_c_max) {
    return undefined;
  }
  const made = span(type.old_c_min, type.old_c_max);
  const taken = span(position.usual_c_min, position.usual_c_max);
  const why = `made from ${made}, while this position takes ${taken}`;
  return { met: false, why, apart: { made, taken } };
};

const wrongPolarity = (type: TypeRow, position: PositionRow): NotMet | undefined =>
  type.polarity === 'polar' && position.voltage_sense !== 'one sign'
    ? { met: false, why: 'a polar part, and the voltage here takes both signs' }
    : undefined;

/** Whether a type is met as the old part in a position. */
export const pairing = (catalogue: Catalogue, type: TypeRow, position: PositionRow): Pairing => {
  const noted = catalogue.unlikelyPairs.find(
    (pair) => pair.type === type.id && pair.position === position.id,
  );
  if (noted !== undefined) return { met: false, why: noted.why };
  return valuesApart(type, position) ?? wrongPolarity(type, position) ?? { met: true };
};

/** Every type with every position, and whether they are met together. */
export const allPairings = (
  catalogue: Catalogue,
): { type: TypeId; position: PositionId; pairing: Pairing }[] =>
  Object.values(catalogue.types).flatMap((type) =>
    Object.values(catalogue.positions).map((position) => ({
      type: type.id,
      position: position.id,
      pairing: pairing(catalogue, type, position),
    })),
  );
