import type { KindPositionRow, KindTypeRow } from '../../schemas/kinds.ts';
import type { Catalogue } from '../catalogue.ts';
import { notedAsUnmet, valuesApart, type Pairing } from '../positions/pairs.ts';
import type { Unit } from '../quantities/index.ts';

/** Whether a type of some kind is met as the old part in a position of that kind. */
export const kindPairing = (
  catalogue: Catalogue,
  type: KindTypeRow,
  position: KindPositionRow,
): Pairing => {
  const noted = notedAsUnmet(catalogue, type.id, position.id);
  if (noted !== undefined) return noted;
  const { old_min: from, old_max: to } = type;
  const { usual_min: least, usual_max: most } = position;
  const hasValues = [from, to, least, most].every((value) => value !== undefined);
  const unit = (catalogue.kinds[type.kind]?.unit ?? '') as Unit;
  const apart = hasValues
    ? valuesApart([from ?? 0, to ?? 0], [least ?? 0, most ?? 0], unit)
    : undefined;
  return apart ?? { met: true };
};

/** Every type with every position of its own kind, and whether they are met together. */
export const allKindPairings = (
  catalogue: Catalogue,
): { type: KindTypeRow; position: KindPositionRow; pairing: Pairing }[] =>
  Object.values(catalogue.kindTypes).flatMap((type) =>
    Object.values(catalogue.kindPositions)
      .filter(({ kind }) => kind === type.kind)
      .map((position) => ({ type, position, pairing: kindPairing(catalogue, type, position) })),
  );
