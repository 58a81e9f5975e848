import { createHash } from 'node:crypto';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type Plugin } from 'vite';
import { loadCatalogue } from '../src/catalogue/index.ts';
import { packRows } from '../src/packed/rows.ts';
import { CATALOGUE_ID } from '../src/one-file/data.ts';
import { HELD_TYPE } from '../src/one-file/held.ts';
import { scriptOf } from '../src/one-file/scripts.ts';
import { edition } from '../src/text/edition.ts';
import { asciiHtml, asciiScript, asciiStyle } from './ascii.ts';
import { SITE } from './site-folder.ts';

/** Makes one file of the built site, to be opened from a stick without a server or a network. */

const NAME = 'understudy-offline.html';
/** Pages that are many are drawn when they are opened (`views.ts`) rather than held. */
const MOST_BYTES = 25_000_000;
const BASE = (process.env['BASE'] ?? '/').replace(/\/$/, '');

/** Pages that are drawn when opened, or make no sense without the site. */
const LEFT_OUT = /^\/([^/]+\/[^/]+\/in|sources\/[^/]+|data|offline)\//;

/** Modules that the file has otherwise than the site. */
const INSTEAD: Readonly<Record<string, string>> = {
  'src/browser/address/address.ts': 'src/one-file/address.ts',
  'src/browser/fetched/packed-file.ts': 'src/one-file/packed-file.ts',
  'src/browser/fetched/site-file.ts': 'src/one-file/site-file.ts',
  'src/browser/sum-loaders.ts': 'src/one-file/sum-loaders.ts',
  'src/browser/fetched/word-search.ts': 'src/one-file/word-search.ts',
  'src/components/links.ts': 'src/one-file/links.ts',
};
const instead = new Map(
  Object.entries(INSTEAD).map(([site, file]) => [resolve(site), resolve(file)]),
);

const otherModules: Plugin = {
  name: 'other modules for one file',
  enforce: 'pre',
  resolveId: (source, importer) =>
    importer === undefined || !source.startsWith('.')
      ? null
      : (instead.get(resolve(dirname(importer), source)) ?? null),
};

/** All scripts as one module. */
const bundle = async (): Promise<string> => {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    plugins: [otherModules],
    build: {
      write: false,
      target: 'es2023',
      modulePreload: false,
      rollupOptions: {
        input: 'src/one-file/start.ts',
        output: { format: 'es', codeSplitting: false },
      },
    },
  });
  const [one] = Array.isArray(built) ? built : [built];
  const chunks = one !== undefined && 'output' in one ? one.output : [];
  const [chunk, ...others] = chunks;
  if (chunk?.type !== 'chunk' || others.length > 0) throw new Error('the scripts are not one');
  return chunk.code;
};

const between = (html: string, start: RegExp, end: string): string => {
  const found = start.exec(html);
  if (found === null) return '';
  const from = found.index;
  return html.slice(from, html.indexOf(end, from) + end.length);
};

/** Without scripts, and with the pages of the site where the file has them: after the `#`. */
const forFile = (html: string): string =>
  html
    .replaceAll(/<script[^>]*>.*?<\/script>/gs, '')
    .replaceAll(/<noscript>.*?<\/noscript>/gs, '')
    .replaceAll(/ (href|action)="(\/[^"]*)"/g, (whole, attribute: string, path: string) =>
      path.startsWith(`${BASE}/`) ? ` ${attribute}="#${path.slice(BASE.length)}"` : whole,
    );

const attribute = (text: string): string => text.replaceAll('"', '&quot;');

interface Page {
  path: string;
  html: string;
}

const pages: Page[] = globSync('**/index.html', { cwd: SITE })
  .map((file) => ({
    path: `/${file
      .split(sep)
      .join('/')
      .replace(/index\.html$/, '')}`,
    html: readFileSync(join(SITE, file), 'utf8'),
  }))
  .filter(({ path, html }) => !LEFT_OUT.test(path) && !html.includes('http-equiv="refresh"'))
  .toSorted((a, b) => (a.path < b.path ? -1 : 1));

