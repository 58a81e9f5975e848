import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import type { Catalogue, PositionId, TypeId } from '../catalogue.ts';
import { formatValue } from '../quantities/index.ts';

/** Whether a type is met in a position in practice, and if not, why. */
export type Pairing = { met: true } | { met: false; why: string };

const span = (low: number, high: number): string =>
  `${formatValue(low, 'F')} to ${formatValue(high, 'F')}`;

const valuesApart = (type: TypeRow, position: PositionRow): string | undefined =>
  type.old_c_max < position.usual_c_min || type.old_c_min > position.usual_c_max
    ? `made from ${span(type.old_c_min, type.old_c_max)}, while this position takes ` +
      span(position.usual_c_min, position.usual_c_max)
    : undefined;

const wrongPolarity = (type: TypeRow, position: PositionRow): string | undefined =>
  type.polarity === 'polar' && position.voltage_sense !== 'one sign'
    ? 'a polar part, and the voltage here takes both signs'
    : undefined;

/** Whether a type is met as the old part in a position. */
export const pairing = (catalogue: Catalogue, type: TypeRow, position: PositionRow): Pairing => {
  const noted = catalogue.unlikelyPairs.find(
    (pair) => pair.type === type.id && pair.position === position.id,
  );
  const why = noted?.why ?? valuesApart(type, position) ?? wrongPolarity(type, position);
  return why === undefined ? { met: true } : { met: false, why };
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
