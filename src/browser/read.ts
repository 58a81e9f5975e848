import { readMarking, type Catalogue, type Reading } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import { readingsMarkup } from '../reading/view.ts';
import { cataloguePart } from './catalogue-part.ts';
import { copyLinkButton } from './copy-link.ts';

/** The page that reads markings: the text and what is known of the body live in the address. */

const form = document.querySelector<HTMLFormElement>('#marking-form');
const place = document.querySelector<HTMLElement>('#readings');
const copyButton = document.querySelector<HTMLButtonElement>('#copy-link');
const copied = document.querySelector<HTMLElement>('#copied');

const fieldOf = (name: string): HTMLTextAreaElement | HTMLSelectElement | undefined => {
  const field = form?.elements.namedItem(name);
  return field instanceof HTMLTextAreaElement || field instanceof HTMLSelectElement
    ? field
    : undefined;
};

const textOf = (name: string): string => fieldOf(name)?.value ?? '';

/** Draws the likeliest reading below its heading; what draws is fetched only then. */
const showDrawn = (catalogue: Catalogue, reading: Reading | undefined, text: string): void => {
  if (reading === undefined) return;
  Promise.all([import('../reading/drawn.ts'), cataloguePart('drawings')]).then(
    ([{ drawnReading }, { typeLooks, markings }]) => {
      if (textOf('m').trim() !== text) return;
      const { colours } = markings;
      const all = { ...catalogue, typeLooks, markings: { ...catalogue.markings, colours } };
      const drawn = drawnReading(all, reading, text, textOf('body'));
      const heading = place?.querySelector('.reading > h3');
      if (drawn !== undefined && heading?.parentElement?.querySelector('figure') === null)
        heading.after(toDom(drawn));
    },
    () => undefined,
  );
};

const show = (): void => {
  const text = textOf('m');
  const body = textOf('body');
  const query = new URLSearchParams();
  if (text.trim() !== '') query.set('m', text);
  if (body !== '') query.set('body', body);
  const written = query.toString();
  history.replaceState(null, '', `${location.pathname}${written && `?${written}`}`);
  if (text.trim() === '') {
    place?.replaceChildren();
    return;
  }
  cataloguePart('reading').then(
    (catalogue) => {
      if (textOf('m') !== text) return;
      const readings = readMarking(catalogue, text, body === '' ? {} : { body });
      place?.replaceChildren(
        ...readingsMarkup(catalogue, text.trim(), readings).map((piece) => toDom(piece)),
      );
      showDrawn(catalogue, readings[0], text.trim());
    },
    () => {
      if (place) place.textContent = 'The data could not be fetched; please try again.';
    },
  );
};

if (form !== null) {
  const query = new URLSearchParams(location.search);
  for (const name of ['m', 'body']) {
    const field = fieldOf(name);
    const given = query.get(name);
    if (field !== undefined && given !== null) field.value = given;
  }
  form.addEventListener('input', show);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    show();
  });
  if (textOf('m') !== '') show();
}
if (copyButton !== null && copied !== null) copyLinkButton(copyButton, copied);
