import type { Catalogue } from '../../engine/index.ts';
import { orderMarkup } from '../../job-view/order-view.ts';
import { recordMarkup } from '../../job-view/record-view.ts';
import {
  orderOf,
  orderText,
  recordOf,
  recordSteps,
  finished,
  sheetOf,
  type Plan,
  type Steps,
} from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../page/by-id.ts';
import { drawInSteps } from '../page/drawn-rows.ts';
import { drawingInTurns } from '../page/turns.ts';
import { downloadTable, tablesOut } from './download-table.ts';
import { catalogueAt } from './planning.ts';
import { showSheet, startSheet } from './sheet-part.ts';
import { current } from './state.ts';

/**
 * The papers that follow from a plan: the order, the bench sheet, the record. Fetched with the first
 * plan, since nobody opens them before there is one.
 */

export interface Made {
  plan: Plan;
  common: Catalogue;
}

let made: Made | undefined;

/** Takes a new plan. */
export const takeMade = (now: Made): void => {
  made = now;
};

/** More lines than this take seconds to write down, which is said before it begins. */
const MANY = 2000;

const recordList = byId('record-list', HTMLElement);
const inTurns = drawingInTurns(recordList);
/** What is left to do of the record; one that stands has no steps left. */
let writing: Steps | undefined;

/** Writes the record; where nothing stands yet and it takes long, the page says so first. */
function* writeRecord({ plan, common }: Made): Steps {
  if (plan.lines.length > MANY) {
    if (recordList.childElementCount === 0)
      recordList.textContent = `Writing down ${String(plan.lines.length)} lines …`;
    yield;
  }
  const parts = recordMarkup(yield* recordSteps(current(), plan, common, catalogueAt));
  // Whoever reads far down stays there until the rows are back.
  recordList.style.minHeight = `${String(recordList.offsetHeight)}px`;
  recordList.replaceChildren();
  yield* drawInSteps(recordList, parts);
  recordList.style.minHeight = '';
}

/** Draws a paper from the plan that was taken last. */
export const showPaper = (part: string): void => {
  if (made === undefined) return;
  const { plan, common } = made;
  const job = current();
  if (part === 'order') {
    tablesOut().catch(() => undefined);
    const order = orderOf(plan, job.whole, common);
    byId('order-list', HTMLElement).replaceChildren(...orderMarkup(order).map((one) => toDom(one)));
    // What is empty is neither copied nor saved nor printed.
    byId('order-actions', HTMLElement).hidden = order.groups.length === 0;
  }
  if (part === 'sheet') showSheet(sheetOf(job, plan, { catalogueAt, common }));
  if (part === 'record') {
    writing = writeRecord(made);
    void inTurns(writing);
  }
};

const onClick = (id: string, act: (plan: Plan, common: Catalogue) => void): void => {
  byId(id, HTMLButtonElement).addEventListener('click', () => {
    if (made !== undefined) act(made.plan, made.common);
  });
};

/** Makes the papers answer to their buttons. */
export const startPapers = (): void => {
  startSheet();
  addEventListener('beforeprint', () => {
    if (writing !== undefined) finished(writing);
  });
  const order = (plan: Plan, common: Catalogue) => orderOf(plan, current().whole, common);
  const copied = byId('order-copied', HTMLElement);
  const copy = async (write: () => string | Promise<string>): Promise<void> => {
    copied.textContent = '';
    try {
      const text = await write();
      copied.textContent = await navigator.clipboard.writeText(text).then(
        () => 'Copied.',
        () => 'The browser does not let this page copy.',
      );
    } catch {
      copied.textContent = 'What writes tables could not be fetched; please try again.';
    }
  };
  onClick('order-copy', (plan, common) => {
    void copy(async () => (await tablesOut()).orderTabbed(order(plan, common)));
  });
  onClick('order-copy-text', (plan, common) => {
    void copy(() => orderText(order(plan, common)));
  });
  onClick('order-csv', (plan, common) => {
    void downloadTable('order', ({ orderCsv }) => orderCsv(order(plan, common)));
  });
  onClick('record-csv', (plan, common) => {
    const record = recordOf(current(), plan, common, catalogueAt);
    void downloadTable('record', ({ recordCsv }) => recordCsv(record));
  });
};
