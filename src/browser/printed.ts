import './older-browsers.ts';
import { toDom } from '../markup/to-dom.ts';
import { printedKeys, readAsked, type PrintedKey } from '../reading/printed/asked.ts';
import { paintedMarkup } from '../reading/printed/painted.ts';
import { printedMarkup } from '../reading/printed/view.ts';
import { asked, keepAsked } from './address/address.ts';
import { cataloguePart } from './fetched/catalogue-part.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { fieldOf } from './page/field-of.ts';
import { writeNote } from './page/note.ts';

/** The page that says how a part may be marked; the whole state is the address. */

const form = byId('printed-form', HTMLFormElement);
const place = byId('printed', HTMLElement);
const common = byId('common', HTMLElement);

const texts = (): Record<PrintedKey, string> =>
  Object.fromEntries(printedKeys.map((key) => [key, fieldOf(form, key)?.value ?? ''])) as Record<
    PrintedKey,
    string
  >;

const keepInAddress = (written: Record<PrintedKey, string>): void => {
  keepAsked(new URLSearchParams(Object.entries(written).filter(([, text]) => text.trim() !== '')));
};

const show = (): void => {
  const written = texts();
  keepInAddress(written);
  Promise.all([cataloguePart('reading'), cataloguePart('colours')]).then(
    ([catalogue, withColours]) => {
      if (JSON.stringify(texts()) !== JSON.stringify(written)) return;
      const { part, faults } = readAsked(catalogue, written);
      for (const key of ['c', 'tol', 'v', 't'] as const)
        writeNote(key, faults[key] ?? '', faults[key] !== undefined, fieldOf(form, key));
      common.hidden = part !== undefined;
      place.replaceChildren(
        ...(part === undefined
          ? []
          : [...printedMarkup(catalogue, part), ...paintedMarkup(withColours, part)]
        ).map((piece) => toDom(piece)),
      );
    },
    () => {
      place.textContent = 'The data could not be fetched; please try again.';
    },
  );
};

const query = new URLSearchParams(asked());
for (const key of printedKeys) {
  const field = fieldOf(form, key);
  const given = query.get(key);
  if (field !== undefined && given !== null) field.value = given;
}
form.addEventListener('input', show);
form.addEventListener('submit', (event) => {
  event.preventDefault();
  show();
});
if (texts().c !== '') show();
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
