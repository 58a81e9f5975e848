import { cataloguePart } from '../fetched/catalogue-part.ts';
import { showPart, takePlan } from './made.ts';
import { startPlan } from './plan-part.ts';
import { planInTurns } from './planning.ts';
import { startQuestions } from './questions-part.ts';
import { startSelected } from './selected-part.ts';
import { current } from './state.ts';

/** Plans the open job and shows what comes of it; fetched apart from the list that is typed in. */

export { showPart };

/** Makes work what a plan fills. */
export const startPlanner = (): void => {
  startQuestions();
  startSelected();
  startPlan();
};

/**
 * Plans the open job and shows the part that is open then.
 * @returns what is to be said of it; empty where all is well, and nothing where a newer
 * plan was asked for meanwhile. Rejects where the data for planning cannot be fetched.
 */
export const planAnew = async (partOpen: () => string): Promise<string | undefined> => {
  const common = await cataloguePart('job');
  const plan = await planInTurns(current());
  if (plan === undefined) return undefined;
  takePlan(plan, common);
  showPart(partOpen());
  return plan.wanted.length === 0
    ? ''
    : 'Data for some positions could not be fetched; the next change tries again.';
};
