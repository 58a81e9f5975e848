/** Pages that are shared for what stands on them; others carry the mark alone. */
const SHARED = /^\/(?:[^/]+\/[^/]+\/in|types|positions|sums|devices)\/[^/]+\/$/;

/**
 * Where the picture beside a link to a page stands, if it has one of its own.
 * @param path of the page below the site's base
 */
export const cardPath = (path: string): `/${string}` | undefined =>
  SHARED.test(path) ? `/pictures${path.slice(0, -1)}.png` : undefined;
