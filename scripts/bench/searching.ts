import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from '@playwright/test';
import { findBrowser } from '../browser.ts';
import type { IndexedPage } from '../indexed-pages.ts';
import { readable } from '../../src/search/full-stops.ts';
import { INDEX, SEARCHER } from '../../src/search/word-index.ts';
import { SITE } from '../site-folder.ts';
import { MEASURED, MOST_BYTES } from '../weight/first-search.ts';
import { median, show, type Row } from './measuring.ts';
import { servePacked, type PackedSite } from './packed-site.ts';
import { isInstalled, PEERS, setUp, type Document } from './search-peers.ts';
import { PHONE, throttledPage } from './throttled.ts';

/** The first search of a visit on a slow phone: the first index of the site, by all that it shows at first, beside the first title that other libraries find in the text of the same pages. */

const THOUSAND = 1000;
const RUNS_EACH = 3;

const OWN_FOLDER = 'own';
/** As a page asks: until all that is shown at first is there. */
const OURS = `
export const find = (text) => new Promise((resolve, reject) => {
  const worker = new Worker('${INDEX}${SEARCHER}', { type: 'module' });
  worker.onerror = () => reject(new Error('no worker'));
  worker.onmessage = ({ data: { found, fault } }) =>
    fault === undefined ? resolve(found?.hits[0]?.title) : reject(new Error(fault));
  worker.postMessage({ id: 1, text, further: false });
});`;

const ENTITIES: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>' };

/** The words of a page as the index of the site has them. */
const documentOf = ({ url, title, html, content }: IndexedPage): Document => {
  const main = /<main [\s\S]*<\/main>/.exec(html)?.[0] ?? '';
  const text = main
    .replaceAll(/<script[\s\S]*?<\/script>/g, ' ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/&(amp|lt|gt);/g, (entity) => ENTITIES[entity] ?? ' ');
  return {
    url,
    title,
    text: readable(content ?? text)
      .replaceAll(/\s+/g, ' ')
      .trim(),
  };
};

interface Found {
  milliseconds: number;
  bytes: number;
  title: string | undefined;
}

/** One search in a browser that has fetched nothing yet but an empty page. */
const search = async (
  browser: Browser,
  { origin, sent }: PackedSite,
  name: string,
  words: string,
): Promise<Found> => {
  const address = `${origin}/${name}/`;
  const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
  try {
    const page = await throttledPage(context);
    await page.goto(new URL('empty.html', address).href, { waitUntil: 'load' });
    const before = sent();
    const found = await page.evaluate(
      async ({ module, text }) => {
        const start = performance.now();
        const { find } = (await import(module)) as {
          find: (words: string) => Promise<string | undefined>;
        };
        const title = await find(text);
        return { milliseconds: performance.now() - start, title };
      },
      { module: new URL('find.js', address).href, text: words },
    );
    return { ...found, bytes: sent() - before };
  } finally {
    await context.close();
  }
};

const rowsOf = async (
  browser: Browser,
  site: PackedSite,
  folder: string,
  name: string,
): Promise<Row[]> => {
  const found: Found[] = [];
  for (const words of MEASURED)
    for (let run = 0; run < RUNS_EACH; run += 1)
      found.push(await search(browser, site, folder, words));
  const isAll = found.every(({ title }) => title !== undefined);
  const bytes = Math.max(...found.map((one) => one.bytes));
  const ours = folder === OWN_FOLDER;
  return [
    [
      `first result of ${name}`,
      show(median(found.map(({ milliseconds }) => milliseconds))),
      'ms',
      isAll ? '' : 'nothing found for some words',
    ],
    [
      `fetched for it by ${name}`,
      show(bytes / THOUSAND),
      'kB',
      ours ? `at most ${show(MOST_BYTES / THOUSAND)}` : '',
    ],
  ];
};

const measure = async (executablePath: string, folder: string): Promise<Row[]> => {
  // It reads the catalogue as soon as it is there, which is timed before.
  const { indexedPages } = await import('../indexed-pages.ts');
  const pages = [...indexedPages()];
  const first = pages.filter((page) => !page.further);
  const documents = first.map(documentOf);
  const rows: Row[] = [
    ['pages to be found at first', String(first.length), '', `${pages.length} in all`],
  ];
  const folderOf = (name: string): string => {
    const own = join(folder, name);
    mkdirSync(own);
    writeFileSync(join(own, 'empty.html'), '<!doctype html><title>empty</title>');
    return own;
  };
  cpSync(join(SITE, INDEX), join(folder, INDEX), { recursive: true });
  writeFileSync(join(folderOf(OWN_FOLDER), 'find.js'), OURS);
  const site = await servePacked(folder);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    rows.push(...(await rowsOf(browser, site, OWN_FOLDER, 'this site')));
    for (const [at, peer] of PEERS.entries()) {
      if (!isInstalled(peer)) {
        rows.push([peer.name, 'not installed', '']);
        continue;
      }
      await setUp(peer, documents, folderOf(String(at)));
      rows.push(...(await rowsOf(browser, site, String(at), peer.name)));
    }
    return rows;
  } finally {
    await browser.close();
    await site.stop();
  }
};

/** Rows of the table, of the built site; a row that says so where there is none or no browser. */
export const searching = async (): Promise<Row[]> => {
  const executablePath = findBrowser();
  if (!existsSync(join(SITE, INDEX)) || executablePath === undefined)
    return [['searching', 'not measured', '', 'needs a built site and Chromium']];
  const folder = mkdtempSync(join(tmpdir(), 'understudy-search-'));
  try {
    return await measure(executablePath, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
