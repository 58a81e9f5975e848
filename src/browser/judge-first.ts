import { judgeFirst, resolveSituation, type Catalogue } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import type { Asked } from '../substitution/address.ts';
import { judgementMarkup } from '../substitution/judge-view.ts';
import { evidenceFields, readEvidence, signsKey } from '../substitution/old-part.ts';
import { given, keepGiven } from './address-bar.ts';
import { writeNote } from './note.ts';

/** The part of a substitution page that asks whether the old part needs replacing at all. */

const form = document.querySelector<HTMLFormElement>('#evidence');
const place = document.querySelector<HTMLElement>('#judgement');

const inputFor = (key: string): HTMLInputElement | undefined => {
  const element = form?.elements.namedItem(key);
  return element instanceof HTMLInputElement ? element : undefined;
};

/** The boxes to tick for what is seen on the part. */
const signBoxes = [
  ...(form?.querySelectorAll<HTMLInputElement>(`input[type=checkbox][name=${signsKey}]`) ?? []),
];

const showSigns = (seen: readonly string[]): void => {
  for (const box of signBoxes) box.checked = seen.includes(box.value);
};

/** Shows what to do with the old part by all that was found out about it. */
export const showJudgement = (catalogue: Catalogue, { request }: Asked): void => {
  const { evidence, rejected } = readEvidence(new URLSearchParams([...given]));
  for (const { key, hint } of evidenceFields) {
    const input = inputFor(key);
    const message = rejected[key];
    if (input !== undefined && input !== document.activeElement) input.value = given.get(key) ?? '';
    if (message === undefined) input?.removeAttribute('aria-invalid');
    else input?.setAttribute('aria-invalid', 'true');
    writeNote(key, message ?? hint, message !== undefined);
  }
  showSigns(evidence.signs ?? []);
  const { original } = resolveSituation(catalogue, request);
  const judgement = judgeFirst(catalogue, original, request.position, {
    ...evidence,
    // Only where it is known: what is usual for a type condemns no part.
    age: request.original.age?.typ,
  });
  place?.replaceChildren(...judgementMarkup(judgement).map((piece) => toDom(piece)));
};

/** Keeps what is written about the old part in the address, and has the page reckon again. */
export const listenForEvidence = (update: () => void): void => {
  for (const { key } of evidenceFields) inputFor(key)?.removeAttribute('readonly');
  for (const box of signBoxes) box.disabled = false;
  form?.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const text = signBoxes.includes(target)
      ? signBoxes.flatMap((box) => (box.checked ? [box.value] : [])).join(',')
      : target.value;
    keepGiven(target.name, text);
    update();
  });
  form?.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
