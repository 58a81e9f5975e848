import type { Catalogue, PropertyId, TypeId } from '../engine/catalogue.ts';
import type { Range } from '../engine/quantities/range.ts';
import type { PropertyRow } from '../schemas/types.ts';
import { printFigure } from '../text/numbers.ts';
import { axisOver } from './range-axis.ts';
import type { Axis } from './range-axis.ts';

/** A property's range in SI, brought to the unit that its pages print. */
export const inPropertyUnit = (
  catalogue: Catalogue,
  property: PropertyRow,
  range: Range,
): Range => {
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

/** What is known of a property of a type, in words. */
export const knowledgeText = (
  catalogue: Catalogue,
  type: TypeId,
  property: PropertyRow,
): string => {
  const known = catalogue.knowledge[type]?.[property.id];
  if (known?.status === 'not-applicable') return 'does not apply';
  if (known?.status !== 'known') return 'not known';
  return printFigure(inPropertyUnit(catalogue, property, known.range), property.unit);
};

/** One axis for all types, so that the bars of one property compare from page to page. */
export const propertyAxis = (catalogue: Catalogue, property: PropertyId): Axis => {
  const row = catalogue.properties[property];
  if (!row) throw new Error(`there is no property ${property}`);
  const ranges = Object.keys(catalogue.types).flatMap(
    (type) => joinedRange(catalogue, type, row) ?? [],
  );
  return axisOver(
    ranges.flatMap(({ min, typ, max }) => [min, typ, max]),
    row.scale,
  );
};
