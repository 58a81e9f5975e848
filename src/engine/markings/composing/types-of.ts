import type { TypeId } from '../../catalogue.ts';
import { common } from '../../common.ts';
import type { Lexicon } from '../lexicon/lexicon.ts';
import type { Parse } from '../ways/parse.ts';
import { hasSections, sectionsOf } from './sections-of.ts';
import type { Meaning } from '../meanings/token.ts';

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

/** Whether a capacitance (F) is met in a body, or written in a form. */
const inBody = (row: { value_min: number; value_max: number }, farad: number): boolean =>
  farad >= row.value_min && farad <= row.value_max;

/**
 * The usual body of several sections of such values, in a list. A voltage that is usual on other bodies,
 * as the 275 of `100+100/275`, makes no paper of a can.
 */
const bodyOfCan = ({ values, tables }: Lexicon, parse: Parse): string[] => {
  const farads = sectionsOf(parse, undefined).map(({ capacitance }) => capacitance.typ);
  return values.forms.sections
    .filter((form) => farads.every((value) => inBody(form, value)))
    .flatMap((form) => form.bodies)
    .filter((id) =>
      tables.bodies.some((row) => row.id === id && farads.every((value) => inBody(row, value))),
    )
    .slice(0, 1);
};

/** Whether a voltage is marked as one for AC, by more than figures that are usual for such parts. */
export const isForAc = ({ taken }: Parse): boolean =>
  taken.some(
    ({ at, end, meaning: { content } }) =>
      content.says === 'voltage' &&
      content.kind === 'ac' &&
      end - at > String(content.volts.typ).length,
  );

/** The body that a reading tells without naming a type, in a list; none where several are left. */
const bodyTold = (lexicon: Lexicon, parse: Parse): readonly string[] => {
  const { body } = lexicon.hints;
  if (body !== undefined) return [body];
  // Sections that are rated for AC are of film or bipolar: no can of polar ones.
  if (hasSections(parse)) return isForAc(parse) ? [] : bodyOfCan(lexicon, parse);
  const named = lexicon.bodies.namesOf(parse.bodies);
  return named.length === 1 ? named : [];
};

/** Types that all naming tokens allow; where they exclude each other, safety first, then the rest. */
export const typesOf = (lexicon: Lexicon, parse: Parse): TypeId[] => {
  // What can be set is named by its range, whatever it is made of.
  const ofValue = parse.value?.meaning.types ?? [];
  if (ofValue.length > 0) return [...ofValue];
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
  const { type } = lexicon.hints;
  if (type !== undefined && (types.length === 0 || types.includes(type))) return [type];
  if (types.length > 0) return ofBodies(lexicon, parse, types);
  return bodyTold(lexicon, parse).flatMap(
    (id) => lexicon.tables.bodies.find((row) => row.id === id)?.types ?? [],
  );
};
