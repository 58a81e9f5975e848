import type { Catalogue } from '../../engine/index.ts';
import { orderOf, orderText, recordOf, sheetOf, type Plan } from '../../job/index.ts';
import { orderMarkup } from '../../job-view/order-view.ts';
import { recordMarkup } from '../../job-view/record-view.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../by-id.ts';
import { painted } from '../turns.ts';
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

/** Writes the record; where nothing stands yet and it takes long, the page says so first. */
const showRecord = async (of: Made): Promise<void> => {
  const place = byId('record-list', HTMLElement);
  if (of.plan.lines.length > MANY && place.childElementCount === 0) {
    place.textContent = `Writing down ${String(of.plan.lines.length)} lines …`;
    await painted();
    // A newer plan, or paper, may have come meanwhile.
    if (of !== made || place.childElementCount > 0) return;
  }
  const parts = recordMarkup(recordOf(current(), of.plan, of.common, catalogueAt));
  place.replaceChildren(...parts.map((one) => toDom(one)));
};

/** Draws a paper from the plan that was taken last. */
export const showPaper = (part: string): void => {
  if (made === undefined) return;
  const { plan, common } = made;
  const job = current();
  if (part === 'order') {
    tablesOut().catch(() => undefined);
    const parts = orderMarkup(orderOf(plan, job.whole, common));
    byId('order-list', HTMLElement).replaceChildren(...parts.map((one) => toDom(one)));
  }
  if (part === 'sheet') showSheet(sheetOf(job, plan, { catalogueAt, common }));
  if (part === 'record') void showRecord(made);
};

const onClick = (id: string, act: (plan: Plan, common: Catalogue) => void): void => {
  byId(id, HTMLButtonElement).addEventListener('click', () => {
    if (made !== undefined) act(made.plan, made.common);
  });
};

/** Makes the papers answer to their buttons. */
export const startPapers = (): void => {
  startSheet();
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
