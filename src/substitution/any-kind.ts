import type { Catalogue, Made, TypeId } from '../engine/index.ts';
import type { KindTypeRow } from '../schemas/kinds.ts';
import type { TypeRow } from '../schemas/types.ts';
import type { AnyPart } from './phrases.ts';

/** A type by its id, of capacitors or of another kind. */
export const typeRowOf = (
  { types, kindTypes }: Catalogue,
  id: TypeId,
): TypeRow | KindTypeRow | undefined => types[id] ?? kindTypes[id];

/** How a stand-in is made of two parts, where it is. */
export const madeOf = (candidate: AnyPart): Made | undefined =>
  'made' in candidate ? candidate.made : undefined;
