import { ruleOf, type RuleOfThumb, type WithRules } from '../../rule-of-thumb.ts';

/** Numbers of the trade that readings are weighed by, as `rules-of-thumb.csv` names them. */
export const TRADE = {
  lowestMains: 'lowest-mains',
  lowestOfCan: 'lowest-of-can',
  highestSurge: 'highest-surge',
  closestPotentiometer: 'closest-potentiometer',
  unmarkedTolerance: 'unmarked-tolerance',
  largestAt1kHz: 'largest-at-1-khz',
} as const satisfies Record<string, RuleOfThumb>;

/** The numbers themselves, SI. */
export type Trade = Readonly<Record<keyof typeof TRADE, number>>;

/** What a catalogue says of them. */
export const tradeOf = (rules: WithRules): Trade => ({
  lowestMains: ruleOf(rules, TRADE.lowestMains),
  lowestOfCan: ruleOf(rules, TRADE.lowestOfCan),
  highestSurge: ruleOf(rules, TRADE.highestSurge),
  closestPotentiometer: ruleOf(rules, TRADE.closestPotentiometer),
  unmarkedTolerance: ruleOf(rules, TRADE.unmarkedTolerance),
  largestAt1kHz: ruleOf(rules, TRADE.largestAt1kHz),
});
