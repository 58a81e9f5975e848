import type { PositionRow } from '../schemas/positions.ts';

/** Groups of positions in the order in which one looks them up most. */
const GROUP_ORDER = [
  'audio coupling',
  'bypass and decoupling',
  'filter and tuning',
  'supply',
  'timing',
  'hold and integrate',
  'mains',
  'power and pulse',
  'other',
];

/** Sorts positions by how often one looks them up; within a group their own order stays. */
export const byUse = (a: PositionRow, b: PositionRow): number =>
  GROUP_ORDER.indexOf(a.group) - GROUP_ORDER.indexOf(b.group);
