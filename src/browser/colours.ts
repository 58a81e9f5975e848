import './older-browsers.ts';
import type { ApartHint, Catalogue } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import { toDom } from '../markup/to-dom.ts';
import { apartChoice, countChoice, markChoice, palette } from '../reading/colours/controls.ts';
import { entryDrawing } from '../reading/colours/entry-drawing.ts';
import {
  canTurn,
  emptyState,
  isApart,
  searchOf,
  stateFrom,
  turnedRound,
  withMark,
  type ColourState,
} from '../reading/colours/state.ts';
import {
  stepByKey,
  stepByTyped,
  stepToForm,
  stepToLayout,
  type Step,
} from '../reading/colours/steps.ts';
import { asked, keepAsked } from './address/address.ts';
import { cataloguePart } from './fetched/catalogue-part.ts';
import { fetchedOnce } from './fetched/fetched-once.ts';
import { listenForHabit } from './kept/habits.ts';
import { copyLinkButton } from './page/copy-link.ts';

/** The page that reads colours: what is set lives in the address. */

const form = document.querySelector<HTMLFormElement>('#colour-form');
const regionOf = (id: string): HTMLElement | null => document.querySelector(`#colour-${id}`);

const fill = (id: string, pieces: readonly (Markup | undefined)[]): void => {
  const present = pieces.filter((piece) => piece !== undefined);
  regionOf(id)?.replaceChildren(...present.map((piece) => toDom(piece)));
};

