/**
 * What pages are found by their words: one index for what people mostly look for, which is all that a
 * first search fetches, and one of everything else. `scripts/further-pages.ts` says which page is in which.
 */

/** Where both are, below the base. */
export const INDEX = '/pagefind/';
/** Where the further one is, below the first. */
export const FURTHER = 'further/';
/** The script of the worker that searches them, below the first. */
export const SEARCHER = 'searcher.js';

/** One page that the word search found. */
export interface Hit {
  url: string;
  title: string;
  /** Words round the match. */
  excerpt: string;
}

/** Pages that were found, best first. */
export interface Found {
  hits: Hit[];
  /** Those of the further index; nothing where it was not searched. */
  further?: Hit[];
}

/** What a page asks of the worker. */
export interface Question {
  id: number;
  text: string;
  /** Whether the further index is to be searched too; once it was, it always is. */
  further: boolean;
}

/** What the worker says to a question: neither of both where newer typing has overtaken it. */
export interface Reply {
  id: number;
  found?: Found;
  fault?: string;
}
