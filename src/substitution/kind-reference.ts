import { loadCatalogue } from '../catalogue/index.ts';
import {
  allKindPairings,
  findKindStandIns,
  type KindAssessment,
  type PositionId,
  type TypeId,
} from '../engine/index.ts';
import type { KindPositionRow, KindRow, KindTypeRow } from '../schemas/kinds.ts';
import { answeredFirst } from './strangeness.ts';

interface KindPair {
  params: { plural: string; type: string; position: string };
  props: { kind: KindRow; type: KindTypeRow; position: KindPositionRow };
}

/** Every pair of type and position of one kind that is met together. */
export const kindPairPaths = (): KindPair[] => {
  const { kinds } = loadCatalogue();
  return allKindPairings(loadCatalogue())
    .filter(({ pairing }) => pairing.met)
    .flatMap(({ type, position }) => {
      const kind = kinds[type.kind];
      return kind === undefined
        ? []
        : [
            {
              params: { plural: kind.plural, type: type.id, position: position.id },
              props: { kind, type, position },
            },
          ];
    });
};

/** The stand-in that the answer of a pair's page names first; nothing where none is made. */
export const firstKindStandIn = (
  type: TypeId,
  position: PositionId,
): KindAssessment | undefined => {
  const catalogue = loadCatalogue();
  const request = { original: { type }, position };
  return answeredFirst(catalogue, request, findKindStandIns(catalogue, request))[0];
};
