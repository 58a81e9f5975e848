/** In the one file, what `components/links.ts` is on the site: pages stand after the `#`. */
export const href = (path: `/${string}`): string => `#${path}`;
