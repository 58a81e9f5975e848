import type { DemandRow, FindingRow } from '../../schemas/positions.ts';
import type { Limit } from '../findings/model.ts';

/**
 * The limit of a demand in SI, at the ends that its finding is judged by; open at an end that is not
 * asked for, and at both where what it is a multiple of is not known.
 * @param factor SI size of one of the limit's unit, or of what the limit is a multiple of
 */
export const limitTimes = (
  { limit, limit_high: high }: Pick<DemandRow, 'limit' | 'limit_high'>,
  { better }: Pick<FindingRow, 'better'>,
  factor: number | undefined,
): Limit => {
  const scaled = (end: number | undefined): number | undefined =>
    end === undefined || factor === undefined ? undefined : end * factor;
  switch (better) {
    case 'high':
      return { low: scaled(limit) };
    case 'low':
      return { high: scaled(limit) };
    case 'window':
    case 'same':
      return { low: scaled(limit), high: scaled(high) };
  }
};
