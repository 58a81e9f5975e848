import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The least that Astro can be asked for: as many pages of the same sizes as another site has, of one
 * route, with nothing in them but filler. It is what the build of a site of ours is compared with.
 */

const PAGE = `---
import sizes from '../sizes.json';

export const getStaticPaths = () =>
  sizes.map((size, at) => ({ params: { page: String(at) }, props: { size } }));

const WORDS = '<p>What stands here is of no account; only that it is as long as a page.</p>';
const { size } = Astro.props;
const filler = WORDS.repeat(Math.ceil(size / WORDS.length)).slice(0, size);
---

<html lang="en">
  <head><title>{Astro.params.page}</title></head>
  <body><Fragment set:html={filler} /></body>
</html>
`;

/** Files that stand beside pages, of one route as well. */
const FILE = `import sizes from '../files.json';

export const getStaticPaths = () =>
  sizes.map((size, at) => ({ params: { file: String(at) }, props: { size } }));

export const GET = ({ props: { size } }) => new Response('"' + 'x'.repeat(size - 2) + '"');
`;

const CONFIG = `export default ${JSON.stringify({ output: 'static', compressHTML: true })};\n`;

/** What a bare site has. */
export interface Bare {
  /** Sizes of its pages, bytes. */
  pages: readonly number[];
  /** Sizes of the files beside them, bytes. */
  files: readonly number[];
}

/** Writes the bare site into an empty folder. */
export const writeBareSite = (folder: string, { pages, files }: Bare): void => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'src', 'pages'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
  writeFileSync(join(folder, 'astro.config.mjs'), CONFIG);
  writeFileSync(join(folder, 'src', 'sizes.json'), JSON.stringify(pages));
  writeFileSync(join(folder, 'src', 'pages', '[page].astro'), PAGE);
  if (files.length === 0) return;
  writeFileSync(join(folder, 'src', 'files.json'), JSON.stringify(files));
  writeFileSync(join(folder, 'src', 'pages', '[file].json.js'), FILE);
};
