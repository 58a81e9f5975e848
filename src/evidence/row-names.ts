import type { Catalogue } from '../engine/index.ts';

/** What the rows that evidence speaks of are called, by their ids; an id that no row has stands for itself. */
export const rowNames = ({ types, kindTypes, properties }: Catalogue) => ({
  typeName: (id: string): string => (types[id] ?? kindTypes[id])?.name ?? id,
  propertyName: (id: string): string => properties[id]?.name ?? id,
});
