import type { OfferRow } from '../../schemas/types.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';

/** Offers by type, sorted out once for each catalogue: every part of an assessment asks. */
const sorted = new WeakMap<Catalogue, ReadonlyMap<TypeId, OfferRow[]>>();

const byType = (offers: readonly OfferRow[]): Map<TypeId, OfferRow[]> => {
  const found = new Map<TypeId, OfferRow[]>();
  for (const offer of offers) {
    const own = found.get(offer.type);
    if (own === undefined) found.set(offer.type, [offer]);
    else own.push(offer);
  }
  return found;
};

/** What the market offers of a type, in the order of its table. */
export const offersOf = (catalogue: Catalogue, type: TypeId): readonly OfferRow[] => {
  const known = sorted.get(catalogue) ?? byType(catalogue.offers);
  sorted.set(catalogue, known);
  return known.get(type) ?? [];
};
