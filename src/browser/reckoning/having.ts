import { verdictWords } from '../../components/verdict-shape.ts';
import type { Assessment, Judgement } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { HavingField } from '../../substitution/having-fields.ts';
import { havingForm, havingResult, type TypeChoice } from '../../substitution/having-view.ts';
import type { AnyPart } from '../../substitution/phrases.ts';
import { typeName, type Shown } from '../../substitution/shown.ts';
import { given, keepGiven } from '../address/address-bar.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';
import { fieldOf } from '../page/field-of.ts';
import { foldedIn } from '../page/folded.ts';
import { writeNote } from '../page/note.ts';

/** The part of a substitution page that answers for a part that the visitor has. */

const folded = foldedIn(byId('have', HTMLDetailsElement));
const form = byId('having', HTMLFormElement);
const drawResult = drawerIn(byId('having-result', HTMLElement));
const said = byId('having-said', HTMLElement);

/** What a page asks of a part that the visitor has. */
export interface HavingAsked {
  /** Types that may be chosen. */
  types: readonly TypeChoice[];
  fields: readonly [HavingField, ...HavingField[]];
  /** Whether a part from the drawer is to be trusted, where there are rules for that. */
  judgement?: Judgement | undefined;
}

/** Draws the form once, when it is first wanted, with what the address says in it. */
const drawForm = ({ types, fields }: HavingAsked): void => {
  if (form.elements.length > 0) return;
  form.replaceChildren(...havingForm(types, fields).map((piece) => toDom(piece)));
  for (const { key } of fields) {
    const field = fieldOf(form, key);
    if (field !== undefined) field.value = given.get(key) ?? '';
  }
};

const showNote = ({ key, label, note, fault }: HavingField): void => {
  const field = fieldOf(form, key);
  writeNote(key, note, fault, field);
  const written = form.querySelector(`label[for="field-${key}"]`);
  if (written !== null) written.textContent = label;
  field?.closest('.field')?.setAttribute('data-from', given.has(key) ? 'given' : 'default');
};

const showResult = <P extends AnyPart>(
  shown: Shown<P> & { having: Assessment<P> },
  judgement: Judgement | undefined,
): void => {
  const { catalogue, having } = shown;
  drawResult(havingResult(shown, judgement));
  const words = `${typeName(catalogue, having)}: ${verdictWords[having.verdict]}`;
  if (said.textContent !== words) said.textContent = words;
};

/** Shows what the part that the visitor asks about comes to, with what is wrong in the form. */
export const showHaving = <P extends AnyPart>(shown: Shown<P>, asked: HavingAsked): void => {
  folded.openIf(asked.fields.some(({ key }) => given.has(key)));
  if (!folded.isDrawn()) return;
  const { having } = shown;
  drawForm(asked);
  asked.fields.forEach(showNote);
  if (having === undefined) {
    drawResult([]);
    said.textContent = '';
  } else {
    showResult({ ...shown, having }, asked.judgement);
  }
};

/** Keeps what is asked in the address, and has the page reckon again. */
export const listenForHaving = (update: () => void): void => {
  folded.listen(update);
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    keepGiven(target.name, target.value);
    update();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
