import { readMarking, type Catalogue, type Reading } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import { choiceKeys, hintsFrom } from '../reading/marking-hints.ts';
import { readingsMarkup, unlikelyMarkup } from '../reading/view.ts';
import { numberMarkup } from '../search/device-pieces.ts';
import { typeNumberIn, type TypeNumber } from '../search/type-number.ts';
import { asked, keepAsked } from './address.ts';
import { byId } from './by-id.ts';
import { cataloguePart } from './catalogue-part.ts';
import { colourAnswerFor } from './colours-asked.ts';
import { copyLinkButton } from './copy-link.ts';
import { habit, listenForHabit } from './habits.ts';

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

/** Draws the likeliest reading below its heading; what draws is fetched only then. */
const showDrawn = (catalogue: Catalogue, reading: Reading | undefined, text: string): void => {
  if (reading === undefined) return;
  Promise.all([import('../reading/drawn.ts'), cataloguePart('drawings')]).then(
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

/** The readings as elements, folded where the text is the type number of a device. */
const readingPieces = (
  catalogue: Catalogue,
  text: string,
  readings: readonly Reading[],
  number: TypeNumber | undefined,
): Node[] => {
  const pieces =
    number?.sure === true
      ? [unlikelyMarkup(catalogue, readings, habit())]
      : readingsMarkup(catalogue, text, readings, habit());
  return pieces.flatMap((piece) => (piece === false ? [] : [toDom(piece)]));
};

/** Keeps what is written and chosen in the address, so that a copied address is the whole state. */
const keepInAddress = (): string => {
  const query = new URLSearchParams();
  if (marking.value.trim() !== '') query.set('m', marking.value);
  for (const key of choiceKeys) if (chosen(key) !== '') query.set(key, chosen(key));
  keepAsked(query);
  return query.toString();
};

const show = (): void => {
  const now = keepInAddress();
  const text = marking.value.trim();
  if (text === '') {
    place.replaceChildren();
    return;
  }
  cataloguePart('reading').then(
    async (catalogue) => {
      const colours = await colourAnswerFor(catalogue, text);
      // Something else may have been asked while the data came.
      if (keepInAddress() !== now) return;
      const readings = readMarking(catalogue, text, hintsFrom(chosen));
      // Who says what the part is has seen that it is no device.
      const said = chosen('kind') !== '' || chosen('body') !== '';
      const number = said ? undefined : typeNumberIn(catalogue, text, readings);
      const read = colours === undefined || readings.length > 0;
      place.replaceChildren(
        ...(colours === undefined ? [] : [colours]),
        ...numberMarkup(catalogue, text, number).map((piece) => toDom(piece)),
        ...(read ? readingPieces(catalogue, text, readings, number) : []),
      );
      if (number?.sure !== true) showDrawn(catalogue, readings[0], text);
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
