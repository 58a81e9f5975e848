import { defineConfig } from 'astro/config';
import { SITE } from './scripts/site-folder.ts';
import { pathsTogether } from './src/building/paths-together.ts';
import { tablesWatched } from './src/building/tables-watched.ts';

/**
 * Small modules that go together into one file, where two dozen of a few bytes each would be fetched:
 * those that nearly every page with a script needs, and those of its words.
 */
const TOGETHER = {
  everywhere: [
    'browser/address/address',
    'browser/address/address-bar',
    'browser/page/busy',
    'browser/page/by-id',
    'browser/page/copy-link',
    'browser/fetched/fetched-once',
    'browser/page/field-of',
    'browser/page/note',
    'browser/kept/habits',
    'browser/kept/kept-text',
    'browser/kept/recent',
    'browser/fetched/site-file',
    'browser/trusted',
    'browser/page/turns',
    'components/link',
    'components/links',
    'markup/node',
    'markup/to-dom',
    'search/word-index',
  ],
  catalogue: ['browser/fetched/catalogue-part', 'browser/fetched/packed-file', 'packed/rows'],
  words: [
    'engine/known-range',
    'engine/quantities/decimal',
    'engine/quantities/range',
    'engine/quantities/si',
    'engine/quantities/within',
    'text/mid-sentence',
    'text/numbers',
    'text/words',
  ],
};
const groups = Object.entries(TOGETHER).map(([name, paths]) => ({
  name,
  test: new RegExp(
    `/src/(?:${paths.join('|')})\\.ts$${name === 'everywhere' ? '|vite/preload-helper' : ''}`,
  ),
}));

export default defineConfig({
  site: process.env.SITE ?? 'https://understudy.example',
  base: process.env.BASE ?? '/',
  outDir: SITE,
  output: 'static',
  integrations: [pathsTogether, tablesWatched],
  trailingSlash: 'always',
  // 'jsx', the default, would set "4.7 µF" as "4.7µF" wherever the source breaks the line between them.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  build: {
    format: 'directory',
    concurrency: 16,
    // One cached file: small enough to load at once, too large to repeat in thousands of pages.
    inlineStylesheets: 'never',
  },
  // Highlighted code would need styles that the policy of pages forbids.
  markdown: { syntaxHighlight: false },
  vite: {
    environments: {
      client: {
        build: { rolldownOptions: { output: { codeSplitting: { groups } } } },
      },
    },
  },
});
