import { findStandIns, resolveSituation, type Catalogue } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import {
  fieldsFor,
  guidelineKey,
  readAddress,
  type Asked,
  type Field,
} from '../substitution/address.ts';
import { answerSentence } from '../substitution/phrases.ts';
import { fieldNote } from '../substitution/form.ts';
import { groundsMarkup } from '../substitution/grounds.ts';
import { resultsMarkup } from '../substitution/results.ts';
import { given, writeAddressBar } from './address-bar.ts';
import { cataloguePart } from './catalogue-part.ts';
import { copyLinkButton } from './copy-link.ts';
import { listenForEvidence, showJudgement } from './judge-first.ts';

/** Brings a substitution page to life: reckons with the visitor's numbers, kept in the address. */

const byId = <E extends HTMLElement>(id: string, kind: new () => E): E => {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`the page has no ${id}`);
  return element;
};

const form = byId('numbers', HTMLFormElement);
const results = byId('results', HTMLElement);
const grounds = byId('grounds', HTMLElement);
const answer = byId('answer', HTMLElement);
const { type = '', position = '' } = form.dataset;

const inputFor = (key: string): HTMLInputElement | HTMLSelectElement | undefined => {
  const element = form.elements.namedItem(key);
  return element instanceof HTMLInputElement || element instanceof HTMLSelectElement
    ? element
    : undefined;
};

const showField = (field: Field): void => {
  const input = inputFor(field.key);
  if (input === undefined) return;
  if (input !== document.activeElement) input.value = field.text;
  const { text, fault } = fieldNote(field);
  const note = document.getElementById(`${field.key}-note`);
  if (note !== null) {
    // Written anew only where it changes, since a change is read out.
    if (note.textContent !== text) note.textContent = text;
    note.className = fault ? 'fault' : 'hint';
  }
  if (fault) input.setAttribute('aria-invalid', 'true');
  else input.removeAttribute('aria-invalid');
  input.closest('.field')?.setAttribute('data-from', field.from);
};

/** The type whose findings the keyboard stands at. */
const focusedType = (): string | undefined =>
  results.contains(document.activeElement)
    ? document.activeElement?.closest('details')?.closest('li')?.id
    : undefined;

/** Types whose findings stand open. */
const openTypes = (): Set<string> =>
  new Set(
    [...results.querySelectorAll('details[open]')].flatMap(
      (details) => details.closest('li')?.id ?? [],
    ),
  );

const showResults = (catalogue: Catalogue, asked: Asked): void => {
  const open = openTypes();
  const assessments = findStandIns(catalogue, asked.request);
  answer.textContent = answerSentence(catalogue, type, assessments);
  const markup = resultsMarkup({ catalogue, assessments }, ({ candidate }) => ({
    open: open.has(candidate.type),
    bars: open.has(candidate.type),
  }));
  const focused = focusedType();
  results.replaceChildren(...markup.map((piece) => toDom(piece)));
  if (focused !== undefined) {
    document.getElementById(focused)?.querySelector('summary')?.focus({ preventScroll: true });
  }
  const sourcesOpen = grounds.querySelector('details')?.open ?? false;
  grounds.replaceChildren(
    ...groundsMarkup({ catalogue, assessments }).map((piece) => toDom(piece)),
  );
  grounds.querySelector('details')?.toggleAttribute('open', sourcesOpen);
};

/** Cautions that a condition brings up come and go with it. */
const showCautions = (catalogue: Catalogue, asked: Asked): void => {
  const { conditions } = resolveSituation(catalogue, asked.request);
  for (const element of document.querySelectorAll<HTMLElement>('[data-condition][data-from]')) {
    const condition = conditions.find(({ id }) => id === element.dataset['condition']);
    element.hidden = (condition?.range.max ?? 0) < Number(element.dataset['from']);
  }
};

const askedNow = (catalogue: Catalogue): Asked =>
  readAddress(catalogue, type, position, new URLSearchParams([...given]));

const showFields = (catalogue: Catalogue): void => {
  fieldsFor(catalogue, askedNow(catalogue)).forEach(showField);
};

const recompute = (catalogue: Catalogue): void => {
  const asked = askedNow(catalogue);
  showFields(catalogue);
  const guideline = inputFor(guidelineKey);
  if (guideline !== undefined) guideline.value = asked.request.guideline ?? guideline.value;
  showResults(catalogue, asked);
  showCautions(catalogue, asked);
  showJudgement(catalogue, asked);
};

const update = (): void => {
  cataloguePart(position).then(recompute, () => {
    answer.textContent =
      'The data for reckoning could not be fetched. What stands below is for the usual numbers; your own stay in the address.';
  });
};

/** The guideline that holds when the address names none, as the page was built. */
const usualGuideline = inputFor(guidelineKey)?.value;

form.addEventListener('input', (event) => {
  const { target } = event;
  if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
  const text = target.value.trim();
  if (text === '' || (target.name === guidelineKey && text === usualGuideline)) {
    given.delete(target.name);
  } else {
    given.set(target.name, text);
  }
  writeAddressBar();
  update();
});

// On leaving a field its number is written out as it was understood, or the usual one put back.
// The results stay as they are: what is being clicked on there may not be replaced meanwhile.
form.addEventListener('focusout', () => {
  cataloguePart(position).then(showFields, () => undefined);
});

listenForEvidence(update);

form.addEventListener('reset', () => {
  given.clear();
  writeAddressBar();
  setTimeout(update);
});

form.addEventListener('submit', (event) => {
  event.preventDefault();
});

// A number in brackets leads into the list of sources, which must be open for that.
const openTarget = (): void => {
  const target = document.querySelector(':target');
  const around = target?.closest('details');
  if (around) {
    around.open = true;
    target?.scrollIntoView();
  }
};
addEventListener('hashchange', openTarget);

form.addEventListener('focusin', () => void cataloguePart(position).catch(() => undefined), {
  once: true,
});

results.addEventListener(
  'toggle',
  ({ target }) => {
    const opened = target instanceof HTMLDetailsElement && target.open;
    if (opened && target.querySelector('.drawn') === null && target.closest('ol')) update();
  },
  true,
);

for (const element of form.elements) {
  if (element instanceof HTMLInputElement) element.readOnly = false;
  if (element instanceof HTMLSelectElement) element.disabled = false;
}
for (const element of document.querySelectorAll<HTMLElement>('.script-only')) {
  element.hidden = false;
}
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
if (given.size > 0) update();
