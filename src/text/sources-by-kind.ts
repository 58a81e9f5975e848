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
