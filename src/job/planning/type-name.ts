import type { Catalogue } from '../../engine/index.ts';

type Named = Pick<Catalogue, 'types' | 'kindTypes' | 'devices'>;

/** Name of a type of any family, or the number of a device; what is not known stands as typed. */
export const typeNameIn = ({ types, kindTypes, devices }: Named, id: string): string =>
  types[id]?.name ??
  kindTypes[id]?.name ??
  devices.devices.find((row) => row.id === id)?.name ??
  id;
