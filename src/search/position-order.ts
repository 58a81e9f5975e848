import type { PositionRow } from '../schemas/positions.ts';

/** Groups of positions, every one of the schema, in the order in which one looks them up most. */
const GROUP_ORDER: Readonly<Record<PositionRow['group'], number>> = {
  'audio coupling': 0,
  'bypass and decoupling': 1,
  'filter and tuning': 2,
  supply: 3,
  timing: 4,
  'hold and integrate': 5,
  mains: 6,
  'power and pulse': 7,
  other: 8,
};

/** Sorts positions by how often one looks them up; within a group their own order stays. */
export const byUse = (a: PositionRow, b: PositionRow): number =>
  GROUP_ORDER[a.group] - GROUP_ORDER[b.group];
