/** Where one is in the file: a page with what it is asked and a place in it, as they stand after the `#`. */
export interface Place {
  /** Path of the page on the site, such as `/read/`. */
  path: `/${string}`;
  /** What the page is asked, with its `?`; nothing where it is asked nothing. */
  query: string;
  /** A place in the page, without its `#`. */
  fragment: string;
}

/** Reads what stands in an address from its first `#` on; it may have been written by anybody. */
export const readPlace = (hash: string): Place => {
  const [, path = '', query = '', fragment = ''] =
    /^#?([^?#]*)(\?[^#]*)?(?:#(.*))?$/s.exec(hash) ?? [];
  return {
    path: `/${path.replace(/^\//, '')}`,
    query: query === '?' ? '' : query,
    fragment,
  };
};

/** A place as it is written into an address. */
export const writePlace = ({ path, query, fragment }: Place): string =>
  `#${path}${query}${fragment && `#${fragment}`}`;

let now = readPlace(location.hash);

/** Where one is now. */
export const here = (): Place => now;

/** Where one is now with something else about it, as an address. */
export const addressWith = (change: Partial<Place>): string => writePlace({ ...now, ...change });

/** Goes on in the same page with something else about it. */
export const keepPlace = (change: Partial<Place>): void => {
  now = { ...now, ...change };
  history.replaceState(history.state, '', writePlace(now));
};

const listeners: (() => void)[] = [];

/** Calls back when a link leads to another place in the page. */
export const listenForPlace = (listener: () => void): void => {
  listeners.push(listener);
};

/** Goes to another place in the same page. */
export const goWithin = (fragment: string): void => {
  now = { ...now, fragment };
  for (const listener of listeners) listener();
};
