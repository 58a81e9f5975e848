import { CacheFirst, type SerwistPlugin } from 'serwist';
import { PAGES } from './editions.ts';
import { hashOf } from './hash-of.ts';
import { at, pathOf } from './scope.ts';
import { listedHash } from './site-lists.ts';

/** A query asks the same file. */
const byPath: SerwistPlugin = {
  cacheKeyWillBeUsed: ({ request }) => {
    const path = pathOf(request.url);
    return Promise.resolve(path === undefined ? request : at(path));
  },
};

const isListed = async (address: string, response: Response): Promise<boolean> => {
  const path = pathOf(address);
  if (path === undefined || response.status !== 200 || response.redirected) return false;
  const hash = await listedHash(path);
  return hash !== undefined && hash === (await hashOf(response));
};

/** Only what this edition lists is kept: a site that is being replaced may serve another's. */
const asListed: SerwistPlugin = {
  cacheWillUpdate: async ({ request, response }) =>
    (await isListed(request.url, response).catch(() => false)) ? response : null,
};

/** Answers with a page or file that was kept, else fetches it and keeps it. */
export const keptPages = new CacheFirst({
  cacheName: PAGES,
  plugins: [byPath, asListed],
  fetchOptions: { cache: 'no-cache' },
});

/**
 * Keeps one file of the site that no page asked for.
 *
 * @throws where it could not be fetched, is another edition's, or there is no room.
 */
export const keep = async (path: string): Promise<void> => {
  const cache = await caches.open(PAGES);
  const address = at(path);
  // Kept here, it need not stand in the browser's own store as well.
  const response = await fetch(address, { cache: 'no-store' });
  if (!(await isListed(address, response))) throw new Error(`${path} is of another edition`);
  await cache.put(address, response);
};
