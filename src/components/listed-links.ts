import { type Markup } from '../markup/node.ts';
import { toHtml } from '../markup/to-html.ts';
import { link } from './link.ts';

/** A word with the page that it leads to, if it leads to one. */
export interface LinkedWord {
  word: string;
  path?: `/${string}` | undefined;
}

/**
 * Words and links with commas between them, as HTML: a template would set a space before each comma,
 * for it may break its lines there.
 */
export const listedLinks = (words: readonly LinkedWord[]): string =>
  words
    .map(({ word, path }): Markup => (path === undefined ? word : link(path, word)))
    .map(toHtml)
    .join(', ');
