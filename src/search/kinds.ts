import { kindPairing, type Catalogue } from '../engine/index.ts';
import { kindPath } from '../substitution/kind-path.ts';
import { partInPosition } from '../text/part-in-position.ts';
import { findNamesAmong, shareNamed, tellingWords } from './names.ts';

/** An address within the site, and what it is called. */
export type NamedPath = readonly [`/${string}`, string];

/** Kinds that a text calls by their own name, such as `trimmers`. */
const kindsNamed = ({ kinds }: Catalogue, text: string): NamedPath[] => {
  const words = tellingWords(text);
  return Object.values(kinds)
    .filter(({ name }) => words.includes(name))
    .map(({ plural, name }) => [`/${plural}/`, `All about the ${name}`]);
};

/** Some rows of a table in its own order. */
const inOrder = <Row>(table: Readonly<Record<string, Row>>, some: readonly Row[]): Row[] =>
  some.length === 0 ? [] : Object.values(table).filter((row) => some.includes(row));

/** Of what is asked for, so much has to be named: “ripple current” asks for no resistor that sets a current. */
const LEAST_SHARE = 0.6;

/**
 * Pages about kinds of part besides capacitors that a text names: pairs of type and position where it
 * names both, else the types and the positions, and the kinds themselves.
 * @param query what pages about a type are asked, with its `?`
 */
export const kindLinks = (catalogue: Catalogue, text: string, query = ''): NamedPath[] => {
  const { types, positions } = findNamesAmong(
    Object.values(catalogue.kindTypes),
    Object.values(catalogue.kindPositions),
    text,
  );
  if (shareNamed(text, types, positions) < LEAST_SHARE) return kindsNamed(catalogue, text);
  const pairs = inOrder(catalogue.kindTypes, types).flatMap((type) =>
    inOrder(catalogue.kindPositions, positions)
      .filter(({ kind }) => kind === type.kind)
      .filter((position) => kindPairing(catalogue, type, position).met)
      .flatMap((position): NamedPath[] => {
        const kind = catalogue.kinds[type.kind];
        const name = partInPosition(type.name, position.name);
        return kind === undefined
          ? []
          : [[`${kindPath(kind, type.id, position.id)}${query}`, name]];
      }),
  );
  return [
    ...pairs,
    ...types.map(({ id, name }): NamedPath => [`/types/${id}/${query}`, name]),
    ...positions.map(({ id, name }): NamedPath => [`/positions/${id}/`, name]),
    ...kindsNamed(catalogue, text),
  ];
};
