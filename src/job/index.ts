/** The public face of the jobs. Pages and scripts take what they need from here. */

export { planJob, newPlanCache, type PlanCache, type PlanTools } from './plan.ts';
export type { Missing, Plan, PlannedLine, PlanState, Worked } from './planned.ts';
export { choiceOf } from './choice.ts';
export { partAsTyped, type PartOfLine, type Understand } from './part-of-line.ts';
