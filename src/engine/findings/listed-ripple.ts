import type { Part } from '../assessment/parts.ts';
import { frequencyFactor, type RippleFactor } from '../sizes/ripple-factors.ts';
import { listedRipple, type ListedRipple } from '../sizes/ripple-of.ts';
import { conditionOf, type Circumstances } from './model.ts';
import { resistanceOf } from './series-resistance.ts';

/** By equal heat: what the part takes goes with one over the root of its series resistance. */
const byHeat = (
  part: Part,
  circumstances: Circumstances,
  from: number,
  to: number,
): RippleFactor | undefined => {
  const [here, there] = [from, to].map((hertz) => resistanceOf(part, circumstances, hertz));
  return here === undefined || there === undefined
    ? undefined
    : {
        factor: Math.sqrt(here.range.typ / there.range.typ),
        sources: [...here.sources, ...there.sources],
        bases: [...here.bases, ...there.bases],
      };
};

/** A ripple current as its sheet gives it, and how much more of it a part takes at the working frequency. */
export interface RippleListing {
  ripple: ListedRipple;
  frequency: RippleFactor;
}

/** What a sheet lists for a single part; nothing where it lists none that holds at the working frequency. */
export const listingOf = (part: Part, circumstances: Circumstances): RippleListing | undefined => {
  const { catalogue } = circumstances;
  const hertz = conditionOf(circumstances, 'f-work').typ;
  const ripple = listedRipple(catalogue, part, hertz);
  if (ripple === undefined) return undefined;
  const frequency =
    frequencyFactor(catalogue, part, ripple.frequency, hertz) ??
    byHeat(part, circumstances, ripple.frequency, hertz);
  return frequency && { ripple, frequency };
};
