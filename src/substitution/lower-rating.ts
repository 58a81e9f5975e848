import {
  peakOfSine,
  formatValue,
  ruleOf,
  type Habit,
  type Part,
  type Request,
  type WithRules,
} from '../engine/index.ts';

/** What goes in for less voltage than the old part was made for. */
export interface LowerRating {
  /** Both ratings in words, that of the old part with its peak where it is one for AC. */
  now: string;
  old: string;
  /** Whether the old part may come from a circuit with valves, whose voltages stand. */
  isHigh: boolean;
}

/**
 * Whether a stand-in is rated for less than the mark of the old part; nothing where there is no mark, or
 * where somebody said what stands across it.
 */
export const lowerRating = (
  rules: WithRules,
  { original, conditions }: Pick<Request, 'original' | 'conditions'>,
  { ratedVoltage, voltageKind }: Pick<Part, 'ratedVoltage' | 'voltageKind'>,
  habit?: Habit,
): LowerRating | undefined => {
  const rating = original.ratedVoltage?.typ;
  if (rating === undefined || conditions?.['vdc'] !== undefined) return undefined;
  const isForAc = original.voltageKind === 'ac';
  const peak = isForAc ? peakOfSine(rating) : rating;
  if (voltageKind !== 'dc' || ratedVoltage >= peak) return undefined;
  const inPeak = isForAc ? ` AC, a peak of ${formatValue(peak, 'V', habit)}` : '';
  return {
    now: formatValue(ratedVoltage, 'V', habit),
    old: formatValue(rating, 'V', habit) + inPeak,
    isHigh: rating >= ruleOf(rules, 'valve-rating'),
  };
};
