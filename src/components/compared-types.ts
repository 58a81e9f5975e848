import type { Catalogue, Knowledge } from '../engine/catalogue.ts';
import type { Range } from '../engine/quantities/range.ts';
import type { PropertyRow, TypeRow } from '../schemas/types.ts';
import { joinedRange } from './property-figures.ts';

/** What is known of one property of a type. */
export interface Compared {
  type: TypeRow;
  /** In the unit that pages print. */
  range: Range;
  knowledge: Knowledge | undefined;
}

/** Every type of which a property is known, the best typical figure first. */
export const typesBy = (catalogue: Catalogue, property: PropertyRow): Compared[] =>
  Object.values(catalogue.types)
    .flatMap((type) => {
      const range = joinedRange(catalogue, type.id, property);
      return range === undefined
        ? []
        : [{ type, range, knowledge: catalogue.knowledge[type.id]?.[property.id] }];
    })
    .toSorted(
      (a, b) =>
        (property.better === 'high' ? b : a).range.typ -
        (property.better === 'high' ? a : b).range.typ,
    );

/** Types of which a property is not known, though they have one. */
export const typesWithout = (catalogue: Catalogue, property: PropertyRow): TypeRow[] =>
  Object.values(catalogue.types).filter(
    ({ id }) => catalogue.knowledge[id]?.[property.id]?.status === 'unknown',
  );
