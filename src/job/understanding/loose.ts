import { ruleOf, type Catalogue, type Reading } from '../../engine/index.ts';

const isAsClose = (catalogue: Catalogue, { tolerance }: Reading): boolean =>
  tolerance?.unit === 'fraction' && tolerance.plus <= ruleOf(catalogue, 'closest-potentiometer');

/**
 * Readings of a panel control without those that make it closer than such are made, where others are left:
 * the B of `100kB` is its taper, and no tolerance of 0.1 %.
 */
export const loose = (
  catalogue: Catalogue,
  kind: string,
  readings: readonly Reading[],
): Reading[] => {
  const isTurned = Object.hasOwn(catalogue.kinds, kind) && catalogue.kinds[kind]?.wiper === 'panel';
  const left = isTurned ? readings.filter((one) => !isAsClose(catalogue, one)) : [];
  return left.length > 0 ? left : [...readings];
};
