import type { Catalogue, PropertyId, TypeId } from '../engine/catalogue.ts';
import type { Range } from '../engine/quantities/range.ts';
import type { KindPropertyRow } from '../schemas/kinds.ts';
import type { PropertyRow, TypeRow } from '../schemas/types.ts';
import { printFigure, printUnit } from '../text/numbers.ts';
import { axisOver, type Axis } from './range-axis.ts';

/** The properties that a type has figures of, its own or those of the types that it may be. */
export const propertiesOfType = (
  catalogue: Catalogue,
  { id, union_of }: Pick<TypeRow, 'id' | 'union_of'>,
): PropertyRow[] => {
  const figured = new Set(
    catalogue.figures.filter(({ type }) => type === id).map(({ property }) => property),
  );
  const knowledge = catalogue.knowledge[id] ?? {};
  return Object.values(catalogue.properties).filter(
    (property) =>
      figured.has(property.id) ||
      (union_of.length > 0 && knowledge[property.id]?.status === 'known'),
  );
};

/** A property's range in SI, brought to the unit that its pages print. */
const inPropertyUnit = (catalogue: Catalogue, property: PropertyRow, range: Range): Range => {
  const factor = catalogue.units[property.unit]?.factor ?? 1;
  return { min: range.min / factor, typ: range.typ / factor, max: range.max / factor };
};

/** The joined range of a property of a type in the unit that pages print, where it is known. */
export const joinedRange = (
  catalogue: Catalogue,
  type: TypeId,
  property: PropertyRow,
): Range | undefined => {
  const known = catalogue.knowledge[type]?.[property.id];
  return known?.status === 'known' ? inPropertyUnit(catalogue, property, known.range) : undefined;
};

/** The middle of a joined range is worked out, so that more than two digits would be pretence. */
const twoDigits = (value: number): number => Number(value.toPrecision(2));

/** What is known of a property of a type, in words. */
export const knowledgeText = (
  catalogue: Catalogue,
  type: TypeId,
  property: PropertyRow,
): string => {
  const known = catalogue.knowledge[type]?.[property.id];
  if (known?.status === 'not-applicable') return 'does not apply';
  if (known?.status !== 'known') return 'not known';
  const { min, typ, max } = inPropertyUnit(catalogue, property, known.range);
  return printFigure({ min, typ: min === max ? typ : twoDigits(typ), max }, property.unit);
};

/** What is known of a property of a type, for a column that names the unit: the ends alone. */
export const knowledgeCell = (
  catalogue: Catalogue,
  type: TypeId,
  property: PropertyRow,
): { text: string; typically: string } => {
  const range = joinedRange(catalogue, type, property);
  if (!range) return { text: knowledgeText(catalogue, type, property), typically: '' };
  const { min, typ, max } = range;
  return {
    text: printFigure({ min, max }, ''),
    typically: `typically ${printFigure({ typ: twoDigits(typ) }, property.unit)}`,
  };
};

/** A property's name with its unit, as a column is headed. */
export const propertyHeading = ({ name, unit }: PropertyRow): string =>
  [name, printUnit(unit)].filter(Boolean).join(', ');

/** Types that have a property: of the kinds that it belongs to, or of capacitors. */
const typesWith = (
  { types, kindTypes }: Catalogue,
  property: PropertyRow | KindPropertyRow,
): TypeId[] =>
  'kinds' in property
    ? Object.values(kindTypes)
        .filter(({ kind }) => property.kinds.includes(kind))
        .map(({ id }) => id)
    : [...Object.keys(types), ...Object.keys(kindTypes)];

/** Typical values of a property for every type that has one, in the unit that pages print. */
export const typicalOfAll = (catalogue: Catalogue, property: PropertyRow): number[] =>
  typesWith(catalogue, property).flatMap(
    (type) => joinedRange(catalogue, type, property)?.typ ?? [],
  );

/** One axis for all types, so that the bars of one property compare from page to page. */
export const propertyAxis = (catalogue: Catalogue, property: PropertyId): Axis => {
  const row = catalogue.properties[property];
  if (!row) throw new Error(`there is no property ${property}`);
  const ranges = typesWith(catalogue, row).flatMap(
    (type) => joinedRange(catalogue, type, row) ?? [],
  );
  return axisOver(
    ranges.flatMap(({ min, typ, max }) => [min, typ, max]),
    row.scale,
  );
};
