import type { Part } from '../assessment/parts.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { mapFalling } from '../quantities/range.ts';
import { bodiesTogether, bodyOfMembers, estimatedBody, type Body } from './body.ts';
import { tabulatedBody } from './body-table.ts';

/** A part as far as its size is concerned; an old part has no known style. */
export type Sized = Pick<Part, 'type' | 'capacitance' | 'ratedVoltage' | 'made'> & {
  style?: string | undefined;
};

/** Property that a volume is estimated from where no size is tabulated. */
export const DENSITY = 'charge-density';

/** Tabulated bodies are looked up once a part: five findings ask for the same one. */
const looked = new WeakMap<Catalogue['bodies'], WeakMap<Sized, { body: Body | undefined }>>();

const published = (catalogue: Catalogue, part: Sized): Body | undefined => {
  const { bodies, types } = catalogue;
  const known = looked.get(bodies) ?? new WeakMap<Sized, { body: Body | undefined }>();
  looked.set(bodies, known);
  const remembered = known.get(part);
  if (remembered !== undefined) return remembered.body;
  const body = findBody(catalogue, part, types[part.type]?.union_of ?? []);
  known.set(part, { body });
  return body;
};

const findBody = (
  { bodies }: Catalogue,
  part: Sized,
  members: readonly TypeId[],
): Body | undefined => {
  if (members.length === 0) return tabulatedBody(bodies, part);
  const [first, ...rest] = members.flatMap(
    (type) => tabulatedBody(bodies, { ...part, type }) ?? [],
  );
  return first === undefined || rest.length + 1 < members.length
    ? undefined
    : bodyOfMembers([first, ...rest]);
};

const estimate = ({ knowledge }: Catalogue, part: Sized): Body | undefined => {
  const density = knowledge[part.type]?.[DENSITY];
  return density?.status === 'known'
    ? estimatedBody(
        mapFalling(density.range, (rho) => (part.capacitance * part.ratedVoltage) / rho),
      )
    : undefined;
};

/**
 * Size of a part: the smallest tabulated body that takes its value and voltage; for a part of
 * unknown class the span of what it can be; where no row covers it, a volume estimated from what
 * its type packs into a given size. Nothing where not even that is known.
 */
const bodyOfSingle = (catalogue: Catalogue, part: Sized): Body | undefined =>
  published(catalogue, part) ?? estimate(catalogue, part);

/** The same of a part that may be made of two: both bodies beside each other. */
export const bodyOf = (catalogue: Catalogue, part: Sized): Body | undefined => {
  if (part.made === undefined) return bodyOfSingle(catalogue, part);
  const [first, second] = part.made.parts.map((single) => bodyOfSingle(catalogue, single));
  if (part.made.parts.length === 1) return first;
  return first && second && bodiesTogether(first, second);
};
