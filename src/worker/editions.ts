import { BASE, EDITION } from './scope.ts';

/** Each edition has two caches: what every page needs, and pages that were visited or saved. */

// Another copy of the site may stand under another path of the same host.
const PREFIX = `understudy-${BASE.pathname}-`;

const shellOf = (edition: string): string => `${PREFIX}shell-${edition}`;
const pagesOf = (edition: string): string => `${PREFIX}pages-${edition}`;

/** Names of the caches of this edition. */
export const SHELL = shellOf(EDITION);
export const PAGES = pagesOf(EDITION);

/** Whether a cache is one of this site's, of whatever edition. */
const isOwn = (name: string): boolean => name.startsWith(PREFIX);

/** Names of the caches of other editions. */
export const earlierCaches = async (): Promise<string[]> =>
  (await caches.keys()).filter((name) => isOwn(name) && name !== SHELL && name !== PAGES);

/** An edition that was kept before this one. */
export interface EarlierEdition {
  edition: string;
  shell: Cache;
  pages: Cache;
}

/** The editions before this one whose caches are there. */
export const earlierEditions = async (): Promise<EarlierEdition[]> => {
  const start = shellOf('');
  const editions = (await earlierCaches())
    .filter((name) => name.startsWith(start))
    .map((name) => name.slice(start.length));
  return Promise.all(
    editions.map(async (edition) => ({
      edition,
      shell: await caches.open(shellOf(edition)),
      pages: await caches.open(pagesOf(edition)),
    })),
  );
};
