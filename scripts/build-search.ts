import { globSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createIndex, close, type PagefindIndex } from 'pagefind';
import { edition } from '../src/text/edition.ts';
import { indexedPages, type IndexedPage } from './indexed-pages.ts';
import { SITE } from './site-folder.ts';

/** Indexes the words of the built pages, so that the site can be searched without a server. */

const addPage = async (index: PagefindIndex, page: IndexedPage): Promise<void> => {
  const { url, title, html, content } = page;
  const { errors } =
    content === undefined
      ? await index.addHTMLFile({ url, content: html })
      : await index.addCustomRecord({ url, language: 'en', meta: { title }, content });
  if (errors.length > 0) throw new Error(`${url}: ${errors.join('; ')}`);
};

/** What comes with an index and no page asks for: ready-made boxes, and what searches other languages. */
const UNUSED = '{pagefind-*ui.*,pagefind-highlight.js,wasm.unknown.pagefind}';

const { index, errors } = await createIndex({
  // Without the point, 4.7 would be found as 47.
  includeCharacters: '.',
  verbose: false,
});
if (index === undefined) throw new Error(errors.join('; '));

/** Pages that are sent on without waiting for word of each; they are taken in the order in which they come. */
const TOGETHER = 200;

let count = 0;
let sent: Promise<void>[] = [];
for (const page of indexedPages()) {
  sent.push(addPage(index, page));
  count += 1;
  if (sent.length < TOGETHER) continue;
  await Promise.all(sent);
  sent = [];
}
await Promise.all(sent);
const folder = join(SITE, 'pagefind');
const written = await index.writeFiles({ outputPath: folder });
if (written.errors.length > 0) throw new Error(written.errors.join('; '));
for (const name of globSync(UNUSED, { cwd: folder })) rmSync(join(folder, name));
await close();
console.log(`${edition.name} ${edition.version}: ${count} pages indexed`);
