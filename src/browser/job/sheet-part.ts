import { MOST_WHOLE_STEPS } from '../../job-view/sheet-table.ts';
import { beginMarkup, checkMarkup, stepMarkup } from '../../job-view/sheet-view.ts';
import type { Sheet, SheetStep } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { capital, countOf } from '../../text/words.ts';
import { byId } from '../page/by-id.ts';
import { refreshLive } from './live.ts';
import { longList, type Row } from './long-list.ts';
import { isAgain, itemsOf, offerItems, partId, staysAsItWas, type Item } from './sheet-items.ts';
import { stepsOnPaper } from './sheet-paper.ts';
import { arrange, isField, splitOff, writeField } from './sheet-writing.ts';
import { drawSketch, whenDrawn } from './sketches.ts';
import { shellsFor } from './step-shells.ts';

/** The bench sheet: one thing at a time on a tablet, all of them on paper. */

const places = {
  begin: byId('bench-cautions', HTMLElement),
  part: byId('bench-steps', HTMLElement),
  check: byId('bench-checks', HTMLElement),
};
/** Boards may have thousands of parts; nobody works in a list while it is drawn anew. */
const lists = Object.entries(places).map(([kind, place]) => ({
  kind,
  list: longList(place, { around: (drawRows) => void drawRows(), holds: () => false }),
}));
const whole = byId('bench-whole', HTMLInputElement);
const chooser = byId('bench-go', HTMLSelectElement);
const section = byId('sheet', HTMLElement);

let sheet: Sheet | undefined;
let items: readonly Item[] = [];
let latest: ReadonlyMap<string, Item> = new Map();
let open = '';
/** What has to have the focus once it is drawn anew. */
let wanted: string | undefined;

const elementOf = (item: Item, made: Sheet): HTMLElement => {
  const markup =
    item.kind === 'begin'
      ? beginMarkup(made.cautions)
      : item.kind === 'part'
        ? stepMarkup(item.step)
        : checkMarkup(item.check, made);
  const element = toDom(markup);
  if (!(element instanceof HTMLElement)) throw new TypeError('a step is an element');
  element.dataset['item'] = item.id;
  if (item.kind === 'part') drawSketch(element, item.step);
  return element;
};

const indexOfOpen = (): number => {
  const at = items.findIndex(({ id }) => id === open);
  if (at >= 0) return at;
  // Work that was begun goes on where it stopped.
  const isBegun = items.some(({ done }) => done);
  const next = items.findIndex(({ done, kind }) => !done && kind !== 'begin');
  return isBegun && next >= 0 ? next : 0;
};

const countsOf = (kind: Item['kind']): { all: number; done: number } => {
  const own = items.filter((item) => item.kind === kind);
  return { all: own.length, done: own.filter(({ done }) => done).length };
};

const showProgress = (all: boolean): void => {
  const at = indexOfOpen();
  const item = items[at];
  const [parts, checks] = [countsOf('part'), countsOf('check')];
  const said = `${countOf(parts.all, 'part')}, ${String(parts.done)} done; ${countOf(checks.all, 'check')}, ${String(checks.done)} done`;
  const nth = item === undefined ? 0 : items.filter(({ kind }) => kind === item.kind).indexOf(item);
  const where =
    all || item === undefined || item.kind === 'begin'
      ? ''
      : `${capital(item.kind)} ${String(nth + 1)} of ${String(countsOf(item.kind).all)}. `;
  byId('bench-said', HTMLElement).textContent =
    items.length === 0 ? 'Nothing to do at the bench yet.' : `${where}${said}.`;
  const bar = byId('bench-progress', HTMLProgressElement);
  bar.hidden = items.length === 0;
  chooser.closest('.bench-way')?.toggleAttribute('hidden', items.length === 0);
  bar.max = Math.max(1, parts.all + checks.all);
  bar.value = parts.done + checks.done;
  byId('bench-before', HTMLButtonElement).disabled = all || at <= 0;
  byId('bench-after', HTMLButtonElement).disabled = all || at >= items.length - 1;
  chooser.disabled = all;
  offerItems(chooser, items);
  chooser.value = items[at]?.id ?? '';
};

/** Whether paper has a row for each part, and not the whole of what is said of it. */
const isInRows = (made: Sheet | undefined): boolean =>
  made !== undefined && made.steps.length > MOST_WHOLE_STEPS;

/** Of more parts only those around the screen are drawn. */
const MOST_AT_ONCE = 100;
/** Whether all of it goes to paper, which has no screen. */
let isForPaper = false;

const shells = shellsFor((shell) => {
  const item = latest.get(shell.dataset['item'] ?? '');
  return item === undefined || sheet === undefined ? undefined : elementOf(item, sheet);
});

const rowAt = (own: readonly Item[], index: number): Row => {
  const item = own[index];
  const made = sheet;
  if (item === undefined || made === undefined) throw new RangeError(`no item ${String(index)}`);
  return {
    // What may be written in it is drawn anew each time.
    key: Symbol(item.id),
    make: () => {
      if (own.length > MOST_AT_ONCE && !isForPaper)
        return shells.make(item.id, capital(item.title));
      // Rows out of sight are drawn later than the edit that may have changed them.
      const element = elementOf(latest.get(item.id) ?? item, made);
      if (isAgain(item, own[index - 1])) element.dataset['again'] = '';
      return element;
    },
  };
};

