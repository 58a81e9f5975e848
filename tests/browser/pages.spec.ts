import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { htmlOf, leadsOn, pagePaths, SITE } from './site.ts';

/** The built pages as a whole, read as files: no browser is needed. */

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#39': "'",
};
const plain = (text: string): string =>
  text.replaceAll(/&(amp|lt|gt|quot|#39);/g, (whole, name: string) => ENTITIES[name] ?? whole);

const all = (html: string, pattern: RegExp): string[] =>
  [...html.matchAll(pattern)].map((match) => plain(match[1] ?? ''));
const one = (html: string, pattern: RegExp): string => all(html, pattern)[0] ?? '';

const TITLE = /<title>([^<]*)<\/title>/g;
const DESCRIPTION = /<meta name="description" content="([^"]*)"/g;
const OG_DESCRIPTION = /<meta property="og:description" content="([^"]*)"/g;
const CANONICAL = /<link rel="canonical" href="([^"]*)"/g;
const HREF = /(?:href|src)="([^"]*)"/g;
const ID = /\sid="([^"]+)"/g;

const pages = new Map(pagePaths.map((path) => [path, htmlOf(path)]));
const listed = [...pages].filter(([, html]) => !html.includes('content="noindex"'));
const substitutions = listed.filter(([path]) => /^\/replace\/[^/]+\/in\//.test(path));
const idsOf = new Map([...pages].map(([path, html]) => [path, new Set(all(html, ID))]));

test('there are pages of every part', () => {
  expect(substitutions.length).toBeGreaterThan(500);
  for (const part of ['read', 'replace', 'types', 'positions', 'sources', 'cautions', 'data'])
    expect.soft(pagePaths).toContain(`/${part}/`);
});

test('every link of every page leads somewhere', () => {
  const broken = new Set<string>();
  for (const [path, html] of pages) {
    for (const link of all(html, HREF)) {
      const { origin, pathname, hash } = new URL(link, `http://here${path}`);
      if (origin !== 'http://here') continue;
      const ids = idsOf.get(pathname);
      if (ids === undefined && !existsSync(join(SITE, pathname))) broken.add(`${path} → ${link}`);
      else if (ids === undefined && pathname.endsWith('/')) broken.add(`${path} → ${link}`);
      else if (hash !== '' && ids !== undefined && !ids.has(decodeURIComponent(hash.slice(1))))
        broken.add(`${path} → ${link}`);
    }
  }
  expect([...broken].slice(0, 20)).toEqual([]);
});

test('no id stands twice in a page', () => {
  const doubled = [...pages].flatMap(([path, html]) => {
    const ids = all(html, ID);
    return ids.length === new Set(ids).size
      ? []
      : [`${path}: ${ids.find((id, at) => ids.indexOf(id) !== at) ?? ''}`];
  });
  expect(doubled.slice(0, 20)).toEqual([]);
});

test('every page has one heading, a description, and a title and address of its own', () => {
  const titles = new Map<string, string>();
  for (const [path, html] of listed) {
    expect.soft(all(html, /<h1[\s>]/g), `headings of ${path}`).toHaveLength(1);
    const description = one(html, DESCRIPTION);
    expect.soft(description.length, `description of ${path}`).toBeGreaterThan(30);
    expect.soft(new URL(one(html, CANONICAL)).pathname).toBe(path);
    const title = one(html, TITLE);
    expect.soft(titles.get(title), `${title} of ${path}`).toBeUndefined();
    titles.set(title, path);
  }
  expect(titles.size).toBe(listed.length);
});

test('the description of a substitution page carries its verdict', () => {
  for (const [path, html] of substitutions) {
    const answer = one(html, /id="answer"[^>]*>([^<]*)</g);
    const said = one(html, OG_DESCRIPTION);
    expect.soft(answer, path).toMatch(/\bfits?\b|stopgap|[Nn]o part|[Nn]othing/);
    expect.soft(answer.startsWith(said.replace(/ …$/, '')), `${path}: ${said}`).toBe(true);
  }
});

test('a pair that is not met leads on to where that is explained', () => {
  const redirects = [...pages].filter(([, html]) => leadsOn(html));
  expect(redirects.length).toBeGreaterThan(100);
  for (const [path, html] of redirects) {
    const target = one(html, /http-equiv="refresh" content="0; url=([^"]*)"/g);
    const { pathname, hash } = new URL(target, `http://here${path}`);
    expect.soft(idsOf.get(pathname)?.has(hash.slice(1)), `${path} → ${target}`).toBe(true);
    expect.soft(html).toContain('content="noindex"');
  }
});

interface PageData {
  type: string;
  position: string;
  standIns: { type: string; verdict: string; ratedVoltage: number }[];
  sources: string[];
}

test('the JSON beside a substitution page says the same', () => {
  for (const [path, html] of substitutions) {
    const file = `${path.slice(0, -1)}.json`;
    const data = JSON.parse(readFileSync(join(SITE, file), 'utf8')) as PageData;
    expect.soft(`/replace/${data.type}/in/${data.position}/`).toBe(path);
    const order = data.standIns.filter(({ verdict }) => verdict !== 'keep-out');
    const shown = [
      ...(/<ol class="stand-ins">.*?<\/ol>/s.exec(html)?.[0] ?? '').matchAll(
        /<li id="([^"]+)"><h3><span class="verdict verdict-([^"]+)"/g,
      ),
    ].map(([, type, verdict]) => ({ type, verdict }));
    expect
      .soft(
        order.map(({ type, verdict }) => ({ type, verdict })),
        path,
      )
      .toEqual(shown);
  }
});

test('the tables to download are those that the site is made from', () => {
  const files = globSync('**/*.csv', { cwd: 'data' });
  expect(files.length).toBeGreaterThan(20);
  for (const file of files) {
    const built = join(SITE, 'data', file);
    expect.soft(existsSync(built), built).toBe(true);
    if (existsSync(built))
      expect.soft(readFileSync(built, 'utf8'), file).toBe(readFileSync(join('data', file), 'utf8'));
  }
});
