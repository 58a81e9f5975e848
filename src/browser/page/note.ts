/**
 * Writes the line under a field, and marks the field where that says what is wrong with it. The line is
 * written anew only where it changes, since a change is read out.
 * @param field nothing where the page has none of that key now
 */
export const writeNote = (
  key: string,
  text: string,
  isFault: boolean,
  field: Element | null | undefined,
): void => {
  if (isFault) field?.setAttribute('aria-invalid', 'true');
  else field?.removeAttribute('aria-invalid');
  const note = document.getElementById(`${key}-note`);
  if (note === null) return;
  if (note.textContent !== text) note.textContent = text;
  const kind = isFault ? 'fault' : 'hint';
  if (note.className !== kind) note.className = kind;
};
