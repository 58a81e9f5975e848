import { reasonPhrase } from '../substitution/phrases.ts';
import type { PlannedLine } from './planned.ts';

/** Why a part is replaced, tested or left: the visitor's words, else the first rule that counts. */
export const whyOf = ({ line, decidedBy, worked }: PlannedLine): string => {
  if (decidedBy === 'visitor') return line.decisionReason;
  if (decidedBy === 'place' && worked?.misfit !== undefined) {
    return `such a part does not belong here: ${reasonPhrase(worked.misfit)}`;
  }
  const [reason] = worked?.judgement.reasons ?? [];
  if (reason === undefined) return 'nothing is known of it, so it is tested';
  return reason.working === '' ? reason.why : `${reason.why} (${reason.working})`;
};
