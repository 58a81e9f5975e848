/** Writes the line under a field; written anew only where it changes, since a change is read out. */
export const writeNote = (key: string, text: string, fault: boolean): void => {
  const note = document.getElementById(`${key}-note`);
  if (note === null) return;
  if (note.textContent !== text) note.textContent = text;
  const kind = fault ? 'fault' : 'hint';
  if (note.className !== kind) note.className = kind;
};
