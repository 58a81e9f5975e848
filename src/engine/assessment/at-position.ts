import type { PositionId } from '../catalogue.ts';

/** Tables sorted out once: every assessment asks for the rows of its position. */
const sorted = new WeakMap<readonly object[], ReadonlyMap<PositionId, readonly object[]>>();

/** The rows of a table that belong to a position, in the order of the table. */
export const rowsAt = <Row extends { position: PositionId }>(
  rows: readonly Row[],
  position: PositionId,
): readonly Row[] => {
  const known = sorted.get(rows) as ReadonlyMap<PositionId, readonly Row[]> | undefined;
  const byPosition = known ?? Map.groupBy(rows, (row) => row.position);
  sorted.set(rows, byPosition);
  return byPosition.get(position) ?? [];
};
