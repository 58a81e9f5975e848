import './older-browsers.ts';
import { isBlank } from '../job/index.ts';
import { fragment, listenForFragment } from './address/address.ts';
import { startBadRows } from './job/bad-rows-part.ts';
import { startJobs } from './job/jobs.ts';
import { startParts } from './job/parts.ts';
import { startPrinting } from './job/printing.ts';
import { canRedo, canUndo, current, listenForChange, redo, undo } from './job/state.ts';
import { startTables } from './job/tables.ts';
import { startWhole } from './job/whole.ts';
import { listenForHabit } from './kept/habits.ts';
import { setBusy } from './page/busy.ts';
import { byId } from './page/by-id.ts';

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

type Planner = typeof import('./job/planner.ts');
let planner: Planner | undefined;

/** What plans the job; fetched apart, so that the list can be typed in before it is there. */
const fetchedPlanner = async (): Promise<Planner> => {
  const fetched = await import('./job/planner.ts');
  if (planner === undefined) fetched.startPlanner();
  planner = fetched;
  return planner;
};

/** Whether there is something to plan, or a part of the page is open that shows a plan. */
const isPlanWanted = (): boolean =>
  planner !== undefined || part() !== 'parts' || current().lines.some((line) => !isBlank(line));

const planSaid = byId('planning', HTMLElement);
const replan = async (): Promise<void> => {
  if (!isPlanWanted()) return;
  planSaid.textContent = 'Planning …';
  try {
    const { planAnew } = await fetchedPlanner();
    const said = await planAnew(part);
    if (said !== undefined) planSaid.textContent = said;
  } catch {
    planSaid.textContent =
      'What plans the job could not be fetched; the next change tries again. What you type is kept.';
  }
};

let timer = 0;
const replanSoon = (): void => {
  clearTimeout(timer);
  timer = window.setTimeout(() => void replan(), PAUSE);
};

const showOpen = (): void => {
  for (const one of PARTS) {
    byId(one, HTMLElement).hidden = one !== part();
    const link = byId(`to-${one}`, HTMLAnchorElement);
    if (one === part()) link.setAttribute('aria-current', 'true');
    else link.removeAttribute('aria-current');
  }
  if (planner !== undefined) planner.showPart(part());
  else if (part() !== 'parts') replanSoon();
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

/** An empty job may become a demonstration; over one that is begun they would only stand in the way. */
const offerDemos = (): void => {
  byId('demos', HTMLElement).hidden = !current().lines.every(isBlank);
};

listenForChange(() => {
  offerDemos();
  // An update is not offered over work that is open.
  setBusy(true);
  undoButton.disabled = !canUndo();
  redoButton.disabled = !canRedo();
  byId('invented', HTMLElement).textContent = current().invented;
  replanSoon();
});
listenForHabit(() => {
  planner?.showPart(part());
});
listenForFragment(showOpen);

startParts();
startTables();
startBadRows();
startWhole();
startPrinting();
// Nothing can be typed before the job of the last visit is open: it would replace that.
await startJobs();
offerDemos();
showOpen();
byId('job-page', HTMLElement).hidden = false;
