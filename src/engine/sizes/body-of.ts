import type { Part } from '../assessment/parts.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { mapFalling } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { bodiesTogether, bodyOfMembers, estimatedBody, type Body } from './body.ts';
import { tabulatedBody } from './body-table.ts';

/** A part as far as its size is concerned; an old part has no known style. */
export type Sized = Pick<Part, 'type' | 'capacitance' | 'ratedVoltage' | 'made'> & {
  style?: string | undefined;
};

/** Property that a volume is estimated from where no size is tabulated. */
export const DENSITY = 'charge-density';

/** From the tables, for a part of unknown class from those of all that it can be. */
const published = (catalogue: Catalogue, part: Sized): Body | undefined => {
  const members: readonly TypeId[] = catalogue.types[part.type]?.union_of ?? [];
  if (members.length === 0) return tabulatedBody(catalogue, part);
  const [first, ...rest] = members.flatMap(
    (type) => tabulatedBody(catalogue, { ...part, type }) ?? [],
  );
  return first === undefined || rest.length + 1 < members.length
    ? undefined
    : bodyOfMembers([first, ...rest]);
};

const estimate = (catalogue: Catalogue, part: Sized): Body | undefined => {
  const density = catalogue.knowledge[part.type]?.[DENSITY];
  return density?.status === 'known'
    ? estimatedBody(
        mapFalling(density.range, (rho) => (part.capacitance * part.ratedVoltage) / rho),
        ruleOf(catalogue, 'least-body'),
      )
    : undefined;
};

/** Bodies are found once a part: five findings ask for the same one. */
const found = new WeakMap<Catalogue, WeakMap<Sized, { body: Body | undefined }>>();

/**
 * Size of a part: the smallest tabulated body that takes its value and voltage; for a part of
 * unknown class the span of what it can be; where no row covers it, a volume estimated from what
 * its type packs into a given size. Nothing where not even that is known.
 */
const bodyOfSingle = (catalogue: Catalogue, part: Sized): Body | undefined => {
  const known = found.get(catalogue) ?? new WeakMap<Sized, { body: Body | undefined }>();
  found.set(catalogue, known);
  const remembered = known.get(part);
  if (remembered !== undefined) return remembered.body;
  const body = published(catalogue, part) ?? estimate(catalogue, part);
  known.set(part, { body });
  return body;
};

/** The same of a part that may be made of two: both bodies beside each other. */
export const bodyOf = (catalogue: Catalogue, part: Sized): Body | undefined => {
  if (part.made === undefined) return bodyOfSingle(catalogue, part);
  const [first, second] = part.made.parts.map((single) => bodyOfSingle(catalogue, single));
  if (part.made.parts.length === 1) return first;
  return first && second && bodiesTogether(first, second);
};
