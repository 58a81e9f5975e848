import {
  isChip,
  type Catalogue,
  type Made,
  type TypeId,
  type WithMountings,
} from '../engine/index.ts';
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

/** Whether what goes in, or one of its parts, is a chip, for which a board made for leads has no place. */
export const needsPads = (
  catalogue: WithMountings,
  { candidate, buy }: { candidate: AnyPart; buy?: { style: string } | undefined },
): boolean =>
  (madeOf(candidate)?.parts ?? (buy === undefined ? [] : [buy])).some(({ style }) =>
    isChip(catalogue, style),
  );
