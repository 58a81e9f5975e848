import { globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { createIndex, close, type PagefindIndex } from 'pagefind';
import { loadCatalogue } from '../src/catalogue/index.ts';
import { edition } from '../src/text/edition.ts';
import { descriptionOf, headingOf } from './page-text.ts';
import { SITE } from './site-folder.ts';

/** Indexes the words of the built pages, so that the site can be searched without a server. */

const PAIR_PAGE = /^replace\/([^/]+)\/in\/([^/]+)\/$/;
const DEVICE_PAGE = /^devices\/([^/]+)\/in\/([^/]+)\/$/;

const catalogue = loadCatalogue();

/** Other words for the type and the position of a substitution page. */
const pairAliases = (type: string, position: string): string[] => [
  catalogue.types[type]?.name ?? '',
  catalogue.types[type]?.family ?? '',
  catalogue.positions[position]?.name ?? '',
  ...(catalogue.positions[position]?.also_called ?? []),
];

/** Other words for the device and the use of a page where devices stand in. */
const deviceAliases = (id: string, place: string): string[] => {
  const device = catalogue.devices.devices.find((row) => row.id === id);
  const use = catalogue.devices.uses.find((row) => row.id === place);
  return [
    device?.name ?? '',
    ...(device?.also ?? []),
    use?.name ?? '',
    ...(use?.also_called ?? []),
  ];
};

/** What is looked for on a page that is all numbers, beside its title and its answer. */
const aliasesOf = (path: string): string[] | undefined => {
  const [, type, position] = PAIR_PAGE.exec(path) ?? [];
  if (type !== undefined && position !== undefined) return pairAliases(type, position);
  const [, device, use] = DEVICE_PAGE.exec(path) ?? [];
  return device !== undefined && use !== undefined ? deviceAliases(device, use) : undefined;
};

const addPage = async (index: PagefindIndex, file: string): Promise<boolean> => {
  const html = readFileSync(join(SITE, file), 'utf8');
  if (html.includes('content="noindex"')) return false;
  const path = file
    .split(sep)
    .join('/')
    .replace(/index\.html$/, '');
  const aliases = aliasesOf(path);
  const { errors } =
    aliases === undefined
      ? await index.addHTMLFile({ url: `/${path}`, content: html })
      : await index.addCustomRecord({
          url: `/${path}`,
          language: 'en',
          meta: { title: headingOf(html) },
          content: `${descriptionOf(html)} ${aliases.join(', ')}`,
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
// Pages are sent on without waiting for word of each; they are taken in the order in which they come.
const added = await Promise.all(files.map((file) => addPage(index, file)));
const count = added.filter(Boolean).length;
const written = await index.writeFiles({ outputPath: join(SITE, 'pagefind') });
if (written.errors.length > 0) throw new Error(written.errors.join('; '));
await close();
console.log(`${edition.name} ${edition.version}: ${count} pages indexed`);
