import type { PropertyId } from './catalogue.ts';
import type { Insulator } from './equations/leakage.ts';
import { exactly, type Range } from './quantities/range.ts';
import { ruleOf, type WithRules } from './rule-of-thumb.ts';

/**
 * What the leakage of a part follows from, by what is known of its properties; nothing where its
 * insulation is not known. A floor is what no part is promised to stay below, so its upper end counts.
 */
export const insulatorOf = (
  known: (property: PropertyId) => Range | undefined,
  rules: WithRules,
): Insulator | undefined => {
  const constant = known('insulation-rc');
  return (
    constant && {
      constant,
      most: known('insulation-cap'),
      halving: known('insulation-halving') ?? exactly(ruleOf(rules, 'halving')),
      floor: known('leakage-floor')?.max,
    }
  );
};
