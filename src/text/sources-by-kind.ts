import type { SourceRow } from '../schemas/sources.ts';
import { sourceKindWords } from './words.ts';

/** Sources of one kind, by title. */
interface SourcesOfKind {
  kind: SourceRow['kind'];
  words: string;
  rows: SourceRow[];
}

/** Kinds that have sources, in the order in which the site names them. */
export const sourcesByKind = (sources: readonly SourceRow[]): SourcesOfKind[] => {
  const sorted = sources.toSorted((a, b) => a.title.localeCompare(b.title, 'en'));
  return (Object.keys(sourceKindWords) as SourceRow['kind'][])
    .map((kind) => ({
      kind,
      words: sourceKindWords[kind] ?? kind,
      rows: sorted.filter((row) => row.kind === kind),
    }))
    .filter(({ rows }) => rows.length > 0);
};

/** More of one kind than this stand on a page of their own. */
const MOST_TOGETHER = 150;

/** Whether the sources of a kind are too many for the page of all kinds. */
export const isApart = (rows: readonly SourceRow[]): boolean => rows.length > MOST_TOGETHER;

/** The letter that a title is listed under; `#` for what begins with none. */
export const letterOf = ({ title }: SourceRow): string =>
  /^[a-z]/i.exec(title)?.[0].toUpperCase() ?? '#';

/** Sources of one kind that stand on one page, by the first letter of their titles. */
export interface SourcesPart {
  /** The end of its address: nothing for the first page of a kind, else its first letter. */
  path: string;
  /** Its letters, as in `A to M`. */
  words: string;
  groups: (readonly [letter: string, rows: SourceRow[]])[];
}

/** More than this on one page is slow to fetch. */
const MOST_ON_PAGE = 250;

const nameOf = (letter: string): string => (letter === '#' ? 'others' : letter.toLowerCase());

/**
 * The sources of a kind on as few pages as hold them, each of about as many; a letter stays whole.
 * @param rows by title, so that those of one letter follow each other
 */
export const partsOf = (rows: readonly SourceRow[]): SourcesPart[] => {
  const pages = Math.max(1, Math.ceil(rows.length / MOST_ON_PAGE));
  const parts: SourcesPart['groups'][] = [];
  let before = 0;
  for (const group of Map.groupBy(rows, letterOf)) {
    // A letter goes to the page that most of it would be on if all were filled alike.
    const page = Math.floor(((before + group[1].length / 2) * pages) / rows.length);
    (parts[page] ??= []).push(group);
    before += group[1].length;
  }
  return parts
    .filter((groups) => groups.length > 0)
    .map((groups, at) => {
      const [first = '#'] = groups[0] ?? [];
      const [last = first] = groups.at(-1) ?? [];
      const from = first === '#' ? 'A' : first;
      return { path: at === 0 ? '' : nameOf(first), words: `${from} to ${last}`, groups };
    });
};

/** The anchor of a letter on its page. */
export const anchorOfLetter = (letter: string): string => `from-${nameOf(letter)}`;
