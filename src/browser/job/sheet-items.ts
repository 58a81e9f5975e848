import { stepTitle } from '../../job-view/sheet-view.ts';
import type { Sheet, SheetCheck, SheetStep } from '../../job/index.ts';
import { capital } from '../../text/words.ts';

/** One thing on the bench sheet: what to know first, a part, a closing check. */
export type Item =
  | { id: string; title: string; done: boolean; kind: 'begin' }
  | { id: string; title: string; done: boolean; kind: 'part'; step: SheetStep }
  | { id: string; title: string; done: boolean; kind: 'check'; check: SheetCheck };

/** The id of the item of a step. */
export const partId = (step: string): string => `part ${step}`;

/** All things of a sheet, in their order. */
export const itemsOf = ({ cautions, steps, checks }: Sheet): Item[] => [
  ...(cautions.length === 0
    ? []
    : [{ id: 'begin', title: 'Before you begin', done: false, kind: 'begin' } as const]),
  ...steps.map((step) => ({
    id: partId(step.id),
    title: stepTitle(step),
    done: step.isDone,
    kind: 'part' as const,
    step,
  })),
  ...(steps.length === 0
    ? []
    : checks.map((check) => ({
        id: `check ${check.row.id}`,
        title: capital(check.row.title),
        done: check.check.done,
        kind: 'check' as const,
        check,
      }))),
];

/** Whether a part is worked on just like the one before it, so that paper need not say it again. */
export const isAgain = (item: Item, before: Item | undefined): boolean =>
  item.kind === 'part' &&
  before?.kind === 'part' &&
  item.step.action === before.step.action &&
  item.step.planned.line.id === before.step.planned.line.id;

/**
 * Whether a part shows what it showed before: its line and what was worked out of it are the very
 * same. Of thousands of parts on a page an edit changes one.
 */
export const staysAsItWas = (item: Item, before: Item | undefined): boolean => {
  if (item.kind !== 'part' || before?.kind !== 'part') return false;
  const [now, then] = [item.step.planned, before.step.planned];
  return (
    now.line === then.line &&
    now.worked === then.worked &&
    now.standIn === then.standIn &&
    now.decision === then.decision
  );
};

/** Offers every thing to go to; of a large board only the words that changed are written anew. */
export const offerItems = (chooser: HTMLSelectElement, items: readonly Item[]): void => {
  const isSame =
    chooser.length === items.length &&
    items.every(({ id }, index) => chooser.options[index]?.value === id);
  if (!isSame) chooser.replaceChildren(...items.map(({ id }) => new Option('', id)));
  for (const [index, { title, done }] of items.entries()) {
    const option = chooser.options[index];
    const text = `${done ? '✓ ' : ''}${title}`;
    if (option !== undefined && option.text !== text) option.text = text;
  }
};
