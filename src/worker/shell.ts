import { Serwist } from 'serwist';
import { AT_ONCE } from './each-of.ts';
import { PAGES, SHELL } from './editions.ts';
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

/** Whether this edition keeps a file: other caches of the host may be those of another copy of the site. */
const isKept = async (path: string): Promise<boolean> =>
  isInShell(path) || (await (await caches.open(PAGES)).match(at(path))) !== undefined;

/** The page that was meant by an address without its last slash, as a host would answer; else what says that there is no network. */
const withoutNetwork = async (address: string): Promise<Response> => {
  const path = pathOf(address);
  if (path !== undefined && (await isKept(`${path}/`))) {
    return Response.redirect(at(`${path}/`) + new URL(address).search);
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
