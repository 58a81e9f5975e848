import { copyFileSync, existsSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Libraries that search in a browser, each set up as its own manual has it, over the same text. */

/** A page as it is searched. */
export interface Document {
  url: string;
  title: string;
  text: string;
}

/** One that is measured: a module for the browser that finds, and what it fetches. */
export interface Peer {
  name: string;
  /** The file of its package that a browser loads, from the project's folder. */
  file: string;
  /** Its `find` gives the title of the first page found. */
  module: string;
  /** Writes the data that the module fetches. */
  prepare: (documents: readonly Document[], write: Write) => Promise<void>;
}

type Write = (name: string, data: unknown) => void;

const PACKAGES = join(import.meta.dirname, '..', '..', 'node_modules');
const MINISEARCH = join(PACKAGES, 'minisearch', 'dist', 'es', 'index.js');
const LUNR = join(PACKAGES, 'lunr', 'lunr.min.js');
const FUSE = join(PACKAGES, 'fuse.js', 'dist', 'fuse.min.mjs');

type MiniSearchClass = new (options: object) => { addAll: (all: readonly Document[]) => void };
interface LunrBuilder {
  ref: (name: string) => void;
  field: (name: string) => void;
  add: (one: Document) => void;
}
type Lunr = (set: (this: LunrBuilder) => void) => object;

const FIELDS = ['title', 'text'];
const MINISEARCH_OPTIONS = { idField: 'url', fields: FIELDS, storeFields: ['title'] };

export const PEERS: readonly Peer[] = [
  {
    name: 'MiniSearch, index made beforehand',
    file: MINISEARCH,
    module: `
import MiniSearch from './library.js';
export const find = async (words) => {
  const index = await (await fetch(new URL('./index.json', import.meta.url))).text();
  const search = MiniSearch.loadJSON(index, ${JSON.stringify(MINISEARCH_OPTIONS)});
  return search.search(words)[0]?.title;
};`,
    prepare: async (documents, write) => {
      const loaded = (await import(pathToFileURL(MINISEARCH).href)) as { default: MiniSearchClass };
      const search = new loaded.default(MINISEARCH_OPTIONS);
      search.addAll(documents);
      write('index.json', search);
    },
  },
  {
    name: 'Lunr, index made beforehand',
    file: LUNR,
    module: `
const script = (url) => new Promise((resolve, reject) => {
  const element = document.createElement('script');
  Object.assign(element, { src: url, onload: resolve, onerror: reject });
  document.head.append(element);
});
export const find = async (words) => {
  const json = async (name) => (await fetch(new URL(name, import.meta.url))).json();
  const [index, titles] = await Promise.all([
    json('./index.json'),
    json('./titles.json'),
    script(new URL('./library.js', import.meta.url)),
  ]);
  const [first] = lunr.Index.load(index).search(words);
  return first && titles[first.ref];
};`,
    prepare: async (documents, write) => {
      const lunr = createRequire(import.meta.url)(LUNR) as Lunr;
      const index = lunr(function () {
        this.ref('url');
        for (const field of FIELDS) this.field(field);
        for (const one of documents) this.add(one);
      });
      write('index.json', index);
      write('titles.json', Object.fromEntries(documents.map(({ url, title }) => [url, title])));
      return Promise.resolve();
    },
  },
  {
    name: 'Fuse.js, over the text itself',
    file: FUSE,
    module: `
import Fuse from './library.js';
export const find = async (words) => {
  const all = await (await fetch(new URL('./documents.json', import.meta.url))).json();
  const fuse = new Fuse(all, { keys: ${JSON.stringify(FIELDS)}, ignoreLocation: true, threshold: 0.3 });
  return fuse.search(words, { limit: 1 })[0]?.item.title;
};`,
    prepare: (documents, write) => {
      write('documents.json', documents);
      return Promise.resolve();
    },
  },
];

/** Whether its package is there: the bench runs without it as well. */
export const isInstalled = ({ file }: Peer): boolean => existsSync(file);

/** Puts what a browser needs of it into a folder. */
export const setUp = async (
  peer: Peer,
  documents: readonly Document[],
  folder: string,
): Promise<void> => {
  copyFileSync(peer.file, join(folder, 'library.js'));
  writeFileSync(join(folder, 'find.js'), peer.module);
  await peer.prepare(documents, (name, data) =>
    writeFileSync(join(folder, name), JSON.stringify(data)),
  );
};
