import { Serwist } from 'serwist';
import { AT_ONCE } from './each-of.ts';
import { SHELL } from './editions.ts';
import { keptPages } from './kept-pages.ts';
import { at, pathOf, shellFiles } from './scope.ts';

/** What every page needs is kept before an edition is used; pages as they are visited. */
export const serwist = new Serwist({
  precacheEntries: shellFiles,
  precacheOptions: {
    cacheName: SHELL,
    concurrency: AT_ONCE,
    fallbackToNetwork: false,
    directoryIndex: null,
    cleanURLs: false,
    urlManipulation: ({ url }) => {
      const path = pathOf(url.href);
      return path === undefined ? [] : [new URL(at(path))];
    },
  },
  runtimeCaching: [{ matcher: ({ url }) => pathOf(url.href) !== undefined, handler: keptPages }],
});

/** Whether a path is one that every page needs. */
export const isInShell = (path: string): boolean =>
  serwist.getPrecacheKeyForUrl(at(path)) !== undefined;

const withoutNetwork = async (address: string): Promise<Response> => {
  const path = pathOf(address);
  const slashed = path === undefined ? undefined : at(`${path}/`);
  if (slashed !== undefined && (await caches.match(slashed, { ignoreSearch: true }))) {
    return Response.redirect(slashed);
  }
  return (await serwist.matchPrecache(at('offline/'))) ?? Response.error();
};

// Where neither the caches nor the network gave an answer; a browser may have let a cache go.
serwist.setCatchHandler(async ({ request }) => {
  try {
    return await fetch(request);
  } catch {
    return request.mode === 'navigate' ? withoutNetwork(request.url) : Response.error();
  }
});
