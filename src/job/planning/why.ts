import { isNoteAlone } from '../model/is-blank.ts';
import type { PlannedLine } from './planned.ts';
import { whyWords } from './stand-in.ts';

/** Why a part is replaced, tested or left: the visitor's words, else the first rule that counts. */
export const whyOf = ({ line, part, decidedBy, worked }: PlannedLine): string => {
  if (decidedBy === 'visitor') return line.decisionReason;
  const misfit = decidedBy === 'place' ? worked?.misfit() : undefined;
  if (misfit !== undefined)
    return `such a part does not belong here: ${whyWords(misfit, part.family)}`;
  if (isNoteAlone(line)) return 'a note of the list, and no part';
  const [reason] = worked?.judgement.reasons ?? [];
  if (reason === undefined) return 'nothing is known of it, so it is tested';
  return reason.working === '' ? reason.why : `${reason.why} (${reason.working})`;
};
