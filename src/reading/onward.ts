import { link } from '../components/link.ts';
import { href } from '../components/links.ts';
import {
  exactly,
  familyBears,
  ruleOf,
  formatQuantity,
  formatValue,
  pairing,
  writeQuantity,
  type Catalogue,
  type PositionId,
  type Reading,
  type TypeId,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { TypeRow } from '../schemas/types.ts';
import { byUse } from '../search/position-order.ts';
import { havingId, partKeys } from '../substitution/keys.ts';
import { writeRated } from '../substitution/rated-voltage.ts';
import { ratingTold, toleranceTold } from '../substitution/told-by-marking.ts';
import { writeTolerance } from '../substitution/typed-numbers.ts';
import { chips } from './chips.ts';
import { kindOnward } from './kind-onward.ts';
import { midSentence } from '../text/mid-sentence.ts';

/** The query that carries a reading to the pages about what replaces a part of a type. */
export const readingQuery = (
  catalogue: Catalogue,
  reading: Reading,
  type: TypeId,
): URLSearchParams => {
  const { capacitance } = reading;
  const tolerance = toleranceTold(reading);
  const rated = ratingTold(catalogue, reading, [type]);
  const query = new URLSearchParams();
  if (capacitance) query.set(partKeys.capacitance, writeQuantity(exactly(capacitance.typ), 'F'));
  if (tolerance) query.set(partKeys.tolerance, writeTolerance(tolerance));
  if (rated) query.set(partKeys.ratedVoltage, writeRated(rated));
  return query;
};

/** A query behind its `?`; nothing where nothing is asked. */
const asked = (query: URLSearchParams): string => {
  const text = query.toString();
  return text === '' ? '' : `?${text}`;
};

/** A type as the old part, with the unions that say as much where several types are left. */
export const likeliestType = (
  catalogue: Catalogue,
  types: readonly TypeId[],
): TypeId | undefined => {
  const whole = Object.values(catalogue.types).find(
    (type) =>
      type.union_of.length > 0 &&
      types.length > 1 &&
      types.every((id) => id === type.id || type.union_of.includes(id)) &&
      type.union_of.every((id) => types.includes(id)),
  );
  return whole?.id ?? types.find((id) => Object.hasOwn(catalogue.types, id));
};

/** Positions in which a part of this type and value is met, the commonest first. */
const positionsFor = (
  catalogue: Catalogue,
  type: TypeId,
  capacitance: number | undefined,
): PositionId[] => {
  const row = catalogue.types[type];
  if (row === undefined) return [];
  const leeway = ruleOf(catalogue, 'beyond-usual');
  return Object.values(catalogue.positions)
    .filter((position) => pairing(catalogue, row, position).met)
    .filter(
      ({ usual_c_min: low, usual_c_max: high }) =>
        capacitance === undefined || (capacitance >= low / leeway && capacitance <= high * leeway),
    )
    .toSorted(byUse)
    .map((position) => position.id);
};

/** The query that carries a reading to the key that goes by looks. */
const lookQuery = ({ capacitance }: Reading): string =>
  capacitance === undefined
    ? ''
    : `?${new URLSearchParams({ capacitance: writeQuantity(exactly(capacitance.typ), 'F') }).toString()}`;

/** Types that a part may be of by what its marking says of value and voltage, unknown ones first. */
export const typesThatMayBe = (catalogue: Catalogue, reading: Reading): TypeRow[] => {
  const value = reading.capacitance?.typ ?? 0;
  const volts = reading.ratedVoltage?.typ ?? 0;
  return Object.values(catalogue.types)
    .filter((type) => value >= type.old_c_min && value <= type.old_c_max)
    .filter(({ family }) => familyBears(catalogue, family, volts))
    .toSorted((a, b) => b.union_of.length - a.union_of.length);
};

/**
 * Types to choose from where the marking does not say what the part is, unknown ones first.
 * @param having what an address says of another part in place of one of a type, where one is asked about
 */
export const typeChoice = (
  catalogue: Catalogue,
  reading: Reading,
  having: (type: TypeRow) => URLSearchParams = () => new URLSearchParams(),
): Markup =>
  h(
    'div',
    { class: 'onward' },
    h(
      'p',
      {},
      'The marking does not say what the part is made of. ',
      link(`/look/${lookQuery(reading)}`, 'Find out by its look'),
      ', or, for what replaces it, choose:',
    ),
    chips(
      typesThatMayBe(catalogue, reading).map((type) => {
        const query = [...readingQuery(catalogue, reading, type.id), ...having(type)];
        const end = asked(new URLSearchParams(query));
        return h('a', { href: href(`/replace/${type.id}/${end}`) }, type.short_name);
      }),
    ),
  );

/** Where a part of a type and value may sit, each with what replaces it there. */
const placeLinks = (
  catalogue: Catalogue,
  type: TypeId,
  capacitance: number | undefined,
  end: string,
): Markup =>
  chips(
    positionsFor(catalogue, type, capacitance).map((position) =>
      h(
        'a',
        { href: href(`/replace/${type}/in/${position}/${end}`) },
        catalogue.positions[position]?.name ?? position,
      ),
    ),
  );

/** Where a part of one value leads to, by where it sits, or by what it is where that is not known. */
const linksOfOne = (catalogue: Catalogue, reading: Reading): Markup | undefined => {
  if (reading.resistance !== undefined) return kindOnward(catalogue, reading);
  const type = likeliestType(catalogue, reading.types);
  const row = type === undefined ? undefined : catalogue.types[type];
  if (reading.capacitance === undefined) return undefined;
  if (row === undefined) return typeChoice(catalogue, reading);
  const query = asked(readingQuery(catalogue, reading, row.id));
  return h(
    'div',
    { class: 'onward' },
    h('p', {}, `What stands in for ${midSentence(row.short_name)} depends on where it sits:`),
    placeLinks(catalogue, row.id, reading.capacitance.typ, query),
  );
};

/**
 * Where an old part of a type may sit, each with what another part comes to in its place.
 * @param reading what is marked on the old part, where something is
 * @param having what an address says of the other part
 */
export const judgedAt = (
  catalogue: Catalogue,
  type: TypeId,
  reading: Reading | undefined,
  having: URLSearchParams,
): Markup => {
  const query = new URLSearchParams([
    ...(reading === undefined ? [] : readingQuery(catalogue, reading, type)),
    ...having,
  ]);
  return placeLinks(catalogue, type, reading?.capacitance?.typ, `${asked(query)}#${havingId}`);
};

const sectionName = ({ capacitance, ratedVoltage }: Reading): string =>
  [
    capacitance === undefined ? '' : formatValue(capacitance.typ, 'F'),
    ratedVoltage === undefined ? '' : formatQuantity(ratedVoltage, 'V'),
  ]
    .filter((text) => text !== '')
    .join(', ');

/** The sections of a can, each with what is marked for all; those alike once. */
const differentSections = (reading: Reading): Reading[] => {
  const byName = new Map(
    (reading.sections ?? []).map((section): [string, Reading] => {
      const one = { ...reading, ...section };
      return [sectionName(one), one];
    }),
  );
  return [...byName.values()];
};

/**
 * Where a reading leads to: what stands in for the part, by where it sits or by what it is; of
 * several sections that differ, for each.
 */
export const replaceLinks = (catalogue: Catalogue, reading: Reading): Markup | undefined => {
  const sections = differentSections(reading);
  const [first = reading, ...others] = sections;
  if (others.length === 0) return linksOfOne(catalogue, first);
  return h(
    'div',
    { class: 'sections' },
    ...sections.flatMap((section) => {
      const links = linksOfOne(catalogue, section);
      return links === undefined ? [] : [h('h4', {}, `Section of ${sectionName(section)}`), links];
    }),
  );
};
