import { loadCatalogue } from '../catalogue/index.ts';
import {
  findStandIns,
  pairing,
  rankStandIns,
  type Assessment,
  type PositionId,
  type RankedStandIn,
  type TypeId,
} from '../engine/index.ts';
import { answeredFirst, leaningFrom } from './strangeness.ts';

/** Stand-ins for a type in a position at reference conditions, that which the answer names first. */
export const referenceStandIns = (type: TypeId, position: PositionId): Assessment[] => {
  const catalogue = loadCatalogue();
  const request = { original: { type }, position };
  return answeredFirst(catalogue, request, findStandIns(catalogue, request));
};

/** The one that the answer of their page names first, without the work of explaining any. */
export const firstStandIn = (type: TypeId, position: PositionId): RankedStandIn | undefined => {
  const catalogue = loadCatalogue();
  const request = { original: { type }, position };
  return rankStandIns(catalogue, request).first(leaningFrom(catalogue, request));
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
