/** What the visitor has written, by key; what is not here takes the usual number. */
export const given = new Map(new URLSearchParams(location.search));

/** Puts all that the visitor has written into the address, so that a copied address is the state. */
export const writeAddressBar = (): void => {
  const query = new URLSearchParams([...given]).toString();
  history.replaceState(null, '', `${location.pathname}${query && `?${query}`}${location.hash}`);
};
