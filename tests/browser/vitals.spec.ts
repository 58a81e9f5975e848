import { htmlOf, kindOf, leadsOn, pagePaths } from './site.ts';
import { expect, test } from './watched.ts';

/**
 * What audits of pages look at besides access and weight: that links say where they lead and can be
 * followed, that the page is sized for the screen, and that a search engine finds what it needs.
 * Times are left to the benchmark, what is seen on a phone to `on-a-phone.spec.ts`.
 */

/** Words of links that say nothing where they stand alone. */
const EMPTY_WORDS = /^(?:here|click here|this|link|more|read more|learn more|go)$/i;

const all = (html: string, pattern: RegExp): string[] =>
  [...html.matchAll(pattern)].map(([, found = '']) => found);

const listed = pagePaths.filter((path) => !leadsOn(htmlOf(path)));

test('every page names its language, its width, its characters and its colours first', () => {
  const wanted: ((html: string) => boolean)[] = [
    (html) => /^<!doctype html>\s*<html lang="en"/i.test(html),
    // A browser looks for these in the first kilobyte.
    (html) => html.slice(0, 1024).includes('charset="utf-8"'),
    (html) => html.includes('name="viewport" content="width=device-width, initial-scale=1"'),
    (html) => !/user-scalable|maximum-scale/.test(html),
  ];
  const pages = listed.map((path) => ({ path, html: htmlOf(path) }));
  for (const isMet of wanted)
    expect(
      pages.filter(({ html }) => !isMet(html)).map(({ path }) => path),
      String(isMet),
    ).toEqual([]);
});

test('links can be followed and say where they lead', () => {
  const faults: string[] = [];
  for (const path of listed) {
    for (const [, attributes = '', inner = ''] of htmlOf(path).matchAll(
      /<a\b([^>]*)>(.*?)<\/a>/gs,
    )) {
      const address = /\shref="([^"]*)"/.exec(attributes)?.[1];
      const words = inner.replaceAll(/<[^>]*>/g, '').trim();
      const name = /aria-label="([^"]+)"/.exec(attributes + inner)?.[1] ?? words;
      if (address === undefined || /^javascript:/i.test(address))
        faults.push(`${path}: ${words}: nowhere`);
      else if (name === '' || EMPTY_WORDS.test(name))
        faults.push(`${path}: “${name}” to ${address}`);
    }
  }
  expect([...new Set(faults.map((fault) => fault.replace(/^[^:]*/, kindOf)))].slice(0, 20)).toEqual(
    [],
  );
});

test('pictures have words and room kept for them', () => {
  const pictures = listed.flatMap((path) =>
    all(htmlOf(path), /<img\b([^>]*)>/g).map((attributes) => `${path}: ${attributes} `),
  );
  for (const wanted of [/\salt="/, /\swidth="\d+"/, /\sheight="\d+"/])
    expect(
      pictures.filter((picture) => !wanted.test(picture)),
      String(wanted),
    ).toEqual([]);
});

test('search engines are shown every listed page and nothing else', async ({ request }) => {
  const robots = await request.get('/robots.txt');
  const map = await request.get('/sitemap.xml');
  expect([robots.status(), map.status()]).toEqual([200, 200]);
  expect(await robots.text()).toContain('/sitemap.xml');
  const named = all(await map.text(), /<loc>([^<]*)<\/loc>/g).map((loc) => new URL(loc).pathname);
  const wanted = pagePaths.filter((path) => !htmlOf(path).includes('content="noindex"'));
  expect(named.toSorted()).toEqual([...wanted].toSorted());
});
