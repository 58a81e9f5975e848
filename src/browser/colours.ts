import './older-browsers.ts';
import type { Catalogue } from '../engine/index.ts';
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

const start = (catalogue: Catalogue, page: HTMLFormElement): void => {
  const tables = catalogue.markings;
  let state = stateFrom(tables, asked());
  let current = Math.max(0, state.marks.indexOf(undefined));

  const read = (): void => {
    keepAsked(searchOf(state).slice(1));
    readings().then(({ colourReadings }) => {
      fill('readings', colourReadings(catalogue, state));
    }, sayNotFetched);
  };

  /** What follows from the colours and from which place is being set. */
  const showMarks = (): void => {
    fill('part', entryDrawing(catalogue, state, current));
    fillGroup('marks', 'mark', markChoice(catalogue, state, current));
    fillGroup('palette', 'colour', palette(catalogue, state, current));
  };

  const turnButton = page.querySelector<HTMLButtonElement>('#turn');

  const showAll = (): void => {
    if (turnButton !== null) turnButton.hidden = !canTurn(state);
    for (const radio of radios('form')) radio.checked = radio.value === state.form.id;
    const formName = page.querySelector('#form-name');
    if (formName !== null) formName.textContent = state.form.name;
    fillGroup('counts', 'layout', countChoice(catalogue, state));
    fillGroup('apart', 'apart', apartChoice(catalogue, state));
    showMarks();
  };

  const take = ({ state: next, at }: Step): void => {
    const rebuilt = next.layout !== state.layout;
    state = next;
    current = Math.min(at, state.marks.length - 1);
    if (rebuilt) showAll();
    else showMarks();
    read();
  };

  const chosen: Record<string, (value: string) => void> = {
    form: (id) => take(stepToForm(tables, state, id)),
    layout: (id) => take(stepToLayout(tables, state, id)),
    mark: (value) => take({ state, at: Number(value) }),
    apart: (value) => {
      state = { ...state, apart: isApart(value) ? value : undefined };
      read();
    },
  };
  page.addEventListener('change', ({ target }) => {
    if (target instanceof HTMLInputElement) chosen[target.name]?.(target.value);
  });

  listenForTaps(
    page,
    (at) => take({ state, at }),
    (mark, onward) =>
      take({ state: withMark(state, current, mark), at: onward ? current + 1 : current }),
  );
  listenForKeys(page, (key) => {
    const step = stepByKey(tables, { state, at: current }, key);
    if (step !== undefined) take(step);
    return step !== undefined;
  });

  const typed = page.querySelector<HTMLInputElement>('#typed');
  const typedNote = page.querySelector<HTMLElement>('#typed-note');
  const takeTyped = (): void => {
    if (typed === null) return;
    const { said, ...step } = stepByTyped(tables, state, typed.value);
    take(step);
    if (typedNote !== null) typedNote.textContent = said;
  };
  typed?.addEventListener('input', takeTyped);

  turnButton?.addEventListener('click', () => {
    const { apart } = turnedRound(state);
    take({ state: turnedRound(state), at: current });
    for (const radio of radios('apart')) radio.checked = radio.value === (apart ?? '');
  });
  page.querySelector('#clear')?.addEventListener('click', () => {
    if (typed !== null) typed.value = '';
    take({ state: emptyState(tables, state.layout.id), at: 0 });
    for (const radio of radios('apart')) radio.checked = radio.value === '';
  });
  page.addEventListener('submit', (event) => event.preventDefault());

  listenForHabit(read);
  const comesSet = asked() !== '';
  showAll();
  if (comesSet) read();
  // A link holds what is set, so there is one to copy from here on.
  const copyButton = page.querySelector<HTMLButtonElement>('#copy-link');
  const copied = page.querySelector<HTMLElement>('#copied');
  if (copyButton !== null && copied !== null) copyLinkButton(copyButton, copied);
  // What was typed while the tables were on their way counts as well.
  if (typed !== null && typed.value !== '') takeTyped();
};

const forms = document.querySelector<HTMLDetailsElement>('#colour-forms');
if (forms !== null && asked() !== '') forms.open = false;

if (form !== null)
  cataloguePart('colours').then((catalogue) => start(catalogue, form), sayNotFetched);
