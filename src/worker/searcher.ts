import { askedWords } from '../search/asked-words.ts';
import { hitsOf, type FoundPage } from '../search/hits.ts';
import { FURTHER, type Found, type Hit, type Question, type Reply } from '../search/word-index.ts';

/**
 * Searches the indexes of words in a worker of its own, so that typing does not wait for it. The build
 * puts the search library into one script with this (`scripts/build-search.ts`).
 */

interface Result {
  score: number;
  data: () => Promise<FoundPage>;
}

/** The part of the search library that is used here. */
export interface SearchLibrary {
  options: (options: { basePath: string; baseUrl: string }) => Promise<void>;
  init: () => Promise<void>;
  preload: (text: string) => Promise<void>;
  mergeIndex: (path: string, options: { baseUrl: string; indexWeight: number }) => Promise<void>;
  debouncedSearch: (
    text: string,
    options: object,
    wait: number,
  ) => Promise<{ results: Result[] } | null>;
}

/** Pages that are shown of an index. */
const PAGES = 6;
const WAIT_MS = 150;
/** Pages of the further index come after all others, in their own order. */
const AFTER_OTHERS = 0;

const hitsAmong = async (text: string, results: readonly Result[]): Promise<Hit[]> =>
  hitsOf(text, await Promise.all(results.slice(0, PAGES).map((result) => result.data())));

/** What answers questions from the indexes in a folder of a site. */
const searcher = (library: SearchLibrary, folder: URL) => {
  const baseUrl = new URL('..', folder).pathname;
  let ready: Promise<void> | undefined;
  let merged: Promise<void> | undefined;
  const start = async (): Promise<void> => {
    await library.options({ basePath: folder.pathname, baseUrl });
    await library.init();
  };
  const merge = async (words: string): Promise<void> => {
    // It waits for the first index for ever, even if that could not be fetched; this fails then.
    await library.preload(words);
    const { pathname } = new URL(FURTHER, folder);
    await library.mergeIndex(pathname, { baseUrl, indexWeight: AFTER_OTHERS });
  };
  return async ({ text, further }: Omit<Question, 'id'>): Promise<Found | undefined> => {
    const words = askedWords(text);
    await (ready ??= start());
    if (further) merged ??= merge(words);
    await merged;
    const found = await library.debouncedSearch(words, {}, WAIT_MS);
    if (found === null) return undefined;
    const ofFurther = ({ score }: Result): boolean =>
      merged !== undefined && score === AFTER_OTHERS;
    const [hits, others] = await Promise.all([
      hitsAmong(
        words,
        found.results.filter((result) => !ofFurther(result)),
      ),
      hitsAmong(words, found.results.filter(ofFurther)),
    ]);
    return merged === undefined ? { hits } : { hits, further: others };
  };
};

/** Answers what pages ask of this worker. */
export const serve = (library: SearchLibrary): void => {
  const answer = searcher(library, new URL('.', location.href));
  addEventListener('message', ({ data }: MessageEvent<Question>) => {
    const reply = (rest: Omit<Reply, 'id'>): void => postMessage({ id: data.id, ...rest });
    answer(data).then(
      (found) => reply(found === undefined ? {} : { found }),
      (fault: unknown) => reply({ fault: String(fault) }),
    );
  });
};
