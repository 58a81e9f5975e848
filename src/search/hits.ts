import { readable } from './full-stops.ts';
import type { Hit } from './word-index.ts';

/** A page as the search library has it. */
export interface FoundPage {
  url: string;
  meta: Record<string, string>;
  plain_excerpt: string;
  /** As HTML, with the words that were found marked. */
  excerpt: string;
}

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

/** An excerpt without the title that it starts with, which stands before it already. */
const withoutTitle = (excerpt: string, title: string): string =>
  excerpt.startsWith(title) ? excerpt.slice(title.length).replace(/^[\s.]+/, '') : excerpt;

/** The pages that hold a word of a text, as they are shown. */
export const hitsOf = (text: string, pages: readonly FoundPage[]): Hit[] =>
  pages
    .filter((page) => holdsWordOf(text, page))
    .map(({ url, meta, plain_excerpt: excerpt }) => {
      const title = readable(meta['title'] ?? url);
      return { url, title, excerpt: withoutTitle(readable(excerpt), title) };
    });
