/** Text goes into a form of numbers as it is typed: nothing is completed, corrected or held back. */
const TYPED_AS_IS = {
  autocomplete: 'off',
  autocapitalize: 'off',
  spellcheck: 'false',
  novalidate: '',
} as const;

/** Brings the forms of a page to how text is typed into them, those that are drawn later too. */
export const takeAsTyped = (): void => {
  for (const form of document.querySelectorAll('form.numbers'))
    for (const [name, value] of Object.entries(TYPED_AS_IS)) form.setAttribute(name, value);
};

/** Ties each field to the line under it, which is read out with the field and when it changes. */
export const tieNotes = (form: HTMLFormElement): void => {
  for (const field of form.elements) {
    const note = field.nextElementSibling;
    if (!(field instanceof HTMLInputElement) || note?.tagName !== 'SMALL') continue;
    note.id = `${field.name}-note`;
    note.setAttribute('aria-live', 'polite');
    field.setAttribute('aria-describedby', note.id);
  }
};
