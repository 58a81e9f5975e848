import { globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { createIndex, close, type PagefindIndex } from 'pagefind';
import { loadCatalogue } from '../src/catalogue/index.ts';
import { edition } from '../src/text/edition.ts';

/** Indexes the words of the built pages, so that the site can be searched without a server. */

const SITE = 'dist';
const PAIR_PAGE = /^replace\/([^/]+)\/in\/([^/]+)\/$/;

/** Text of a tag of a page of our own; the layout writes each once, in this form. */
const find = (html: string, pattern: RegExp): string => {
  const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
  const raw = pattern.exec(html)?.[1] ?? '';
  return raw.replaceAll(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => entities[name] ?? '');
};

const catalogue = loadCatalogue();

/** Other words for the type and the position of a substitution page. */
const aliases = (type: string, position: string): string =>
  [
    catalogue.types[type]?.name,
    catalogue.types[type]?.family,
    catalogue.positions[position]?.name,
    ...(catalogue.positions[position]?.also_called ?? []),
  ].join(', ');

const addPage = async (index: PagefindIndex, file: string): Promise<boolean> => {
  const html = readFileSync(join(SITE, file), 'utf8');
  if (html.includes('content="noindex"')) return false;
  const path = file
    .split(sep)
    .join('/')
    .replace(/index\.html$/, '');
  const pair = PAIR_PAGE.exec(path);
  // A substitution page is all numbers; its title, its answer and its other names are what is looked for.
  const { errors } =
    pair === null
      ? await index.addHTMLFile({ url: `/${path}`, content: html })
      : await index.addCustomRecord({
          url: `/${path}`,
          language: 'en',
          meta: { title: find(html, /<h1>([^<]*)<\/h1>/) },
          content: `${find(html, /<meta name="description" content="([^"]*)"/)} ${aliases(pair[1] ?? '', pair[2] ?? '')}`,
        });
  if (errors.length > 0) throw new Error(`${file}: ${errors.join('; ')}`);
  return true;
};

const { index, errors } = await createIndex({
  // Without the point, 4.7 would be found as 47.
  includeCharacters: '.',
  verbose: false,
});
if (index === undefined) throw new Error(errors.join('; '));

const files = globSync('**/index.html', { cwd: SITE }).toSorted();
let count = 0;
for (const file of files) {
  if (await addPage(index, file)) count += 1;
}
const written = await index.writeFiles({ outputPath: join(SITE, 'pagefind') });
if (written.errors.length > 0) throw new Error(written.errors.join('; '));
await close();
console.log(`${edition.name} ${edition.version}: ${count} pages indexed`);
