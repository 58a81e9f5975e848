/** The element of a page that has an id, which the page was built with. */
export const byId = <E extends HTMLElement>(id: string, kind: new () => E): E => {
  const element = document.getElementById(id);
  if (!(element instanceof kind)) throw new Error(`the page has no ${id}`);
  return element;
};
