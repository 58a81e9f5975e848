import { fragment, listenForFragment } from './address.ts';
import { setBusy } from './busy.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { listenForHabit } from './habits.ts';
import { startBadRows } from './job/bad-rows-part.ts';
import { startJobs } from './job/jobs.ts';
import { showPart, takePlan } from './job/made.ts';
import { startParts } from './job/parts.ts';
import { startPlan } from './job/plan-part.ts';
import { planInTurns } from './job/planning.ts';
import { startPrinting } from './job/printing.ts';
import { startQuestions } from './job/questions-part.ts';
import { startTables } from './job/tables.ts';
import { startSelected } from './job/selected-part.ts';
import { startWhole } from './job/whole.ts';
import { canRedo, canUndo, current, listenForChange, redo, undo } from './job/state.ts';

/** Brings the page for a job to life. */

const PARTS = ['parts', 'plan', 'order', 'sheet', 'record'] as const;
/** Waits this long after a change before planning anew, ms: who types goes on at once. */
const PAUSE = 50;

let openPart: (typeof PARTS)[number] = 'parts';
/** The part that the address names; the one before where it names another place of the page. */
const part = (): string => {
  openPart = PARTS.find((one) => fragment() === one) ?? openPart;
  return openPart;
};

const showOpen = (): void => {
  for (const one of PARTS) {
    byId(one, HTMLElement).hidden = one !== part();
    const link = byId(`to-${one}`, HTMLAnchorElement);
    if (one === part()) link.setAttribute('aria-current', 'true');
    else link.removeAttribute('aria-current');
  }
  showPart(part());
};

const planSaid = byId('planning', HTMLElement);
const replan = async (): Promise<void> => {
  planSaid.textContent = 'Planning …';
  try {
    const common = await cataloguePart('job');
    const plan = await planInTurns(current());
    if (plan === undefined) return;
    takePlan(plan, common);
    planSaid.textContent =
      plan.wanted.length === 0
        ? ''
        : 'Data for some positions could not be fetched; the next change tries again.';
    showPart(part());
  } catch {
    planSaid.textContent = 'The data for planning could not be fetched. What you type is kept.';
  }
};

let timer = 0;
const replanSoon = (): void => {
  clearTimeout(timer);
  timer = window.setTimeout(() => void replan(), PAUSE);
};

const undoButton = byId('undo', HTMLButtonElement);
const redoButton = byId('redo', HTMLButtonElement);
undoButton.addEventListener('click', undo);
redoButton.addEventListener('click', redo);
addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key !== 'z' && key !== 'y') return;
  event.preventDefault();
  if (key === 'y' || event.shiftKey) redo();
  else undo();
});

listenForChange(() => {
  // An update is not offered over work that is open.
  setBusy(true);
  undoButton.disabled = !canUndo();
  redoButton.disabled = !canRedo();
  byId('invented', HTMLElement).textContent = current().invented;
  replanSoon();
});
listenForHabit(() => {
  showPart(part());
});
listenForFragment(showOpen);

startParts();
startTables();
startBadRows();
startQuestions();
startSelected();
startPlan();
startWhole();
startPrinting();
// Nothing can be typed before the job of the last visit is open: it would replace that.
await startJobs();
showOpen();
byId('job-page', HTMLElement).hidden = false;
