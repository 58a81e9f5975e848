/** The field of a form with a name, to type in or to choose from; nothing where it has none. */
export const fieldOf = (
  form: HTMLFormElement,
  name: string,
): HTMLInputElement | HTMLSelectElement | undefined => {
  const field = form.elements.namedItem(name);
  return field instanceof HTMLInputElement || field instanceof HTMLSelectElement
    ? field
    : undefined;
};
