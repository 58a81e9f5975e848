import type { Progress } from '../offline/progress.ts';
import { eachOf } from './each-of.ts';
import { BEFORE } from './earlier-pages.ts';
import { PAGES } from './editions.ts';
import { keep } from './kept-pages.ts';
import { pathOf } from './scope.ts';
import { isInShell } from './shell.ts';
import { filesOf, lists } from './site-lists.ts';

const FILES_A_REPORT = 25;

/**
 * Keeps every file, telling how far it is.
 *
 * @throws where the network or the room on the device gives out; what was kept stays.
 */
export const keepAll = async (tell: (progress: Progress) => void): Promise<void> => {
  const site = await lists();
  if (site === undefined) throw new Error('the lists of this edition are not here');
  const { sections, files: total } = site;
  const cache = await caches.open(PAGES);
  const kept = new Set((await cache.keys()).map(({ url }) => pathOf(url)));
  let done = 0;
  for (const section of sections) {
    await eachOf(Object.keys(await filesOf(section)), async (path) => {
      if (!isInShell(path) && !kept.has(path)) await keep(path);
      done += 1;
      if (done % FILES_A_REPORT === 0) tell({ done, total });
    });
  }
  tell({ done, total, all: true });
};

/** Lets go of all pages and files but those that every page needs. */
export const forgetPages = async (tell: (progress: Progress) => void): Promise<void> => {
  const cache = await caches.open(PAGES);
  const kept = (await cache.keys()).filter(({ url }) => url !== BEFORE);
  await Promise.all(kept.map((request) => cache.delete(request)));
  tell({ forgotten: kept.length });
};
