import { globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

/** The built site, as files. */

export const SITE = 'dist';

const pathOf = (file: string): string =>
  `/${file.split(sep).join('/')}`.replace(/\/index\.html$/, '/');

/** Holds the pages over again, and has tests of its own. */
export const ONE_FILE = 'understudy-offline.html';

/** Addresses of all built pages. */
export const pagePaths: readonly string[] = globSync('**/*.html', { cwd: SITE })
  .filter((file) => file !== ONE_FILE)
  .map(pathOf)
  .toSorted();

if (pagePaths.length === 0) throw new Error(`${SITE}/ is empty: run "npm run build" first`);

/** What a built page says in HTML. */
export const htmlOf = (path: string): string =>
  readFileSync(join(SITE, path.endsWith('/') ? `${path}index.html` : path), 'utf8');

/** Whether a page only leads on to another. */
export const leadsOn = (html: string): boolean => html.includes('http-equiv="refresh"');

export const SUBSTITUTION = '/replace/ceramic-disc-unknown/in/interstage-coupling/';

/** Pages that stand for their kind, where the first by alphabet would be a poor example. */
const EXAMPLES = [SUBSTITUTION, '/types/ceramic-disc-unknown/', '/positions/reservoir/'];

/** Pages that are like no other beside them. */
const ALONE = ['/data/evidence/', '/look/how/', '/look/readings/'];

const openedUp = (path: string): string =>
  path
    .replace(/^\/data\/.+\/$/, '/data/*/')
    .replace(/^\/look\/groups\/[^/]+\/$/, '/look/groups/*/')
    // What stands under a page of its own is of its own kind.
    .replace(/^\/(?:read|devices)\/(colours|codes|uses)\//, '/$1/')
    .replace(/^(\/sources\/[^/]+\/)[^/]+\/(?:[^/]+\/)?$/, '$1*/')
    .replace(/^(\/[^/]+\/)[^/]+\//, '$1*/')
    .replace(/\/in\/[^/]+\/$/, '/in/*/');

/** The kind of a page: its address with its last names left open. */
export const kindOf = (path: string): string => (ALONE.includes(path) ? path : openedUp(path));

/** One page of each kind that the site has, new kinds included as they come. */
export const onePageOfEachKind: readonly string[] = [
  ...Map.groupBy(pagePaths, kindOf).values(),
].flatMap(
  (paths) =>
    EXAMPLES.find((path) => paths.includes(path)) ??
    paths.find((path) => !leadsOn(htmlOf(path))) ??
    [],
);

/** So many pages are looked at in one test: a browser's new page takes longer than most looks. */
const IN_A_GROUP = 12;

/** The same pages in groups, each called by its first and last. */
export const groupsOfKinds: readonly { name: string; paths: readonly string[] }[] = Array.from(
  { length: Math.ceil(onePageOfEachKind.length / IN_A_GROUP) },
  (_, at) => onePageOfEachKind.slice(at * IN_A_GROUP, (at + 1) * IN_A_GROUP),
).map((paths) => ({ name: `${paths[0] ?? ''} to ${paths.at(-1) ?? ''}`, paths }));
