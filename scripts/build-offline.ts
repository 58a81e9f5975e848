import { createHash } from 'node:crypto';
import {
  copyFileSync,
  globSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { injectManifest, type ManifestTransform } from '@serwist/build';
import { build } from 'vite';
import { HASH_DIGITS, LISTS, listOf, type Lists } from '../src/offline/lists.ts';
import { sectionOf } from '../src/offline/section-of.ts';
import { SHELL } from './offline-shell.ts';
import { SITE } from './site-folder.ts';

/** Lists every built file with its hash, a section each, and makes the worker that keeps them. */

/** Holds the pages over again. */
const ONE_FILE = 'understudy-offline.html';

interface File {
  path: string;
  hash: string;
  bytes: number;
}

const hashOf = (content: string | Buffer): string =>
  createHash('sha256').update(content).digest('hex').slice(0, HASH_DIGITS);

const pathOf = (name: string): string =>
  name
    .split(sep)
    .join('/')
    .replace(/(^|\/)index\.html$/, '$1');

const isWorker = (path: string): boolean => /^sw(-stop)?\.js$/.test(path);
/** Only other sites look at these. */
const isForOthers = (path: string): boolean =>
  path.startsWith('pictures/') || ['robots.txt', 'sitemap.xml'].includes(path);
const isList = (path: string): boolean => /^offline\/.+\.json$/.test(path);

const files: File[] = globSync('**/*', { cwd: SITE })
  .filter((name) => statSync(join(SITE, name)).isFile())
  .map((name) => ({ name, path: pathOf(name) }))
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

const sections = [...Map.groupBy(files, ({ path }) => sectionOf(path))].map(([name, some]) => {
  const text = JSON.stringify(hashesOf(some));
  return { name, text, hash: hashOf(text) };
});
const lists: Lists = {
  files: files.length,
  bytes: bytesOf(files),
  sections: sections.map(({ name, hash }) => ({ name, hash })),
};
mkdirSync(join(SITE, 'offline'), { recursive: true });
for (const { name, text } of sections) writeFileSync(join(SITE, listOf(name)), text);
writeFileSync(join(SITE, LISTS), JSON.stringify(lists));

/** A folder of pages is asked for without the name of its file, and what comes must be what was built. */
const asAsked: ManifestTransform = (entries) => ({
  manifest: entries
    .map(({ url, size }) => {
      const content = readFileSync(join(SITE, url));
      const integrity = `sha256-${createHash('sha256').update(content).digest('base64')}`;
      return { url: pathOf(url) || './', revision: hashOf(content), integrity, size };
    })
    .toSorted((a, b) => (a.url < b.url ? -1 : 1)),
});

/** Makes the worker as one script in a folder. */
const bundleWorker = (outDir: string): Promise<unknown> =>
  build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      outDir,
      emptyOutDir: true,
      target: 'es2023',
      modulePreload: false,
      rollupOptions: {
        input: 'src/worker/worker.ts',
        output: { format: 'es', codeSplitting: false, entryFileNames: 'sw.js' },
      },
    },
  });

const folder = mkdtempSync(join(tmpdir(), 'worker-'));
await bundleWorker(folder);
const { count, size, warnings } = await injectManifest({
  swSrc: join(folder, 'sw.js'),
  swDest: join(SITE, 'sw.js'),
  globDirectory: SITE,
  globPatterns: [...SHELL],
  // What these files may come to is held by a test, not by Serwist, which would leave out a large one.
  maximumFileSizeToCacheInBytes: Number.MAX_SAFE_INTEGER,
  manifestTransforms: [asAsked],
});
rmSync(folder, { recursive: true });
if (warnings.length > 0) throw new Error(warnings.join('\n'));
// OFFLINE=stop takes the worker away from everyone who has it.
if (process.env['OFFLINE'] === 'stop') copyFileSync('public/sw-stop.js', join(SITE, 'sw.js'));
console.log(
  `${files.length} files, ${bytesOf(files)} bytes; ${count} files, ${size} bytes kept at the first visit`,
);
