import { globSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { loadCatalogue } from '../src/catalogue/index.ts';
import { apart } from '../src/search/full-stops.ts';
import { indexedHtml } from '../src/search/indexed-html.ts';
import { typeRowOf } from '../src/substitution/any-kind.ts';
import { isFurther } from './further-pages.ts';
import { descriptionOf, headingOf } from './page-text.ts';
import { SITE } from './site-folder.ts';

/** What the indexes of words are made from: the built pages, all but those that are not to be found. */

/** A page about what stands in for a part, of whatever kind, in one place. */
const PAIR_PAGE = /^([^/]+)\/([^/]+)\/in\/([^/]+)\/$/;
const OF_DEVICES = 'devices';

const catalogue = loadCatalogue();

/** Other words for the type and the position of a substitution page. */
const pairAliases = (id: string, place: string): string[] => {
  const type = typeRowOf(catalogue, id);
  const position = catalogue.positions[place] ?? catalogue.kindPositions[place];
  return [
    type?.name ?? '',
    ...(type?.also_called ?? []),
    type?.family ?? '',
    position?.name ?? '',
    ...(position?.also_called ?? []),
  ];
};

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
  const [, group, id, place] = PAIR_PAGE.exec(path) ?? [];
  if (id === undefined || place === undefined) return undefined;
  return group === OF_DEVICES ? deviceAliases(id, place) : pairAliases(id, place);
};

/** A page to be found. */
export interface IndexedPage {
  url: string;
  title: string;
  html: string;
  /** What it is found by, where that is not all that stands in it. */
  content?: string;
  /** Whether it is in the further index. */
  further: boolean;
}

/** Pages about where figures come from are found after those that say what to do. */
const ABOUT_DATA = /^((sources|data|changes|evidence)\/|types\/[^/]+\/figures\/$)/;
const weighed = (path: string, html: string): string =>
  ABOUT_DATA.test(path)
    ? html.replace('data-pagefind-body', 'data-pagefind-body data-pagefind-weight="0.2"')
    : html;

/** The page of a built file; nothing where it is not to be found. */
const pageOf = (file: string): IndexedPage | undefined => {
  const html = readFileSync(join(SITE, file), 'utf8');
  if (html.includes('content="noindex"')) return undefined;
  const path = file
    .split(sep)
    .join('/')
    .replace(/index\.html$/, '');
  const aliases = aliasesOf(path);
  return {
    url: `/${path}`,
    title: headingOf(html),
    html: indexedHtml(weighed(path, html)),
    further: isFurther(path),
    ...(aliases === undefined
      ? {}
      : { content: apart(`${descriptionOf(html)} ${aliases.join(', ')}`) }),
  };
};

/** The pages to be found, in the order of their files, one after the other. */
export function* indexedPages(): Generator<IndexedPage> {
  for (const file of globSync('**/index.html', { cwd: SITE }).toSorted()) {
    const page = pageOf(file);
    if (page !== undefined) yield page;
  }
}
