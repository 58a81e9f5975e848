import { readMarking } from '../engine/index.ts';
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
