import type { OfferRow } from '../../schemas/types.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';

/** Offers by type, sorted out once for each catalogue: every part of an assessment asks. */
const sorted = new WeakMap<Catalogue, ReadonlyMap<TypeId, OfferRow[]>>();

/** What the market offers of a type, in the order of its table. */
export const offersOf = (catalogue: Catalogue, type: TypeId): readonly OfferRow[] => {
  const known = sorted.get(catalogue) ?? Map.groupBy(catalogue.offers, ({ type }) => type);
  sorted.set(catalogue, known);
  return known.get(type) ?? [];
};
