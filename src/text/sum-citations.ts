import type { SourceId } from '../engine/index.ts';
import { allSums } from '../engine/sums/index.ts';

/** A bench sum that rests on a source or is checked against it. */
export interface SumCitation {
  title: string;
  path: `/${string}`;
  /** What of it was checked; nothing where its equation rests on the source. */
  checked: string;
}

const collect = (): Map<SourceId, SumCitation[]> => {
  const all = allSums.flatMap(({ id, title, sources, checks }) =>
    [
      ...sources.map((source) => ({ source, checked: '' })),
      ...checks.map(({ source, what }) => ({ source, checked: what })),
    ].map(({ source, checked }) => ({
      source,
      citation: { title, path: `/sums/${id}/#proof`, checked } satisfies SumCitation,
    })),
  );
  return new Map(
    [...Map.groupBy(all, ({ source }) => source)].map(([source, entries]) => [
      source,
      entries.map(({ citation }) => citation),
    ]),
  );
};

/** Bench sums that cite each source. */
export const sumCitations: ReadonlyMap<SourceId, readonly SumCitation[]> = collect();
