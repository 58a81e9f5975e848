import { toDom } from '../../markup/to-dom.ts';
import { evidenceForm, judgementMarkup, type JudgedFirst } from '../../substitution/judge-view.ts';
import { signsKey } from '../../substitution/old-part.ts';
import { given, keepGiven } from '../address/address-bar.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';
import { fieldOf } from '../page/field-of.ts';
import { foldedIn } from '../page/folded.ts';
import { writeNote } from '../page/note.ts';

/** The part of a page about stand-ins that asks whether the old part needs replacing at all. */

const folded = foldedIn(byId('judge-first', HTMLDetailsElement));
const form = byId('evidence', HTMLFormElement);
const drawJudgement = drawerIn(byId('judgement', HTMLElement));

/** The boxes to tick for what is seen on the part. */
const signBoxes = (): HTMLInputElement[] => [
  ...form.querySelectorAll<HTMLInputElement>(`input[type=checkbox][name=${signsKey}]`),
];

const showSigns = (seen: readonly string[]): void => {
  for (const box of signBoxes()) box.checked = seen.includes(box.value);
};

/** Draws the form once, when it is first wanted. */
const drawForm = (judged: JudgedFirst): void => {
  const keys = [...judged.inputs.map(({ key }) => key), signsKey];
  folded.openIf(keys.some((key) => given.has(key)));
  if (!folded.isDrawn() || form.elements.length > 0) return;
  form.replaceChildren(...evidenceForm(judged).map((piece) => toDom(piece)));
};

/** Shows what to do with the old part by all that was found out about it. */
export const showJudgement = (judged: JudgedFirst): void => {
  drawForm(judged);
  for (const { key, note, fault } of judged.inputs) {
    const input = fieldOf(form, key);
    if (input !== undefined && input !== document.activeElement) input.value = given.get(key) ?? '';
    writeNote(key, note, fault, input);
  }
  showSigns(judged.seen);
  drawJudgement(judgementMarkup(judged.judgement));
};

/** Keeps what is written about the old part in the address, and has the page reckon again. */
export const listenForEvidence = (update: () => void): void => {
  folded.listen(update);
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const boxes = signBoxes();
    const text = boxes.includes(target)
      ? boxes.flatMap((box) => (box.checked ? [box.value] : [])).join(',')
      : target.value;
    keepGiven(target.name, text);
    update();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
