import type { PrecacheEntry } from 'serwist';
import { LISTS } from '../offline/lists.ts';

declare const self: ServiceWorkerGlobalScope & {
  /** Files that every page needs, as the build lists them here. */
  __SW_MANIFEST: (PrecacheEntry & { revision: string })[];
};

/** The worker itself. */
export const worker = self;

/** Files that every page needs, each with its hash. */
export const shellFiles = self.__SW_MANIFEST;

/** Address that the site is under. */
export const BASE = new URL('./', self.location.href);

/** Full address of a path below the base. */
export const at = (path: string): string => new URL(path, BASE).href;

/** The path below the base of a file, whatever was asked of it. */
export const pathOf = (address: string): string | undefined => {
  const { origin, pathname } = new URL(address);
  const whole = origin + pathname.replace(/\/index\.html$/, '/');
  return whole.startsWith(BASE.href) ? whole.slice(BASE.href.length) : undefined;
};

/** The lists name every file with its hash, so that their own hash names the edition. */
export const EDITION = shellFiles.find(({ url }) => url === LISTS)?.revision ?? 'unlisted';
