import type { Fitted } from '../model/job.ts';
import type { PlannedLine } from '../planning/planned.ts';

/** Whether what is to be done at a designator was done: a part that was tested is not replaced yet. */
export const isDone = ({ done, did }: Fitted, action: PlannedLine['decision']): boolean =>
  done && (did === '' || did === action || action === 'leave');
