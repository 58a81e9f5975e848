import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/**
 * The site works under a sub-path as long as every address in it is made by `href()`, which puts the
 * base before it: no page, piece, script or style names a path from the root by itself.
 */

const files = [...globSync('src/**/*.{astro,ts,css}'), ...globSync('public/*.{js,svg}')];

/** Ways to name a path from the root of the host. */
const ROOTED = [
  /\b(?:href|src|action|poster|srcset)=(?:"|\{[`'"])\/(?!\/)/,
  /\b(?:href|src|action): [`'"]\/(?!\/)/,
  /\b(?:fetch|import|open|assign|register|URL)\([`'"]\/(?!\/)/,
  /url\(["']?\/(?!\/)/,
  /location\.(?:href|pathname) = [`'"]\//,
];

test.each([
  '<a href="/read/">',
  '<a href={`/types/${id}/`}>',
  "h('a', { href: '/read/' })",
  "fetch('/catalogue/job.json')",
  'background: url(/paper.png)',
])('%s would be found', (line) => {
  expect(ROOTED.some((pattern) => pattern.test(line))).toBe(true);
});

test('no source names a path from the root', () => {
  expect(files.length).toBeGreaterThan(200);
  const found = files.flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .flatMap((line, index) =>
        ROOTED.some((pattern) => pattern.test(line))
          ? [`${file}:${index + 1}: ${line.trim()}`]
          : [],
      ),
  );
  expect(found).toEqual([]);
});
