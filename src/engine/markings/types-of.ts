import type { TypeId } from '../catalogue.ts';
import type { Lexicon } from './lexicon.ts';
import type { Parse } from './parse.ts';
import { hasSections, sectionsOf } from './sections-of.ts';
import type { Meaning } from './token.ts';

/** What two lists of types have in common, an empty one standing for all; nothing if they exclude each other. */
const common = (a: readonly TypeId[], b: readonly TypeId[]): readonly TypeId[] | undefined => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both = a.filter((item) => b.includes(item));
  return both.length === 0 ? undefined : both;
};

/** Bodies that a reading may stand on. */
export const bodiesOf = (lexicon: Lexicon, parse: Parse) => {
  const { body } = lexicon.hints;
  const named = body === undefined ? lexicon.bodies.namesOf(parse.bodies) : [body];
  return lexicon.tables.bodies.filter((row) => named.length === 0 || named.includes(row.id));
};

/** Those of some types that the bodies of a reading can be, or all where that leaves none. */
const ofBodies = (lexicon: Lexicon, parse: Parse, types: readonly TypeId[]): TypeId[] => {
  const families = bodiesOf(lexicon, parse).map((row) => row.family);
  const fitting = types.filter((type) => {
    const family = lexicon.types[type]?.family;
    return family === undefined || families.includes(family);
  });
  return fitting.length === 0 ? [...types] : fitting;
};

const classOf = ({ content }: Meaning): string | undefined =>
  content.says === 'safety' ? content.class : undefined;

/** Of two classes of mains duty, the one to earth: its parts serve across the line as well. */
const withoutLesser = (naming: readonly Meaning[]): readonly Meaning[] =>
  naming.some((meaning) => classOf(meaning)?.startsWith('Y'))
    ? naming.filter((meaning) => classOf(meaning)?.startsWith('Y') !== false)
    : naming;

/** The usual body of several sections of such values, in a list; none where there is one section. */
const bodyOfCan = ({ values, bodies }: Lexicon, parse: Parse): string[] => {
  if (!hasSections(parse)) return [];
  const farads = sectionsOf(parse, undefined).map(({ capacitance }) => capacitance.typ);
  return values.forms.sections
    .filter((form) => farads.every((value) => value >= form.value_min && value <= form.value_max))
    .flatMap((form) => form.bodies)
    .filter((id) => (bodies.bitsOf([id]) & parse.bodies) !== 0)
    .slice(0, 1);
};

/** Types that all naming tokens allow; where they exclude each other, safety first, then the rest. */
export const typesOf = (lexicon: Lexicon, parse: Parse): TypeId[] => {
  const naming = withoutLesser(
    parse.taken.map((token) => token.meaning).filter((meaning) => meaning.types.length > 0),
  );
  const first = ({ slot }: Meaning): number => (slot === 'safety' ? 0 : 1);
  const ordered = naming.toSorted((a, b) => first(a) - first(b));
  const agreed = ordered.reduce<readonly TypeId[] | undefined>(
    (types, meaning) => (types === undefined ? undefined : common(types, meaning.types)),
    [],
  );
  const types = agreed ?? [...new Set(ordered.flatMap((meaning) => meaning.types))];
  const { body } = lexicon.hints;
  const { type } = lexicon.hints;
  if (type !== undefined && (types.length === 0 || types.includes(type))) return [type];
  if (types.length > 0) return ofBodies(lexicon, parse, types);
  const named = lexicon.bodies.namesOf(parse.bodies);
  const bodies =
    body === undefined ? (named.length === 1 ? named : bodyOfCan(lexicon, parse)) : [body];
  return bodies.flatMap((id) => lexicon.tables.bodies.find((row) => row.id === id)?.types ?? []);
};
