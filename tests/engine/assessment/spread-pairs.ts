import type { Catalogue, PositionId, TypeId } from '../../../src/engine/index.ts';

/**
 * Pairs of type and position with every type and every position among them, where all pairs would
 * take too long.
 * @param step one pair in so many, without a divisor in common with the number of positions
 */
export const spreadPairs = (catalogue: Catalogue, step: number): [TypeId, PositionId][] =>
  Object.keys(catalogue.types)
    .flatMap((type) =>
      Object.keys(catalogue.positions).map((position): [TypeId, PositionId] => [type, position]),
    )
    .filter((_, index) => index % step === 0);