const radios = (name: string): HTMLInputElement[] => [
  ...(form?.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`) ?? []),
];

/** What reads the colours is fetched when the first is set, or when the address has some. */
const readings = fetchedOnce(() => import('./reading/colour-readings.ts'));

const sayNotFetched = (): void => {
  const place = regionOf('readings');
  if (place) place.textContent = 'The data could not be fetched; please load the page again.';
};

/** Draws a group again and leaves the keyboard where it was. */
const fillGroup = (id: string, name: string, piece: Markup | undefined): void => {
  const held = radios(name).includes(document.activeElement as HTMLInputElement);
  fill(id, [piece]);
  if (held)
    radios(name)
      .find(({ checked }) => checked)
      ?.focus();
};

/**
 * A tap sets a colour and goes on to the next place; arrow keys, which pass over the colours between,
 * stay at theirs.
 */
const listenForTaps = (
  page: HTMLFormElement,
  goTo: (place: number) => void,
  setMark: (mark: string | undefined, onward: boolean) => void,
): void => {
  let tapped = false;
  page.addEventListener('pointerdown', () => (tapped = true));
  page.addEventListener('keydown', () => (tapped = false));
  page.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element)) return;
    const place = target.closest('[data-mark]')?.getAttribute('data-mark');
    if (place !== null && place !== undefined) goTo(Number(place));
    if (!(target instanceof HTMLInputElement) || target.name !== 'colour') return;
    const mark = target.value === '' ? undefined : target.value;
    const onward = tapped;
    // The choice of the group that is pressed is the browser's until the click is over.
    setTimeout(() => setMark(mark, onward));
  });
};

/** @param press does what a key asks among places and colours, and says whether it asks anything */
const listenForKeys = (page: HTMLFormElement, press: (key: string) => boolean): void => {
  page.addEventListener('keydown', (event) => {
    const { target, key, ctrlKey, metaKey, altKey } = event;
    if (ctrlKey || metaKey || altKey || !(target instanceof HTMLInputElement)) return;
    if (!['mark', 'colour'].includes(target.name) || !press(key)) return;
    event.preventDefault();
  });
};

/** What stands on the page besides the form; all of it, save where a page was built otherwise. */
const turnButton = form?.querySelector<HTMLButtonElement>('#turn');
const typed = form?.querySelector<HTMLInputElement>('#typed');
const typedNote = form?.querySelector<HTMLElement>('#typed-note');

/** Chooses one of a group that is not drawn again. */
const check = (name: string, value: string): void => {
  for (const radio of radios(name)) radio.checked = radio.value === value;
};

/** What follows from the colours and from which place is being set. */
const showMarks = (catalogue: Catalogue, { state, at }: Step): void => {
  fill('part', entryDrawing(catalogue, state, at));
  fillGroup('marks', 'mark', markChoice(catalogue, state, at));
  fillGroup('palette', 'colour', palette(catalogue, state, at));
};

/** The same with what follows from the body and the number of its places. */
const showAll = (catalogue: Catalogue, set: Step): void => {
  const { state } = set;
  if (turnButton) turnButton.hidden = !canTurn(state);
  check('form', state.form.id);
  const formName = form?.querySelector('#form-name');
  if (formName) formName.textContent = state.form.name;
  fillGroup('counts', 'layout', countChoice(catalogue, state));
  fillGroup('apart', 'apart', apartChoice(catalogue, state));
  showMarks(catalogue, set);
};

/** Keeps what is set in the address and says what it reads as. */
const read = (catalogue: Catalogue, state: ColourState): void => {
  keepAsked(searchOf(state).slice(1));
  readings().then(({ colourReadings }) => {
    fill('readings', colourReadings(catalogue, state));
  }, sayNotFetched);
};

/** What the visitor has set, and how another step is taken. */
interface Setting {
  now: () => Step;
  take: (step: Step) => void;
  /** The same of what changes no place and no body, which therefore stay as they are drawn. */
  takeApart: (apart: ApartHint | undefined) => void;
}

const settingFrom = (catalogue: Catalogue, first: Step): Setting => {
  let set = first;
  return {
    now: () => set,
    take: ({ state, at }) => {
      const isRebuilt = state.layout !== set.state.layout;
      set = { state, at: Math.min(at, state.marks.length - 1) };
      if (isRebuilt) showAll(catalogue, set);
      else showMarks(catalogue, set);
      read(catalogue, state);
    },
    takeApart: (apart) => {
      set = { ...set, state: { ...set.state, apart } };
      read(catalogue, set.state);
    },
  };
};

const listenForChoices = (
  page: HTMLFormElement,
  tables: Catalogue['markings'],
  { now, take, takeApart }: Setting,
): void => {
  const chosen: Record<string, (value: string) => void> = {
    form: (id) => take(stepToForm(tables, now().state, id)),
    layout: (id) => take(stepToLayout(tables, now().state, id)),
    mark: (value) => take({ state: now().state, at: Number(value) }),
    apart: (value) => takeApart(isApart(value) ? value : undefined),
  };
  page.addEventListener('change', ({ target }) => {
    if (target instanceof HTMLInputElement) chosen[target.name]?.(target.value);
  });
};

const takeTyped = (tables: Catalogue['markings'], { now, take }: Setting): void => {
  if (!typed) return;
  const { said, ...step } = stepByTyped(tables, now().state, typed.value);
  take(step);
  if (typedNote) typedNote.textContent = said;
};

const listenForButtons = (
  page: HTMLFormElement,
  tables: Catalogue['markings'],
  { now, take }: Setting,
): void => {
  turnButton?.addEventListener('click', () => {
    const { state, at } = now();
    const turned = turnedRound(state);
    take({ state: turned, at });
    check('apart', turned.apart ?? '');
  });
  page.querySelector('#clear')?.addEventListener('click', () => {
    if (typed) typed.value = '';
    take({ state: emptyState(tables, now().state.layout.id), at: 0 });
    check('apart', '');
  });
  page.addEventListener('submit', (event) => event.preventDefault());
};

const start = (catalogue: Catalogue, page: HTMLFormElement): void => {
  const tables = catalogue.markings;
  const state = stateFrom(tables, asked());
  const setting = settingFrom(catalogue, {
    state,
    at: Math.max(0, state.marks.indexOf(undefined)),
  });
  const { now, take } = setting;
  listenForChoices(page, tables, setting);
  listenForTaps(
    page,
    (at) => take({ state: now().state, at }),
    (mark, onward) =>
      take({ state: withMark(now().state, now().at, mark), at: now().at + (onward ? 1 : 0) }),
  );
  listenForKeys(page, (key) => {
    const step = stepByKey(tables, now(), key);
    if (step !== undefined) take(step);
    return step !== undefined;
  });
  typed?.addEventListener('input', () => takeTyped(tables, setting));
  listenForButtons(page, tables, setting);

  listenForHabit(() => read(catalogue, now().state));
  const comesSet = asked() !== '';
  showAll(catalogue, now());
  if (comesSet) read(catalogue, state);
  // A link holds what is set, so there is one to copy from here on.
  const copyButton = page.querySelector<HTMLButtonElement>('#copy-link');
  const copied = page.querySelector<HTMLElement>('#copied');
  if (copyButton !== null && copied !== null) copyLinkButton(copyButton, copied);
  // What was typed while the tables were on their way counts as well.
  if (typed && typed.value !== '') takeTyped(tables, setting);
};

const forms = document.querySelector<HTMLDetailsElement>('#colour-forms');
if (forms !== null && asked() !== '') forms.open = false;

if (form !== null)
  cataloguePart('colours').then((catalogue) => start(catalogue, form), sayNotFetched);
