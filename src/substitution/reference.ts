import { loadCatalogue } from '../catalogue/index.ts';
import {
  findStandIns,
  pairing,
  type Assessment,
  type PositionId,
  type TypeId,
} from '../engine/index.ts';

const assessed = new Map<string, Assessment[]>();

/** Stand-ins for a type in a position at reference conditions; worked out once a build. */
export const referenceStandIns = (type: TypeId, position: PositionId): Assessment[] => {
  const key = `${type} ${position}`;
  const known = assessed.get(key);
  if (known !== undefined) return known;
  const found = findStandIns(loadCatalogue(), { original: { type }, position });
  assessed.set(key, found);
  return found;
};

/** Every pair of type and position, with a page of its own if the two are met together. */
export const pairPaths = () => {
  const catalogue = loadCatalogue();
  return Object.values(catalogue.types).flatMap((type) =>
    Object.values(catalogue.positions).map((position) => ({
      params: { type: type.id, position: position.id },
      props: { type, position, pairing: pairing(catalogue, type, position) },
    })),
  );
};
