import type { DemandRow, VerdictRuleRow } from '../../schemas/positions.ts';
import type { FindingModel, Limit } from '../findings/model.ts';
import type { Range } from '../quantities/range.ts';
import type { WithRules } from '../rule-of-thumb.ts';

export type Verdict = 'fits' | 'fits-if' | 'stopgap' | 'keep-out';

/** From best to worst. */
export const verdictOrder: readonly Verdict[] = ['fits', 'fits-if', 'stopgap', 'keep-out'];

/** Below zero where the first of two verdicts is the better one, zero where they are the same. */
export const compareVerdicts = (a: Verdict, b: Verdict): number =>
  verdictOrder.indexOf(a) - verdictOrder.indexOf(b);

/** Whether one verdict is better than another. */
export const isBetter = (a: Verdict, b: Verdict): boolean => compareVerdicts(a, b) < 0;

/** The worse of two verdicts. */
export const worse = (a: Verdict, b: Verdict): Verdict => (compareVerdicts(a, b) >= 0 ? a : b);

/** How far beyond its limit a finding is, as ratios: 1 at the limit, more beyond it. */
export interface Beyond {
  unfavourable: number;
  typical: number;
}

/** A thousandth past the limit is rounding, not a fault. */
const SLACK = 1.001;

const against = (value: number, limit: number): number => {
  if (limit > 0) return value / limit;
  return value <= limit ? 0 : Infinity;
};

/** The same from below: no ratio says how far nothing, or less, falls short of something. */
const shortOf = (value: number, limit: number): number => {
  if (limit > 0 && value > 0) return limit / value;
  return value >= limit ? 0 : Infinity;
};

const ratioOf = (
  model: Pick<FindingModel, 'beyond'>,
  value: number,
  limit: Limit,
  rules: WithRules,
): number => {
  if (model.beyond !== undefined) return model.beyond(value, limit, rules);
  const high = limit.high === undefined ? 0 : against(value, limit.high);
  const low = limit.low === undefined ? 0 : shortOf(value, limit.low);
  return Math.max(high, low);
};

/** How far beyond its limit a range is, at its unfavourable end and at its typical value. */
export const beyondLimit = (
  model: Pick<FindingModel, 'beyond'>,
  value: Range,
  limit: Limit,
  rules: WithRules,
): Beyond => ({
  unfavourable: Math.max(
    ratioOf(model, value.min, limit, rules),
    ratioOf(model, value.max, limit, rules),
  ),
  typical: ratioOf(model, value.typ, limit, rules),
});

/** The verdict that a finding earns: the worst of the rules for its weight that apply. */
export const verdictFor = (
  rules: readonly VerdictRuleRow[],
  weight: DemandRow['weight'],
  beyond: Beyond,
): Verdict => {
  let verdict: Verdict = 'fits';
  for (const rule of rules)
    // What is no number is within no limit.
    if (rule.weight === weight && !(beyond[rule.end] <= rule.beyond * SLACK))
      verdict = worse(verdict, rule.verdict);
  return verdict;
};
