import type { LeakageLimitRow } from '../../schemas/triage.ts';
import type { TypeId } from '../catalogue.ts';

/** A per uF and V, and A per uA. */
const PER_MICRO = 1e-6;
const MICROFARADS = 1e6;

/**
 * What a new part may leak (A) at its rated voltage, of leakage-limits.csv; nothing for types
 * without a rule.
 *
 * @param farad marked value, F
 * @param volt rated voltage, V
 */
export const leakageLimit = (
  table: readonly LeakageLimitRow[],
  type: TypeId,
  farad: number,
  volt: number,
): number | undefined => {
  const row = table.find(
    ({ types, v_from: from, v_to: to }) => types.includes(type) && volt > from && volt <= to,
  );
  if (row === undefined) return undefined;
  const byCharge = row.per_charge * farad * MICROFARADS * volt + row.added;
  return Math.max(row.least, byCharge) * PER_MICRO;
};
