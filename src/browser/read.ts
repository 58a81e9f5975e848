import './older-browsers.ts';
import type { Catalogue, Reading } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import { choiceKeys } from '../reading/marking-hints.ts';
import { asked, keepAsked } from './address/address.ts';
import { cataloguePart } from './fetched/catalogue-part.ts';
import { fetchedOnce } from './fetched/fetched-once.ts';
import { listenForHabit } from './kept/habits.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';

/** The page that reads markings: the text and what is known of the part live in the address. */

const form = byId('marking-form', HTMLFormElement);
const marking = byId('marking', HTMLTextAreaElement);
const place = byId('readings', HTMLElement);
const more = byId('more-choices', HTMLDetailsElement);
const wornButton = byId('insert-worn', HTMLButtonElement);

const selectOf = (key: string): HTMLSelectElement | undefined => {
  const field = form.elements.namedItem(key);
  return field instanceof HTMLSelectElement ? field : undefined;
};

const chosen = (key: string): string => selectOf(key)?.value ?? '';

/** What draws a part, and its data. */
const drawing = fetchedOnce(() =>
  Promise.all([import('../reading/drawn.ts'), cataloguePart('drawings')]),
);

/** Draws the likeliest reading below its heading; what draws is fetched only then. */
const showDrawn = (catalogue: Catalogue, reading: Reading | undefined, text: string): void => {
  if (reading === undefined) return;
  drawing().then(
    ([{ drawnReading }, { typeLooks, markings }]) => {
      if (marking.value.trim() !== text) return;
      const { colours } = markings;
      const all = { ...catalogue, typeLooks, markings: { ...catalogue.markings, colours } };
      const drawn = drawnReading(all, reading, text, chosen('body'));
      const heading = place.querySelector('.reading > h3');
      if (drawn !== undefined && heading?.parentElement?.querySelector('figure') === null)
        heading.after(toDom(drawn));
    },
    () => undefined,
  );
};

/** Keeps what is written and chosen in the address, so that a copied address is the whole state. */
const keepInAddress = (): string => {
  const query = new URLSearchParams();
  if (marking.value.trim() !== '') query.set('m', marking.value);
  for (const key of choiceKeys) if (chosen(key) !== '') query.set(key, chosen(key));
  keepAsked(query);
  return query.toString();
};

/** What reads and its data: fetched when the form is first used. */
const fetched = fetchedOnce(() =>
  Promise.all([import('./reading/reading-of.ts'), cataloguePart('reading')]),
);

const show = (): void => {
  const now = keepInAddress();
  const text = marking.value.trim();
  if (text === '') {
    place.replaceChildren();
    return;
  }
  fetched().then(
    async ([{ readingOf }, catalogue]) => {
      const { pieces, drawn } = await readingOf(catalogue, text, chosen);
      // Something else may have been asked while the data came.
      if (keepInAddress() !== now) return;
      place.replaceChildren(...pieces);
      showDrawn(catalogue, drawn, text);
    },
    () => {
      place.textContent = 'The data could not be fetched; please try again.';
    },
  );
};

/** Writes what an address says into the form. */
const fill = (query: URLSearchParams): void => {
  marking.value = query.get('m') ?? '';
  for (const key of choiceKeys) {
    const field = selectOf(key);
    const value = query.get(key) ?? '';
    if (field === undefined) continue;
    const isOption = [...field.options].some((option) => option.value === value);
    field.value = isOption ? value : '';
    if (field.value !== '' && more.contains(field)) more.open = true;
  }
};

fill(new URLSearchParams(asked()));
form.addEventListener('input', show);
form.addEventListener('focusin', () => void fetched().catch(() => undefined), { once: true });
form.addEventListener('submit', (event) => {
  event.preventDefault();
  show();
});
wornButton.addEventListener('click', () => {
  marking.setRangeText('?', marking.selectionStart, marking.selectionEnd, 'end');
  marking.focus();
  show();
});
for (const link of document.querySelectorAll<HTMLAnchorElement>('#examples a'))
  link.addEventListener('click', (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    fill(new URL(link.href).searchParams);
    show();
    form.scrollIntoView({ block: 'start' });
  });
if (marking.value !== '') show();
listenForHabit(show);

copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
