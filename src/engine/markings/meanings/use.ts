import type { Use } from './token.ts';

const order: readonly Use[] = ['usual', 'other', 'rare'];

/** Rows with the usual ones first, those of the same use in the order of their table. */
export const inOrderOfUse = <Row extends { use: Use }>(rows: readonly Row[]): Row[] =>
  rows.toSorted((a, b) => order.indexOf(a.use) - order.indexOf(b.use));

/** The less usual of two uses. */
export const rarer = (a: Use, b: Use): Use => (order.indexOf(a) > order.indexOf(b) ? a : b);
