import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What a page of the built site weighs on the way to a browser, in bytes packed by gzip at level 9. */

export interface Weight {
  html: number;
  css: number;
  /** Scripts that are fetched when the page is opened. */
  script: number;
  /** Scripts that are fetched only once something of the page is used, or for a job that was kept. */
  later: number;
  /** Data that are fetched for the first reckoning. */
  data: number;
}

const LEVEL = 9;

const packed = (content: Buffer | string): number => gzipSync(content, { level: LEVEL }).length;

const matches = (text: string, pattern: RegExp): string[] =>
  [...text.matchAll(pattern)].map(([, found = '']) => found);

const STATIC_IMPORT = /(?:\bfrom|\bimport)\s*["'`](\.{1,2}\/[^"'`]+\.js)["'`]/g;
const LAZY_IMPORT = /\bimport\(\s*["'`](\.{1,2}\/[^"'`]+\.js)["'`]/g;
const SCRIPT = /<script[^>]* src="([^"]+\.js)"/g;
const PRELOADED = /<link rel="modulepreload"[^>]* href="([^"]+)"/g;
const STYLES = /<link rel="stylesheet"[^>]* href="([^"]+)"/g;

interface Script {
  bytes: number;
  now: string[];
  lazily: string[];
}

/** Data that a page of some address asks for first, besides what its forms name. */
const DATA: readonly (readonly [RegExp, string])[] = [
  [/^\/$|^\/read\/$|^\/read\/printed\/$/, '/catalogue/reading.json'],
  [/^\/read\/(?:colours|printed)\/$/, '/catalogue/colours.json'],
  [/^\/look\/$/, '/catalogue/look.json'],
  [/^\/job\/$/, '/catalogue/job.json'],
];

/** Addresses of the data that a page reckons with, by its address and its forms. */
const dataOf = (path: string, html: string): string[] => [
  ...DATA.flatMap(([page, file]) => (page.test(path) ? [file] : [])),
  ...matches(html, /<form[^>]* data-position="([^"]+)"/g).map((id) => `/catalogue/${id}.json`),
  ...matches(html, /<form[^>]* data-family="([^"]+)"/g).map(
    (id) => `/catalogue/devices-${id}.json`,
  ),
  ...(/<form[^>]* data-facts/.test(html) ? [`${path}facts.json`] : []),
];

/**
 * Weighs pages of a built site; files are read once.
 * @param site its folder
 * @param base the path that it is served under, with no slash at its end
 */
export const scale = (site: string, base = ''): ((path: string, html: string) => Weight) => {
  const sizes = new Map<string, number>();
  const scripts = new Map<string, Script>();
  const fileOf = (address: string): string => join(site, address.slice(base.length));
  const sizeOf = (address: string): number => {
    const known = sizes.get(address);
    if (known !== undefined) return known;
    const file = fileOf(address);
    // A page that asks for what is not there would be slow in another way.
    if (!existsSync(file)) throw new Error(`${address} is not in ${site}`);
    const bytes = packed(readFileSync(file));
    sizes.set(address, bytes);
    return bytes;
  };
  const scriptAt = (address: string): Script => {
    const known = scripts.get(address);
    if (known !== undefined) return known;
    const code = readFileSync(fileOf(address), 'utf8');
    const beside = (found: string): string => posix.join(dirname(address), found);
    const script = {
      bytes: sizeOf(address),
      now: matches(code, STATIC_IMPORT).map(beside),
      lazily: matches(code, LAZY_IMPORT).map(beside),
    };
    scripts.set(address, script);
    return script;
  };
  const reach = (from: readonly string[], ways: (script: Script) => string[]): Set<string> => {
    const reached = new Set<string>();
    const queue = [...from];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      if (reached.has(next)) continue;
      reached.add(next);
      queue.push(...ways(scriptAt(next)));
    }
    return reached;
  };
  const total = (addresses: Iterable<string>): number =>
    [...addresses].reduce((sum, address) => sum + sizeOf(address), 0);
  return (path, html) => {
    const first = [...matches(html, SCRIPT), ...matches(html, PRELOADED)];
    const atLoad = reach(first, ({ now }) => now);
    const ever = reach(first, ({ now, lazily }) => [...now, ...lazily]);
    return {
      html: packed(html),
      css: total(new Set(matches(html, STYLES))),
      script: total(atLoad),
      later: total([...ever].filter((address) => !atLoad.has(address))),
      data: total(new Set(dataOf(path, html).map((file) => `${base}${file}`))),
    };
  };
};
