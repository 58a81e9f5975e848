import type { Field } from '../../substitution/field.ts';
import { fieldNote, numbersInShort } from '../../substitution/form.ts';
import { byId } from '../page/by-id.ts';
import { writeNote } from '../page/note.ts';
import { inputFor } from './number-fields.ts';

/** What the form of numbers shows of each, and in short. */

/** Stands for the numbers on narrow screens until they are opened. */
const inShort = byId('in-short', HTMLElement);

const showField = (field: Field): void => {
  const input = inputFor(field.key);
  if (input === undefined) return;
  if (input !== document.activeElement && input.value !== field.text) input.value = field.text;
  const { text, fault } = fieldNote(field);
  writeNote(field.key, text, fault, input);
  const around = input.closest('.field');
  if (around?.getAttribute('data-from') !== field.from)
    around?.setAttribute('data-from', field.from);
};

/** Shows what each number counts as; the field that is being written in keeps its text. */
export const showFields = (fields: readonly Field[]): void => {
  fields.forEach(showField);
  const words = numbersInShort(fields);
  if (inShort.textContent !== words) inShort.textContent = words;
  // What is wrong must be seen.
  if (fields.some(({ message }) => message !== undefined))
    inShort.closest('details')?.setAttribute('open', '');
};
