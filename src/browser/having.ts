import { assess, judgeFirst, type Assessment, type Catalogue } from '../engine/index.ts';
import { verdictWords } from '../components/verdict-shape.ts';
import { toDom } from '../markup/to-dom.ts';
import type { Asked } from '../substitution/address.ts';
import { havingForm, havingResult } from '../substitution/having-view.ts';
import {
  havingFields,
  havingKeys,
  readHaving,
  type Having,
  type HavingField,
} from '../substitution/having.ts';
import { typeName, type Shown } from '../substitution/shown.ts';
import { given, keepGiven } from './address-bar.ts';
import { byId } from './by-id.ts';
import { writeNote } from './note.ts';

/** The part of a substitution page that answers for a part that the visitor has. */

const place = byId('have', HTMLDetailsElement);
const form = byId('having', HTMLFormElement);
const result = byId('having-result', HTMLElement);
const said = byId('having-said', HTMLElement);

const keys: readonly string[] = Object.values(havingKeys);

const isAskedFor = (): boolean => keys.some((key) => given.has(key));

const fieldOf = (key: string): HTMLInputElement | HTMLSelectElement | undefined => {
  const field = form.elements.namedItem(key);
  return field instanceof HTMLInputElement || field instanceof HTMLSelectElement
    ? field
    : undefined;
};

/** Draws the form once, when it is first wanted, with what the address says in it. */
const drawForm = (catalogue: Catalogue, fields: readonly [HavingField, ...HavingField[]]): void => {
  if (form.elements.length > 0) return;
  form.replaceChildren(...havingForm(catalogue, fields).map((piece) => toDom(piece)));
  for (const key of keys) {
    const field = fieldOf(key);
    if (field !== undefined) field.value = given.get(key) ?? '';
  }
};

const showNote = ({ key, label, note, fault }: HavingField): void => {
  writeNote(key, note, fault);
  const written = form.querySelector(`label[for="field-${key}"]`);
  if (written !== null) written.textContent = label;
  const field = fieldOf(key);
  if (fault) field?.setAttribute('aria-invalid', 'true');
  else field?.removeAttribute('aria-invalid');
  field?.closest('.field')?.setAttribute('data-from', given.has(key) ? 'given' : 'default');
};

const showForm = (catalogue: Catalogue, having: Having, assessment?: Assessment): void => {
  const fields = havingFields(having, assessment);
  drawForm(catalogue, fields);
  fields.forEach(showNote);
};

/** What the part that the visitor asks about comes to; nothing where no part is asked about. */
export const assessHaving = (catalogue: Catalogue, { request }: Asked): Assessment | undefined => {
  const { candidate } = readHaving(catalogue, new URLSearchParams([...given]));
  return candidate === undefined ? undefined : assess(catalogue, request, candidate);
};

const show = (shown: Shown & { having: Assessment }, { request }: Asked): void => {
  const { catalogue, having } = shown;
  const judgement = judgeFirst(catalogue, having.candidate, request.position, {});
  result.replaceChildren(...havingResult(shown, judgement).map((piece) => toDom(piece)));
  const words = `${typeName(catalogue, having)}: ${verdictWords[having.verdict]}`;
  if (said.textContent !== words) said.textContent = words;
};

/** Shows what the part that the visitor asks about comes to, with what is wrong in the form. */
export const showHaving = (shown: Shown, asked: Asked): void => {
  if (isAskedFor()) place.open = true;
  if (!place.open) return;
  const { catalogue, having } = shown;
  showForm(catalogue, readHaving(catalogue, new URLSearchParams([...given])), having);
  if (having === undefined) {
    result.replaceChildren();
    said.textContent = '';
  } else {
    show({ ...shown, having }, asked);
  }
};

/** Keeps what is asked in the address, and has the page reckon again. */
export const listenForHaving = (update: () => void): void => {
  place.addEventListener('toggle', () => {
    if (place.open && form.elements.length === 0) update();
  });
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    keepGiven(target.name, target.value);
    update();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
