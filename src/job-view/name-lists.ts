import type { Catalogue } from '../engine/index.ts';

/** A name that a cell of the parts list offers, and the id that it stands for. */
export interface ListedName {
  id: string;
  name: string;
}

interface Named extends ListedName {
  /** What tells it from another of the same name. */
  of: string;
}

/** Names that stand for one id each: those that are alike say what they are of. */
const apart = (all: readonly Named[]): ListedName[] => {
  const alike = Map.groupBy(all, ({ name }) => name.toLowerCase());
  return all.map(({ id, name, of }) => ({
    id,
    name: (alike.get(name.toLowerCase())?.length ?? 0) > 1 ? `${name} (${of})` : name,
  }));
};

/** Types of every family, and devices by their number. */
export const typeNames = ({ types, kindTypes, devices }: Catalogue): ListedName[] =>
  apart([
    ...Object.values(types).map(({ id, name }) => ({ id, name, of: 'capacitor' })),
    ...Object.values(kindTypes).map(({ id, name, kind }) => ({ id, name, of: kind })),
    ...devices.devices.map(({ id, name, family }) => ({ id, name, of: family })),
  ]);

/** Positions of every family, and uses of devices. */
export const positionNames = ({ positions, kindPositions, devices }: Catalogue): ListedName[] =>
  apart([
    ...Object.values(positions).map(({ id, name }) => ({ id, name, of: 'capacitor' })),
    ...Object.values(kindPositions).map(({ id, name, kind }) => ({ id, name, of: kind })),
    ...devices.uses.map(({ id, name }) => ({ id, name, of: 'device' })),
  ]);