/** The page as text, in an element that a browser neither runs nor makes elements of. */
const heldAs = ({ path, html }: Page): string => {
  const main = between(html, /<main /, '</main>').replace(/^<main [^>]*>|<\/main>$/g, '');
  const title = /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? '';
  const name = title.replace(` · ${edition.name}`, '');
  if (main === '') throw new Error(`${path} has no content`);
  if (main.includes('<script') && scriptOf(path) === undefined)
    throw new Error(`${path} has a script that src/one-file/scripts.ts does not name`);
  const crumbs = between(html, /<nav class="crumbs"/, '</nav>');
  const held = forFile(crumbs + main);
  // Either would end the element, or keep it open, wherever it stands.
  if (/<!--|<\/?script/i.test(held)) throw new Error(`${path} holds a comment or a script`);
  return `<script type="${HELD_TYPE}" data-path="${path}" data-title="${attribute(name)}">${held}</script>`;
};

const home = readFileSync(join(SITE, 'index.html'), 'utf8');
const header = forFile(between(home, /<header class="masthead"/, '</header>'));
const footer = forFile(between(home, /<footer class="colophon"/, '</footer>')).replace(
  between(home, /<p [^>]*id="update"/, '</p>'),
  '',
);

const styles = asciiStyle(
  globSync('_astro/*.css', { cwd: SITE })
    .toSorted()
    .map((file) => readFileSync(join(SITE, file), 'utf8'))
    .join('\n'),
);
const theme = asciiScript(readFileSync('src/layouts/theme.js', 'utf8'));
const code = asciiScript(await bundle())
  // A text that ended the element would end it, though it stands in a string.
  .replaceAll('</script', '<\\/script')
  .replaceAll('<!--', '<\\!--');

/** Rows as they stand in their tables are for pages that list them. */
const catalogue = asciiScript(
  JSON.stringify(packRows({ ...loadCatalogue(), figures: [] })),
).replaceAll('<', '\\u003c');

const hashed = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const policy = [
  "default-src 'none'",
  `script-src ${hashed(theme)} ${hashed(code)}`,
  `style-src ${hashed(styles)}`,
  'img-src data:',
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types held',
].join('; ');

const file = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="content-security-policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${edition.name}</title>
<script>${theme}</script>
<style>${styles}</style>
</head>
<body>
<a class="skip" href="#content">Skip to the content</a>
<div class="page">
${asciiHtml(header)}
<main id="content" tabindex="-1"><noscript><h1>${edition.name}</h1><p>This file needs scripts.</p></noscript></main>
${asciiHtml(footer)}
</div>
<script type="application/json" id="${CATALOGUE_ID}">${catalogue}</script>
${asciiHtml(pages.map(heldAs).join('\n'))}
<script type="module">${code}</script>
</body>
</html>
`;
if (/[^\0-\x7f]/.test(file)) throw new Error(`${NAME} is not ASCII alone`);
writeFileSync(join(SITE, NAME), file);

const BYTES_IN_MB = 1e6;
const inMegabytes = (bytes: number): string => `${(bytes / BYTES_IN_MB).toFixed(1)}\u00a0MB`;
const bytes = Buffer.byteLength(file);
if (bytes > MOST_BYTES) throw new Error(`${NAME} is ${bytes} bytes; at most ${MOST_BYTES}`);
const packed = gzipSync(file, { level: 9 }).length;
const page = join(SITE, 'offline', 'index.html');
const said = `${inMegabytes(bytes)}, of which ${inMegabytes(packed)} travel where the host packs what it sends`;
const offline = readFileSync(page, 'utf8');
const SIZE = /(<span id="one-file-size">)[^<]*(<\/span>)/;
if (!SIZE.test(offline)) throw new Error(`${page} has no place for the size of ${NAME}`);
writeFileSync(page, offline.replace(SIZE, `$1${said}$2`));
console.log(`${NAME}: ${pages.length} pages, ${bytes} bytes, ${packed} packed`);
