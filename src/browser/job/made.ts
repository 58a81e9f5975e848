import type { Catalogue } from '../../engine/index.ts';
import type { Plan } from '../../job/index.ts';
import { byId } from '../page/by-id.ts';
import { showPlan } from './plan-part.ts';
import { showQuestions } from './questions-part.ts';
import { takeLines } from './selected-part.ts';
import { fetchSketches } from './sketches.ts';

/** The plan that was made last, and the part of the page that shows it. */

type Papers = typeof import('./papers.ts');

let made: { plan: Plan; common: Catalogue } | undefined;
let papers: Papers | undefined;
let fetching: Promise<void> | undefined;
/** What is open now: another part may have been opened while the papers were fetched. */
let open = '';

const fetchPapers = async (): Promise<void> => {
  const fetched = await import('./papers.ts');
  fetched.startPapers();
  papers = fetched;
};

const showPaper = (): void => {
  if (made === undefined) return;
  papers?.takeMade(made);
  papers?.showPaper(open);
};

const bringPapers = async (): Promise<void> => {
  fetching ??= fetchPapers();
  try {
    await fetching;
    showPaper();
  } catch {
    fetching = undefined;
    byId('planning', HTMLElement).textContent =
      'What draws the order, the sheet and the record could not be fetched; the next change tries again.';
  }
};

/** Shows the part that is open; the others are made when they are opened, or printed. */
export const showPart = (part: string): void => {
  open = part;
  if (made === undefined) return;
  const { plan, common } = made;
  if (part === 'parts') {
    showQuestions(plan.lines, common);
    takeLines(plan.lines);
  } else if (part === 'plan') showPlan(plan.lines, common);
  else showPaper();
};

/** Takes a new plan. */
export const takePlan = (plan: Plan, common: Catalogue): void => {
  made = { plan, common };
  if (papers === undefined) void bringPapers();
  else papers.takeMade(made);
  if (plan.lines.some(({ worked }) => worked !== undefined)) void fetchSketches();
};
