import { href } from '../components/links.ts';
import { INDEX, SEARCHER } from '../search/word-index.ts';

/**
 * Where the browser keeps texts from becoming scripts or pages, this is the one policy of the site,
 * and it lets two addresses through: those of the workers that keep pages and that search for words.
 * It makes no HTML and no script of anything. Workers are asked for by a plain text, so that it is the
 * policy that holds for whatever does not name another.
 */

interface PolicyMaker {
  createPolicy: (
    name: string,
    rules: { createScriptURL: (address: string) => string | null },
  ) => unknown;
}

const workers = ['/sw.js', `${INDEX}${SEARCHER}`] as const;

/** An address if it is that of one of the workers of this site. */
const workerAddress = (address: string): string | null => {
  const asked = new URL(address, location.href).href;
  const known = workers.map((path) => new URL(href(path), location.href).href);
  return known.includes(asked) ? asked : null;
};

(globalThis as { trustedTypes?: PolicyMaker }).trustedTypes?.createPolicy('default', {
  createScriptURL: workerAddress,
});
