import { valuesOf, type Tables } from '../read-folder.ts';
import { byId, goodRows } from './lookups.ts';

/** Tables that hold figures of properties, and those that say what the properties are. */
export const FIGURE_TABLES = ['figures.csv', 'kinds/figures-by-value.csv'] as const;
export const PROPERTY_TABLES = ['properties.csv', 'kinds/properties.csv'] as const;

/** Every property of any kind of part, by its id. */
export const propertiesOf = (tables: Tables) =>
  byId([...valuesOf(tables, 'properties.csv'), ...valuesOf(tables, 'kinds/properties.csv')]);

/** Every row that gives a figure of a property, with the table that it stands in. */
export const figureRows = (tables: Tables) =>
  FIGURE_TABLES.flatMap((file) => goodRows(tables, file).map((row) => ({ file, row })));
