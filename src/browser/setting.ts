import { kindCircumstances, type KindPart } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import type { KindAsked } from '../substitution/kind-address.ts';
import {
  carriesSetting,
  newTrimmerForm,
  newTrimmerFields,
  newTrimmerInputs,
  readNewTrimmer,
} from '../substitution/new-trimmer.ts';
import { settingMarkup } from '../substitution/setting-view.ts';
import type { Shown } from '../substitution/shown.ts';
import { given, keepGiven } from './address-bar.ts';
import { writeNote } from './note.ts';
import { askedNow } from './number-fields.ts';

/** The part of a trimmer's page that carries its setting over; other pages have none. */

const carried = document.getElementById('carried');
const form = document.getElementById('new-trimmer');

const inputOf = (key: string): HTMLInputElement | undefined => {
  const input = document.getElementById(`field-${key}`);
  return input instanceof HTMLInputElement ? input : undefined;
};

/** Draws the form once, with what the address says in it. */
const drawForm = (): void => {
  if (form === null || form.childElementCount > 0) return;
  form.replaceChildren(toDom(newTrimmerForm()));
  for (const { key } of newTrimmerFields) {
    const input = inputOf(key);
    if (input !== undefined) input.value = given.get(key) ?? '';
  }
};

/** Shows the old setting carried over, with what is wrong with what was measured. */
export const showSetting = (shown: Shown<KindPart>, { request }: KindAsked): void => {
  const circumstances = kindCircumstances(shown.catalogue, request);
  if (carried === null || !carriesSetting(circumstances)) return;
  const { measured, rejected } = readNewTrimmer(askedNow());
  for (const { key, note, fault } of newTrimmerInputs(rejected, measured)) {
    writeNote(key, note, fault);
    const input = inputOf(key);
    if (fault) input?.setAttribute('aria-invalid', 'true');
    else input?.removeAttribute('aria-invalid');
    input?.closest('.field')?.setAttribute('data-from', given.has(key) ? 'given' : 'default');
  }
  carried.replaceChildren(
    ...settingMarkup(shown, circumstances, measured).map((piece) => toDom(piece)),
  );
};

/** Keeps what is measured in the address, and has the page reckon again. */
export const listenForSetting = (update: () => void): void => {
  drawForm();
  form?.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    keepGiven(target.name, target.value);
    update();
  });
  form?.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
