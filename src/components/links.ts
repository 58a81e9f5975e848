const base = import.meta.env.BASE_URL.replace(/\/$/, '');

/**
 * The address of a page or file of this site, from its path below the base.
 *
 * @param path starts with `/`; a page ends with `/`, before any `?` or `#`
 */
export const href = (path: `/${string}`): string => `${base}${path}`;
