/** Names of types and positions, as the page's own lists of choices have them. */

const listOf = (id: string): { nameOf: Map<string, string>; idOf: Map<string, string> } => {
  const options = [...document.querySelectorAll<HTMLOptionElement>(`#${id} option`)];
  const pairs = options.map((option) => [option.dataset.id ?? '', option.value] as const);
  return {
    nameOf: new Map(pairs),
    idOf: new Map(pairs.map(([key, name]) => [name.toLowerCase(), key])),
  };
};

const lists = { type: listOf('type-names'), position: listOf('position-names') };
export type Named = keyof typeof lists;

/** The name of an id; what is not known stands as it was typed. */
export const nameOf = (list: Named, id: string): string => lists[list].nameOf.get(id) ?? id;

/** The id of a name; what is not known stays as it was typed. */
export const idOf = (list: Named, text: string): string =>
  lists[list].idOf.get(text.trim().toLowerCase()) ?? text.trim();
