import type { RuleOfThumbRow } from '../schemas/rules-of-thumb.ts';
import type { Catalogue } from './catalogue.ts';

export type RuleOfThumb = RuleOfThumbRow['id'];

/** What a catalogue says of rules of thumb. */
export type WithRules = Pick<Catalogue, 'rulesOfThumb'>;

/**
 * The numbers of a rule of thumb of `rules-of-thumb.csv`, SI, rising.
 * @throws RangeError where the catalogue, or the slice of it, does not have it
 */
export const rulesOf = ({ rulesOfThumb }: WithRules, id: RuleOfThumb): readonly number[] => {
  const values = rulesOfThumb[id];
  if (values === undefined) throw new RangeError(`no rule of thumb ${id}`);
  return values;
};

/** The same of a rule that is one number. */
export const ruleOf = (catalogue: WithRules, id: RuleOfThumb): number =>
  rulesOf(catalogue, id)[0] ?? NaN;