const KINDS: readonly Item['kind'][] = ['begin', 'part', 'check'];

const draw = (all: boolean, kinds = KINDS): void => {
  const at = indexOfOpen();
  open = items[at]?.id ?? '';
  const shown = all ? items : items.slice(at, at + 1);
  const made = sheet;
  for (const { kind, list } of lists) {
    const own = shown.filter((item) => item.kind === kind && kinds.includes(item.kind));
    list.show({ count: own.length, at: (index) => rowAt(own, index) });
  }
  byId('bench-in-rows', HTMLElement).hidden = !isInRows(made);
  byId('bench-closing', HTMLElement).hidden = !shown.some(({ kind }) => kind === 'check');
  showProgress(all);
  if (wanted !== undefined) section.querySelector<HTMLElement>(wanted)?.focus();
  wanted = undefined;
};

const hasFocus = (): boolean =>
  Object.values(places).some((place) => place.contains(document.activeElement));

/** Shows what changed since; `before` is what is shown, as far as that is known. */
const refresh = (made: Sheet, before: readonly Item[]): void => {
  const then = new Map(before.map((item) => [item.id, item]));
  for (const place of Object.values(places))
    for (const shown of place.querySelectorAll<HTMLElement>('[data-item]')) {
      const item = latest.get(shown.dataset['item'] ?? '');
      if (item === undefined || item.kind === 'begin') continue;
      if (shells.isShell(shown) || staysAsItWas(item, then.get(item.id))) continue;
      refreshLive(shown, elementOf(item, made));
      if (item.kind === 'part') drawSketch(shown, item.step);
    }
  showProgress(whole.checked);
};

/** Shows a sheet; what is being typed in stays as it is. */
export const showSheet = (made: Sheet): void => {
  const before = items;
  sheet = made;
  items = itemsOf(made);
  latest = new Map(items.map((item) => [item.id, item]));
  if (hasFocus() && wanted === undefined) refresh(made, before);
  else draw(whole.checked);
  whenDrawn(() => {
    if (sheet === undefined) return;
    if (hasFocus()) refresh(sheet, []);
    else draw(whole.checked);
  });
};

/** Opens another part; who has scrolled down in the one before begins at its head. */
const goTo = (id: string): void => {
  open = id;
  draw(false);
  if (section.getBoundingClientRect().top < 0) section.scrollIntoView();
};

const go = (by: number): void => {
  goTo(items[indexOfOpen() + by]?.id ?? open);
};

const press = ({ target }: Event): void => {
  if (!(target instanceof HTMLButtonElement)) return;
  const { adjust, split } = target.dataset;
  const { line, designator = '' } = target.closest<HTMLElement>('.bench-step')?.dataset ?? {};
  if (adjust !== undefined) {
    const { adjustment = '' } = target.closest<HTMLElement>('[data-adjustment]')?.dataset ?? {};
    const own = `[data-adjustment="${CSS.escape(adjustment)}"] [data-adjust="${adjust}"]`;
    wanted = adjust === 'add' ? '[data-adjustment]:last-child input' : own;
    arrange(adjust, adjustment, sheet?.adjustments ?? []);
  }
  if (split !== undefined && line !== undefined) {
    target.blur();
    splitOff(line, designator);
  }
};

/** Left and right lead from one to the next, but not while one types or chooses. */
const onKey = (event: KeyboardEvent): void => {
  if (section.hidden || whole.checked || event.altKey || event.ctrlKey || event.metaKey) return;
  if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
  const isTyping = isField(event.target) && event.target.type !== 'checkbox';
  if (!isTyping) go(event.key === 'ArrowLeft' ? -1 : 1);
};

/** Makes the bench sheet work. */
export const startSheet = (): void => {
  for (const place of Object.values(places)) {
    place.addEventListener('input', ({ target }) => {
      if (isField(target)) writeField(target, sheet?.adjustments ?? []);
    });
    place.addEventListener('click', press);
  }
  byId('bench-before', HTMLButtonElement).addEventListener('click', () => {
    go(-1);
  });
  byId('bench-after', HTMLButtonElement).addEventListener('click', () => {
    go(1);
  });
  chooser.addEventListener('change', () => {
    goTo(chooser.value);
  });
  whole.addEventListener('change', () => {
    draw(whole.checked);
  });
  addEventListener('keydown', onKey);
  addEventListener('beforeprint', () => {
    if (section.hidden) return;
    const made = sheet;
    if (made === undefined || !isInRows(made)) {
      isForPaper = true;
      draw(true);
      for (const { list } of lists) list.drawAll();
      isForPaper = false;
      return;
    }
    draw(true, ['begin', 'check']);
    const whole = ({ id }: SheetStep): Node => {
      const item = latest.get(partId(id));
      if (item === undefined) throw new RangeError(`no step ${id}`);
      return elementOf(item, made);
    };
    places.part.replaceChildren(...stepsOnPaper(made.steps, whole));
  });
  addEventListener('afterprint', () => {
    if (!section.hidden) draw(whole.checked);
  });
};
