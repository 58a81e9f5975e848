import type { Catalogue } from '../../engine/index.ts';
import { orderOf, orderText, recordOf, sheetOf, type Plan } from '../../job/index.ts';
import { orderMarkup } from '../../job-view/order-view.ts';
import { paperHead } from '../../job-view/paper-head.ts';
import { recordMarkup } from '../../job-view/record-view.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../by-id.ts';
import { downloadTable } from './download-table.ts';
import { catalogueAt } from './planning.ts';
import { showPlan } from './plan-part.ts';
import { showQuestions } from './questions-part.ts';
import { showSheet } from './sheet-part.ts';
import { takeLines } from './selected-part.ts';
import { fetchSketches } from './sketches.ts';
import { current } from './state.ts';

/** All that follows from a plan: the order, the bench sheet, the record. */

let made: { plan: Plan; common: Catalogue } | undefined;

/** Shows the part that is open; the others are made when they are opened, or printed. */
export const showPart = (part: string): void => {
  if (made === undefined) return;
  const { plan, common } = made;
  const job = current();
  if (part === 'parts') {
    showQuestions(plan.lines, common);
    takeLines(plan.lines);
  }
  if (part === 'plan') showPlan(plan.lines, common);
  if (part === 'order') {
    const parts = orderMarkup(orderOf(plan, job.whole, common));
    byId('order-list', HTMLElement).replaceChildren(...parts.map((one) => toDom(one)));
  }
  if (part === 'sheet') showSheet(sheetOf(job, plan, { catalogueAt, common }));
  if (part === 'record') {
    const parts = recordMarkup(recordOf(job, plan, common, catalogueAt));
    byId('record-list', HTMLElement).replaceChildren(...parts.map((one) => toDom(one)));
  }
};

const head = byId('paper-head', HTMLElement);

/** Puts on paper which job it is of. */
const drawHead = (): void => {
  head.replaceChildren(...paperHead(current()).map((one) => toDom(one)));
};

/** Takes a new plan. */
export const takePlan = (plan: Plan, common: Catalogue): void => {
  made = { plan, common };
  if (plan.lines.some(({ worked }) => worked !== undefined)) void fetchSketches();
};

const onClick = (id: string, act: (plan: Plan, common: Catalogue) => void): void => {
  byId(id, HTMLButtonElement).addEventListener('click', () => {
    if (made !== undefined) act(made.plan, made.common);
  });
};

/** Makes the buttons of the order and the record work. */
export const startPapers = (): void => {
  const order = (plan: Plan, common: Catalogue) => orderOf(plan, current().whole, common);
  const copied = byId('order-copied', HTMLElement);
  onClick('order-copy', (plan, common) => {
    navigator.clipboard.writeText(orderText(order(plan, common))).then(
      () => {
        copied.textContent = 'Copied.';
      },
      () => {
        copied.textContent = 'The browser does not let this page copy.';
      },
    );
  });
  onClick('order-csv', (plan, common) => {
    void downloadTable('order', ({ orderCsv }) => orderCsv(order(plan, common)));
  });
  onClick('record-csv', (plan, common) => {
    const record = recordOf(current(), plan, common, catalogueAt);
    void downloadTable('record', ({ recordCsv }) => recordCsv(record));
  });
  addEventListener('beforeprint', drawHead);
  for (const button of document.querySelectorAll<HTMLButtonElement>('.print-part'))
    button.addEventListener('click', () => {
      print();
    });
};
