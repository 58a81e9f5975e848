import { LISTS, listOf, type FileHashes, type Lists, type Section } from '../offline/lists.ts';
import { sectionOf } from '../offline/section-of.ts';
import { PAGES, SHELL, type EarlierEdition } from './editions.ts';
import { hashOf } from './hash-of.ts';
import { at } from './scope.ts';

/** The files that an edition has. Lists are made by the build and kept only with the hash that they are named by, so their shape is trusted. */

const json = async <Shape>(response: Response | undefined): Promise<Shape | undefined> =>
  response === undefined ? undefined : ((await response.json()) as Shape);

/** The sections that a shell lists, if it is whole. */
const listsIn = async (shell: Cache): Promise<Lists | undefined> =>
  json<Lists>(await shell.match(at(LISTS), { ignoreSearch: true }));

let known: Lists | undefined;

/** The sections of this edition; none where the browser has let its files go. */
export const lists = async (): Promise<Lists | undefined> =>
  (known ??= await listsIn(await caches.open(SHELL)));

// Every file that is kept asks its section's list, which may name thousands.
const knownFiles = new Map<string, FileHashes>();

const keptFiles = async ({ name, hash }: Section): Promise<FileHashes> => {
  const cache = await caches.open(PAGES);
  const address = at(listOf(name));
  const kept = await json<FileHashes>(await cache.match(address));
  if (kept !== undefined) return kept;
  const response = await fetch(address, { cache: 'no-cache' });
  if ((await hashOf(response)) !== hash) throw new Error(`${name} is listed by another edition`);
  await cache.put(address, response.clone());
  return (await response.json()) as FileHashes;
};

/**
 * The files of a section with their hashes, from the cache or the network.
 *
 * @throws where the network has no such list, or that of another edition.
 */
export const filesOf = async (section: Section): Promise<FileHashes> => {
  const files = knownFiles.get(section.hash) ?? (await keptFiles(section));
  knownFiles.set(section.hash, files);
  return files;
};

/** The hash that this edition lists for a path below the base. */
export const listedHash = async (path: string): Promise<string | undefined> => {
  const section = (await lists())?.sections.find(({ name }) => name === sectionOf(path));
  return section && (await filesOf(section))[path];
};

/** The hashes that an earlier edition listed for a section; none if that was never asked. */
export const earlierFiles = async (
  { pages }: EarlierEdition,
  section: string,
): Promise<FileHashes> => (await json<FileHashes>(await pages.match(at(listOf(section))))) ?? {};
