import { allSums } from '../engine/sums/index.ts';
import { demoJob } from '../job/index.ts';
import { wholeCatalogue } from './data.ts';

/** In the one file, what `browser/site-file.ts` is on the site: everything comes of the one catalogue. */

/** What stands behind a path of the site, by the names in it. */
const kinds: readonly (readonly [RegExp, (name: string) => unknown])[] = [
  [/^\/catalogue\/([\w-]+)\.json$/, () => wholeCatalogue()],
  [
    /^\/sums\/([\w-]+)\/facts\.json$/,
    (id) => allSums.find((sum) => sum.id === id)?.facts?.(wholeCatalogue()),
  ],
  [/^\/job\/demo\/([\w-]+)\.json$/, (id) => demoJob(wholeCatalogue().job, id, new Date(0))],
];

export const siteFile = (path: `/${string}`): Promise<unknown> => {
  for (const [pattern, answer] of kinds) {
    const name = pattern.exec(path)?.[1];
    if (name !== undefined) return Promise.resolve(answer(name));
  }
  return Promise.reject(new Error(`${path} is not in this file`));
};
