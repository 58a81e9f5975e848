import { globSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { createIndex, close, type PagefindIndex } from 'pagefind';
import { FURTHER, INDEX, SEARCHER } from '../src/search/word-index.ts';
import { edition } from '../src/text/edition.ts';
import { indexedPages, type IndexedPage } from './indexed-pages.ts';
import { SITE } from './site-folder.ts';

/** Indexes the words of the built pages, so that the site can be searched without a server. */

/**
 * Places of words in a piece of an index, a tenth of what is usual: a search fetches the piece of each
 * word that it asks for. In smaller pieces more words are parted from others that begin with them,
 * and the list of pieces grows. The setting is not promised to stay: a test weighs what is fetched.
 */
const PLACES_A_PIECE = 2000;
process.env['PAGEFIND_UNSTABLE_INDEX_CHUNK_SIZE'] = String(PLACES_A_PIECE);

/**
 * Files that the texts of the further pages are in: a quarter of one a page, since all that is kept
 * without a network is fetched file by file. It adds some 10 kB to a search of these pages.
 */
const FURTHER_FILES = 800;

const made = async (settings: { maxFragments?: number } = {}): Promise<PagefindIndex> => {
  const { index, errors } = await createIndex({
    ...settings,
    // Without the point, 4.7 would be found as 47.
    includeCharacters: '.',
    verbose: false,
  });
  if (index === undefined) throw new Error(errors.join('; '));
  return index;
};

const addPage = async (index: PagefindIndex, page: IndexedPage): Promise<void> => {
  const { url, title, html, content } = page;
  const { errors } =
    content === undefined
      ? await index.addHTMLFile({ url, content: html })
      : await index.addCustomRecord({ url, language: 'en', meta: { title }, content });
  if (errors.length > 0) throw new Error(`${url}: ${errors.join('; ')}`);
};

/** Pages that are sent on without waiting for word of each; they are taken in the order in which they come. */
const TOGETHER = 200;

const first = await made();
const further = await made({ maxFragments: FURTHER_FILES });
const count = { first: 0, further: 0 };
let sent: Promise<void>[] = [];
for (const page of indexedPages()) {
  sent.push(addPage(page.further ? further : first, page));
  count[page.further ? 'further' : 'first'] += 1;
  if (sent.length < TOGETHER) continue;
  await Promise.all(sent);
  sent = [];
}
await Promise.all(sent);

const write = async (index: PagefindIndex, outputPath: string): Promise<void> => {
  const { errors } = await index.writeFiles({ outputPath });
  if (errors.length > 0) throw new Error(errors.join('; '));
};

const drop = (folder: string, pattern: string): void => {
  for (const name of globSync(pattern, { cwd: folder })) rmSync(join(folder, name));
};

/** Ready-made boxes, what searches other languages, and scripts that the one below takes the place of. */
const UNUSED = '{pagefind*.js,pagefind*.css,wasm.unknown.pagefind}';

const folder = join(SITE, INDEX);
await write(first, folder);
await build({
  stdin: {
    contents: `
      import * as library from './pagefind.js';
      import { serve } from ${JSON.stringify(join(process.cwd(), 'src/worker/searcher.ts'))};
      serve(library);`,
    resolveDir: folder,
  },
  outfile: join(folder, SEARCHER),
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2023',
  logLevel: 'warning',
});
drop(folder, UNUSED);
await write(further, join(folder, FURTHER));
// The worker has what searches both.
drop(join(folder, FURTHER), '{pagefind*.js,pagefind*.css,wasm.*}');
await close();
console.log(
  `${edition.name} ${edition.version}: ${count.first} pages indexed, and ${count.further} apart from them`,
);
