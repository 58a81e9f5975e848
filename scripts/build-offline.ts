import { createHash } from 'node:crypto';
import { copyFileSync, globSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { SITE } from './site-folder.ts';

/** Lists every built file with its hash, a section each, and gives the worker its edition. */

/** Holds the pages over again. */
const ONE_FILE = 'understudy-offline.html';
const MOST_SHELL_BYTES = 2_000_000;

interface File {
  path: string;
  hash: string;
  bytes: number;
}

const hashOf = (content: string | Buffer): string =>
  createHash('sha256').update(content).digest('hex').slice(0, 16);

/** As the worker has it. */
const sectionOf = (path: string): string => {
  const names = path.split('/').slice(0, -1);
  return names.length === 0 ? 'top' : names.slice(0, names[0] === 'replace' ? 2 : 1).join('-');
};

const isWorker = (path: string): boolean => /^sw(-stop)?\.js$/.test(path);
/** Only other sites look at these. */
const isForOthers = (path: string): boolean =>
  path.startsWith('pictures/') || ['robots.txt', 'sitemap.xml'].includes(path);
const isList = (path: string): boolean => /^offline\/.+\.json$/.test(path);

const files: File[] = globSync('**/*', { cwd: SITE })
  .filter((name) => statSync(join(SITE, name)).isFile())
  .map((name) => ({
    name,
    path: name
      .split(sep)
      .join('/')
      .replace(/(^|\/)index\.html$/, '$1'),
  }))
  .filter(
    ({ path }) =>
      !isWorker(path) &&
      !isList(path) &&
      !isForOthers(path) &&
      !['404.html', ONE_FILE].includes(path),
  )
  .map(({ name, path }) => {
    const content = readFileSync(join(SITE, name));
    return { path, hash: hashOf(content), bytes: content.length };
  })
  .toSorted((a, b) => (a.path < b.path ? -1 : 1));

const hashesOf = (some: readonly File[]): Record<string, string> =>
  Object.fromEntries(some.map(({ path, hash }) => [path, hash]));

const bytesOf = (some: readonly File[]): number => some.reduce((sum, { bytes }) => sum + bytes, 0);

/** What every page needs, and what one sees without a network. */
const shell = files.filter(
  ({ path }) =>
    path.startsWith('_astro/') ||
    ['', 'offline/', 'icon.svg', 'manifest.webmanifest'].includes(path) ||
    path === 'catalogue/reading.json',
);
if (bytesOf(shell) > MOST_SHELL_BYTES) {
  throw new Error(`the shell is ${bytesOf(shell)} bytes; at most ${MOST_SHELL_BYTES}`);
}

const sections = [...Map.groupBy(files, ({ path }) => sectionOf(path))].map(([name, some]) => {
  const text = JSON.stringify(hashesOf(some));
  return { name, text, hash: hashOf(text) };
});

mkdirSync(join(SITE, 'offline'), { recursive: true });
for (const { name, text } of sections) writeFileSync(join(SITE, 'offline', `${name}.json`), text);

const body = {
  files: files.length,
  bytes: bytesOf(files),
  shell: hashesOf(shell),
  sections: sections.map(({ name, hash }) => ({ name, hash })),
};
const worker = readFileSync('public/sw.js', 'utf8');
const edition = hashOf(JSON.stringify(body) + worker);
writeFileSync(join(SITE, 'offline', 'lists.json'), JSON.stringify({ edition, ...body }));
writeFileSync(join(SITE, 'sw.js'), worker.replace('__EDITION__', edition));
// OFFLINE=stop takes the worker away from everyone who has it.
if (process.env['OFFLINE'] === 'stop') copyFileSync('public/sw-stop.js', join(SITE, 'sw.js'));
console.log(
  `${files.length} files, ${bytesOf(files)} bytes; ${bytesOf(shell)} bytes kept at the first visit`,
);
