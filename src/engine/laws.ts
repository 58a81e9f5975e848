import type { DiscConstants } from './equations/equaliser.ts';
import type { VoltageGain } from './equations/life.ts';
import type { Overload } from './equations/resistor.ts';
import type { Cooling } from './equations/ripple.ts';
import { ruleOf, rulesOf, type WithRules } from './rule-of-thumb.ts';

/** Numbers of makers and standards that equations take, out of `rules-of-thumb.csv`, SI. */

/** How bodies cool in still air. */
export const coolingBy = (rules: WithRules): Cooling => ({
  ofSquareCentimetre: ruleOf(rules, 'can-cooling'),
  power: ruleOf(rules, 'can-cooling-power'),
});

/** What unused voltage does for the life of a wet electrolytic. */
export const voltageGainBy = (rules: WithRules): VoltageGain => ({
  least: ruleOf(rules, 'voltage-life-least'),
  power: ruleOf(rules, 'voltage-life-power'),
});

/** The overload test of film resistors. */
export const overloadBy = (rules: WithRules): Overload => ({
  times: ruleOf(rules, 'overload-times'),
  timesLimit: ruleOf(rules, 'overload-times-limit'),
  time: ruleOf(rules, 'overload-time'),
});

/**
 * The time constants (s) that define the standard curve of disc replay.
 * @throws RangeError where the rule does not have all three
 */
export const discStandardBy = (rules: WithRules): DiscConstants => {
  const [treble, middle, bass] = rulesOf(rules, 'disc-constants');
  if (treble === undefined || middle === undefined || bass === undefined)
    throw new RangeError('disc-constants takes three');
  return { bass, middle, treble };
};
