import { allKindPairings, allPairings, isMetIn, type Catalogue } from '../engine/index.ts';
import { askedWords } from '../search/asked-words.ts';
import type { Found } from '../search/word-index.ts';
import { kindPath } from '../substitution/kind-path.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { partInPosition } from '../text/part-in-position.ts';
import { wholeCatalogue } from './data.ts';
import { heldPages } from './held.ts';
import { href } from './links.ts';

/** In the one file, what `browser/word-search.ts` is on the site: words are looked for page by page. */

interface Entry {
  path: `/${string}`;
  title: string;
  /** All that the page says, or other words for it. */
  text: string;
}

const MOST = 6;
const AROUND = 60;

const NAMED: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', amp: '&' };

/** What a page says; what stands in two cells of a table are two words. */
const textOf = (html: string): string =>
  html
    .replaceAll(/<nav\b.*?<\/nav>|<[^>]*>/gs, ' ')
    .replaceAll(/&(?:#(\d+)|(lt|gt|quot|amp));/g, (_, code: string | undefined, name: string) =>
      code === undefined ? (NAMED[name] ?? '') : String.fromCodePoint(Number(code)),
    )
    .replaceAll(/\s+/g, ' ');

const held = (): Entry[] =>
  heldPages().map(({ path, title, html }) => ({ path, title, text: textOf(html) }));

const pairs = (catalogue: Catalogue): Entry[] =>
  allPairings(catalogue).flatMap(({ type, position, pairing }) => {
    const {
      name = '',
      short_name = '',
      also_called = [],
      family = '',
    } = catalogue.types[type] ?? {};
    const where = catalogue.positions[position];
    return pairing.met && where !== undefined
      ? {
          path: `/replace/${type}/in/${position}/` as const,
          title: partInPosition(name, where.name),
          text: [short_name, ...also_called, family, ...where.also_called].join(', '),
        }
      : [];
  });

const kindPairs = (catalogue: Catalogue): Entry[] =>
  allKindPairings(catalogue).flatMap(({ type, position, pairing }) => {
    const kind = catalogue.kinds[type.kind];
    return pairing.met && kind !== undefined
      ? {
          path: kindPath(kind, type.id, position.id),
          title: partInPosition(type.name, position.name),
          text: [type.short_name, ...type.also_called, type.family, ...position.also_called].join(
            ', ',
          ),
        }
      : [];
  });

const devices = ({ devices: { devices: all, uses } }: Catalogue): Entry[] =>
  all.flatMap((device) =>
    uses
      .filter((use) => isMetIn(device, use))
      .map((use) => ({
        path: `/devices/${device.id}/in/${use.id}/` as const,
        title: `${device.name} as ${midSentence(use.name)}`,
        text: '',
      })),
  );

/** A page with its words in small letters. */
interface LowEntry extends Entry {
  low: string;
  lowTitle: string;
}

const everyEntry = (): LowEntry[] => {
  const catalogue = wholeCatalogue();
  return [...held(), ...pairs(catalogue), ...kindPairs(catalogue), ...devices(catalogue)].map(
    (entry) => ({ ...entry, low: entry.text.toLowerCase(), lowTitle: entry.title.toLowerCase() }),
  );
};

let entries: LowEntry[] | undefined;

/** The words that a text asks for, in small letters; what is in quotation marks counts as one. */
const wordsOf = (text: string): string[] =>
  [
    ...askedWords(text)
      .toLowerCase()
      .matchAll(/"([^"]*)"?|[^\s"]+/g),
  ]
    .map(([word, phrase]) => (phrase ?? word).trim())
    .filter(Boolean);

/** Words round the first place where a word stands. */
const excerptOf = ({ text, low }: { text: string; low: string }, word: string): string => {
  const at = low.indexOf(word);
  if (at < 0) return '';
  const from = Math.max(0, low.lastIndexOf(' ', Math.max(0, at - AROUND)) + 1);
  const to = text.indexOf(' ', at + word.length + AROUND);
  return text.slice(from, to < 0 ? undefined : to);
};

/** Pages that hold all words of a text: first those with most in their titles, then most often. */
export const searchWords = (text: string): Promise<Found> => {
  const words = wordsOf(text);
  entries ??= everyEntry();
  const found = entries.flatMap((entry) => {
    const inTitle = words.filter((word) => entry.lowTitle.includes(word)).length;
    const times = entry.low.split(words[0] ?? '').length;
    const isThere = words.every(
      (word) => entry.lowTitle.includes(word) || entry.low.includes(word),
    );
    return isThere && words.length > 0 ? [{ entry, inTitle, times }] : [];
  });
  const best = found.toSorted((a, b) => b.inTitle - a.inTitle || b.times - a.times).slice(0, MOST);
  const hits = best.map(({ entry }) => ({
    url: href(entry.path),
    title: entry.title,
    excerpt: excerptOf(entry, words[0] ?? ''),
  }));
  // All pages are among those that were looked through.
  return Promise.resolve({ hits, further: [] });
};
