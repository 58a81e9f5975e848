import { judgeFirst, resolveSituation, signsOf, type Catalogue } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { Asked } from '../../substitution/address.ts';
import { evidenceForm, judgementMarkup } from '../../substitution/judge-view.ts';
import { evidenceFields, readEvidence, signsKey } from '../../substitution/old-part.ts';
import { given, keepGiven } from '../address/address-bar.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';
import { foldedIn } from '../page/folded.ts';
import { writeNote } from '../page/note.ts';

/** The part of a substitution page that asks whether the old part needs replacing at all. */

const folded = foldedIn(byId('judge-first', HTMLDetailsElement));
const form = byId('evidence', HTMLFormElement);
const drawJudgement = drawerIn(byId('judgement', HTMLElement));

const keys: readonly string[] = [...evidenceFields.map(({ key }) => key), signsKey];

const inputFor = (key: string): HTMLInputElement | undefined => {
  const element = form.elements.namedItem(key);
  return element instanceof HTMLInputElement ? element : undefined;
};

/** The boxes to tick for what is seen on the part. */
const signBoxes = (): HTMLInputElement[] => [
  ...form.querySelectorAll<HTMLInputElement>(`input[type=checkbox][name=${signsKey}]`),
];

const showSigns = (seen: readonly string[]): void => {
  for (const box of signBoxes()) box.checked = seen.includes(box.value);
};

/** Draws the form once, when it is first wanted. */
const drawForm = (catalogue: Catalogue, { request }: Asked): void => {
  folded.openIf(keys.some((key) => given.has(key)));
  if (!folded.isDrawn() || form.elements.length > 0) return;
  const signs = signsOf(catalogue, request.original.type, request.position);
  form.replaceChildren(...evidenceForm(signs).map((piece) => toDom(piece)));
};

/** Shows what to do with the old part by all that was found out about it. */
export const showJudgement = (catalogue: Catalogue, asked: Asked): void => {
  const { request } = asked;
  drawForm(catalogue, asked);
  const { evidence, rejected } = readEvidence(new URLSearchParams([...given]));
  for (const { key, hint } of evidenceFields) {
    const input = inputFor(key);
    const message = rejected[key];
    if (input !== undefined && input !== document.activeElement) input.value = given.get(key) ?? '';
    writeNote(key, message ?? hint, message !== undefined, input);
  }
  showSigns(evidence.signs ?? []);
  const { original } = resolveSituation(catalogue, request);
  const judgement = judgeFirst(catalogue, original, request.position, {
    ...evidence,
    // Only where it is known: what is usual for a type condemns no part.
    age: request.original.age?.typ,
  });
  drawJudgement(judgementMarkup(judgement));
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
