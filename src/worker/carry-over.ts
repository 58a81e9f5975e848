import { sectionOf } from '../offline/section-of.ts';
import { eachOf } from './each-of.ts';
import { earlierEditions, PAGES, SHELL, type EarlierEdition } from './editions.ts';
import { keep } from './kept-pages.ts';
import { BASE, at } from './scope.ts';
import { isInShell } from './shell.ts';
import { earlierFiles, filesOf, lists } from './site-lists.ts';

/** What did not change since the edition before is copied from its caches rather than fetched. */

/** Copies files that every page needs; their keys name their hashes. */
export const carryOverShell = async (keys: Iterable<string>): Promise<void> => {
  const cache = await caches.open(SHELL);
  const earlier = await earlierEditions();
  await eachOf(keys, async (key) => {
    if (await cache.match(key)) return;
    for (const { shell } of earlier) {
      const same = await shell.match(key);
      if (same) return cache.put(key, same);
    }
  });
};

const isList = (path: string): boolean => path.startsWith('offline/');

const carryOverFrom = async (earlier: EarlierEdition): Promise<void> => {
  const cache = await caches.open(PAGES);
  const paths = (await earlier.pages.keys())
    .map(({ url }) => url.slice(BASE.href.length))
    .filter((path) => !isList(path) && !isInShell(path));
  const sections = (await lists())?.sections ?? [];
  for (const [name, kept] of Map.groupBy(paths, sectionOf)) {
    const section = sections.find((one) => one.name === name);
    if (section === undefined) continue;
    const [now, before] = [await filesOf(section), await earlierFiles(earlier, name)];
    await eachOf(kept, async (path) => {
      if (now[path] === undefined || (await cache.match(at(path)))) return;
      const same = before[path] === now[path] && (await earlier.pages.match(at(path)));
      await (same ? cache.put(at(path), same) : keep(path));
    });
  }
};

/** Copies pages that were kept, and fetches those of them that changed. */
export const carryOverPages = async (): Promise<void> => {
  for (const earlier of await earlierEditions()) await carryOverFrom(earlier);
};
