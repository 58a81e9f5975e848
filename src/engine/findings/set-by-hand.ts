import type { Part } from '../assessment/parts.ts';
import { plain, type Circumstances, type FindingModel } from './model.ts';
import { singleParts } from '../assessment/made.ts';

/** Whether the value of a part is set on a shaft or screw. */
export const isSetByHand = (
  part: Pick<Part, 'type'>,
  { catalogue }: Pick<Circumstances, 'catalogue'>,
): boolean => catalogue.families[catalogue.types[part.type]?.family ?? '']?.set_by_hand === true;

/** What was tuned or trimmed by the old part can be so by none that is fixed. */
export const settable: FindingModel = {
  measure: (part, circumstances) => {
    const wasSet = isSetByHand(circumstances.original, circumstances);
    const canBeSet = singleParts(part).some((single) => isSetByHand(single, circumstances));
    return plain(wasSet && !canBeSet ? 1 : 0);
  },
  working: (_part, circumstances, value) => {
    if (value.typ > 0)
      return 'fixed, where the old part was set by hand: the circuit can no longer be tuned there';
    return isSetByHand(circumstances.original, circumstances)
      ? 'set by hand, as the old part was'
      : 'the old part was fixed';
  },
};
