import { isBetween } from '../../quantities/within.ts';

/** Whether a value, F or ohm, is met in a body; a link of no ohms is in any. */
export const isMetInBody = (
  row: { value_min: number; value_max: number },
  value: number,
): boolean => value === 0 || isBetween(value, row.value_min, row.value_max);
