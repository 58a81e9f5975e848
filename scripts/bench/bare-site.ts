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

const CONFIG = `export default { output: 'static', compressHTML: true };\n`;

/** Writes the bare site into an empty folder. @param sizes of its pages, bytes */
export const writeBareSite = (folder: string, sizes: readonly number[]): void => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'src', 'pages'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
  writeFileSync(join(folder, 'astro.config.mjs'), CONFIG);
  writeFileSync(join(folder, 'src', 'sizes.json'), JSON.stringify(sizes));
  writeFileSync(join(folder, 'src', 'pages', '[page].astro'), PAGE);
};
