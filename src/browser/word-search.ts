import { href } from '../components/links.ts';
import { isHere } from './address.ts';
import './trusted.ts';

/** One page that the word search found. */
export interface Hit {
  url: string;
  title: string;
  /** Words round the match. */
  excerpt: string;
}

/** The part of the search library that is used here. */
interface SearchLibrary {
  options: (options: { baseUrl: string }) => Promise<void>;
  init: () => Promise<void>;
  debouncedSearch: (
    text: string,
    options?: object,
    wait?: number,
  ) => Promise<{ results: { data: () => Promise<FoundPage> }[] } | null>;
}

interface FoundPage {
  url: string;
  meta: Record<string, string>;
  plain_excerpt: string;
  /** As HTML, with the words that were found marked. */
  excerpt: string;
}

const PAGES = 6;
const WAIT_MS = 150;

let library: Promise<SearchLibrary> | undefined;

const loadLibrary = async (): Promise<SearchLibrary> => {
  // The library is written into the site after the build, so its address is not known to it.
  const address = new URL(href('/pagefind/pagefind.js'), location.href).href;
  const loaded = (await import(/* @vite-ignore */ address)) as SearchLibrary;
  await loaded.options({ baseUrl: href('/') });
  await loaded.init();
  return loaded;
};

/** An excerpt without the title that it starts with, which stands before it already. */
const withoutTitle = (excerpt: string, title: string): string =>
  excerpt.startsWith(title) ? excerpt.slice(title.length).replace(/^[\s.]+/, '') : excerpt;

/** Letters at the start of a word that must be found before a page counts as holding it. */
const STEM = 3;

/** Whether a page was found by a word itself, not by a few letters that it begins with. */
const holdsWordOf = (text: string, { excerpt }: FoundPage): boolean => {
  const marked = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/g)].map(([, word = '']) =>
    word.toLowerCase().replace(/^[^\p{L}\p{N}]+/u, ''),
  );
  const asked = text.toLowerCase().split(/[^\p{L}\p{N}]+/u);
  return asked.some(
    (word) => word !== '' && marked.some((one) => one.startsWith(word.slice(0, STEM))),
  );
};

/**
 * Pages that hold the words of a text, best first; nothing where newer typing has overtaken it.
 * @throws where the index cannot be fetched
 */
export const searchWords = async (text: string): Promise<Hit[] | undefined> => {
  library ??= loadLibrary();
  // A failure, such as no network, is not kept: the next text tries again.
  library.catch(() => (library = undefined));
  const found = await (await library).debouncedSearch(text, {}, WAIT_MS);
  if (found === null) return undefined;
  const pages = await Promise.all(found.results.slice(0, PAGES + 1).map((result) => result.data()));
  return pages
    .filter((page) => holdsWordOf(text, page))
    .map(({ url, meta, plain_excerpt: excerpt }) => {
      const title = meta['title'] ?? url;
      return { url, title, excerpt: withoutTitle(excerpt, title) };
    })
    .filter(({ url }) => !isHere(url))
    .slice(0, PAGES);
};
