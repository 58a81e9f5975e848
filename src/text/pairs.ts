import type { Catalogue, PositionId, TypeId } from '../engine/catalogue.ts';

/**
 * Whether an old part of the type is met in the position: some value is usual for both, and nobody
 * has ruled the pair out.
 */
export const areMetTogether = (
  catalogue: Catalogue,
  typeId: TypeId,
  positionId: PositionId,
): boolean => {
  const type = catalogue.types[typeId];
  const position = catalogue.positions[positionId];
  if (!type || !position) return false;
  return (
    type.old_c_min <= position.usual_c_max &&
    type.old_c_max >= position.usual_c_min &&
    !catalogue.unlikelyPairs.some((pair) => pair.type === typeId && pair.position === positionId)
  );
};
