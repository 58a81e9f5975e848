import { lastFew } from '../building/last-few.ts';
import { loadCatalogue } from '../catalogue/index.ts';
import { allKindPairings, findKindStandIns, type KindAssessment } from '../engine/index.ts';
import type { KindPositionRow, KindRow, KindTypeRow } from '../schemas/kinds.ts';

/** A page and the figures beside it are built together, several at a time. */
const assessed = lastFew<KindAssessment[]>(16);

/** Stand-ins for a type of some kind at reference conditions. */
export const kindReference = (type: string, position: string): KindAssessment[] =>
  assessed(`${type} ${position}`, () =>
    findKindStandIns(loadCatalogue(), { original: { type }, position }),
  );

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
