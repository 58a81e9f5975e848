import { earlierCaches, PAGES } from './editions.ts';
import { at, pathOf, worker } from './scope.ts';

/** Pages that were open when this edition took over go on with the files that they were made for. */

/** Where their ids are kept, for a browser may stop the worker at any time. */
export const BEFORE = at('offline/before');

const earlierPages = async (): Promise<string[]> => {
  const kept = await (await caches.open(PAGES)).match(BEFORE);
  return kept === undefined ? [] : ((await kept.json()) as string[]);
};

const openPages = async (): Promise<string[]> =>
  (await worker.clients.matchAll({ includeUncontrolled: true, type: 'window' })).map(
    ({ id }) => id,
  );

/** Notes which pages are open while an edition takes over from another. */
export const noteEarlierPages = async (): Promise<void> => {
  const pages = (await earlierCaches()).length > 0 ? await openPages() : [];
  await (await caches.open(PAGES)).put(BEFORE, new Response(JSON.stringify(pages)));
};

/** Lets earlier editions go once no page of theirs is open. */
export const dropEarlier = async (): Promise<void> => {
  const [earlier, open] = [await earlierPages(), await openPages()];
  if (earlier.some((id) => open.includes(id))) return;
  await Promise.all((await earlierCaches()).map((name) => caches.delete(name)));
  await (await caches.open(PAGES)).delete(BEFORE);
};

/** What a page of an earlier edition asks for, from what was kept for that. */
export const answerEarlier = async (
  request: Request,
  page: string,
): Promise<Response | undefined> => {
  const path = pathOf(request.url);
  if (path === undefined || !(await earlierPages()).includes(page)) return undefined;
  for (const name of await earlierCaches()) {
    // Its query is the hash of what every page needs.
    const kept = await (await caches.open(name)).match(at(path), { ignoreSearch: true });
    if (kept) return kept;
  }
  return undefined;
};
