import { z } from 'zod';
import { idList, nonNegative, positive, provenance, text } from './cells.ts';

/** One figure of how a wet electrolytic is re-formed after a time without voltage. */
export const reformingRow = z.strictObject({
  figure: z
    .enum([
      'resistor',
      'resistor-least',
      'first-step',
      'step',
      'step-time',
      'time-constants',
      'hold',
      'give-up',
      'drop-most',
      'leakage-most',
      'discharge',
      'rest',
    ])
    .describe(
      'resistor: in series, at most; resistor-least: never below; first-step: share of the rated voltage to begin with; step: by which it is raised; step-time: least time at each; time-constants: of resistor and part, at each at least; hold: at rated voltage; give-up: time there after which a part is scrap; drop-most: largest share of the voltage across the resistor in the end; leakage-most: largest leakage in the end over the limit of a new part; discharge: resistor for each volt; rest: before it is measured',
    ),
  types: idList.describe('types that it is for'),
  idle_from: nonNegative.describe('years without voltage from which it holds'),
  v_from: nonNegative.describe('rated voltage above which it holds, V'),
  v_to: positive.describe('highest rated voltage that it is for, V'),
  value: positive.describe('in the unit'),
  unit: text.describe('unit in units.csv'),
  ...provenance,
});
export type ReformingRow = z.output<typeof reformingRow>;
