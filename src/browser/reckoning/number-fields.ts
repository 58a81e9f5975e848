import { dropGiven, given, keepGiven } from '../address/address-bar.ts';
import { byId } from '../page/by-id.ts';
import { fieldOf } from '../page/field-of.ts';
import { takeAsTyped, tieNotes } from '../page/typed-forms.ts';

/** The form of numbers of a page about stand-ins, for any kind of part. */

const form = byId('numbers', HTMLFormElement);

/** What the page is about: the old type and its position, or a device with its use and family. */
export const { type = '', position = '', device = '', use = '', family = '' } = form.dataset;

/** The field of a key, if the form has it. */
export const inputFor = (key: string): HTMLInputElement | HTMLSelectElement | undefined =>
  fieldOf(form, key);

/** What the address says now. */
export const askedNow = (): URLSearchParams => new URLSearchParams([...given]);

/** Numbers of the address must be seen beside others, even those that are folded away there otherwise. */
const unfoldGiven = (): void => {
  for (const element of form.elements) {
    const folded = element.closest('.place + *')?.previousElementSibling;
    if (folded instanceof HTMLDetailsElement && given.has(element.getAttribute('name') ?? ''))
      folded.open = true;
  }
};

/** What a page does with its form of numbers. */
export interface FormLife {
  /** Reckons anew. */
  update: () => void;
  /** Writes out each number as it was understood, or puts the usual one back. */
  showFields: () => void;
  /** What of a field goes into the address, where that is not what stands in it. */
  written?: (input: HTMLInputElement | HTMLSelectElement) => string;
}

/** Brings the form to life: what is typed goes into the address, and the page reckons with it. */
export const enlivenNumbers = ({
  update,
  showFields: rewrite,
  written = ({ value }) => value,
}: FormLife): void => {
  form.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    keepGiven(target.name, written(target));
    update();
  });
  // On leaving a field its number is written out as it was understood, or the usual one put back.
  // The results stay as they are: what is being clicked on there may not be replaced meanwhile.
  form.addEventListener('focusout', rewrite);
  form.addEventListener('reset', () => {
    dropGiven(
      [...form.elements].flatMap((element) => {
        const name = element.getAttribute('name');
        return name === null ? [] : [name];
      }),
    );
    setTimeout(update);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  takeAsTyped();
  tieNotes(form);
  for (const element of form.elements) {
    if (element instanceof HTMLInputElement) element.readOnly = false;
    if (element instanceof HTMLSelectElement) element.disabled = false;
  }
  for (const element of document.querySelectorAll<HTMLElement>('.script-only')) {
    element.hidden = false;
  }
  unfoldGiven();
};
