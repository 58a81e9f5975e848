import { z } from 'zod';
import { numberList, provenance, text } from './cells.ts';

/** A number of the trade that assessments and readings go by where no figure of a part says it. */
export const ruleOfThumbRow = z.strictObject({
  id: z.enum([
    'closest-tolerance',
    'halving',
    'ripple-rise',
    'beyond-resonance',
    'least-body',
    'lead-clearance',
    'times-needed',
    'high-times-needed',
    'highest-low-rating',
    'highest-plain-rating',
    'resistor-tolerance',
    'resistor-powers',
    'resistor-power-in-hand',
    'thermal-noise-over',
    'largest-resistor',
    'hottest-resistor',
    'as-good-as-nearest',
    'rather-more',
    'loose-value',
    'smallest-second-part',
    'valve-rating',
    'can-shape',
    'lowest-mains',
    'lowest-of-can',
    'highest-surge',
    'closest-potentiometer',
    'old-type-age',
    'rating-far-below',
    'polar-rating',
    'polar-value',
    'supply-value',
    'looser-type',
    'chain-tolerance',
    'chain-value',
    'meter-most-ohms',
    'another-value',
    'beyond-usual',
  ]),
  values: numberList
    .refine((values) => values.length > 0, 'expected at least one number')
    .refine((values) => values.every((value) => value > 0), 'expected numbers above zero')
    .describe('one, or all of which the next sufficient one is taken, rising'),
  unit: text.describe('unit in units.csv'),
  meaning: text,
  ...provenance,
});
export type RuleOfThumbRow = z.output<typeof ruleOfThumbRow>;
