import type { Catalogue, SourceId } from '../engine/catalogue.ts';
import type { SourceRow } from '../schemas/sources.ts';

/** Kinds of source that stand for no document: a row that rests on one says so by its basis already. */
const NO_DOCUMENT: readonly SourceRow['kind'][] = ['trade', 'identity'];

/** Whether sources of a kind are documents. */
export const isDocument = (kind: SourceRow['kind']): boolean => !NO_DOCUMENT.includes(kind);

/** The documents that rows rest on, each once, in the order in which they come up. */
export const citedDocuments = (
  catalogue: Catalogue,
  rows: readonly { source: SourceId }[],
): SourceRow[] =>
  [...new Set(rows.map(({ source }) => source))].flatMap((source) => {
    const row = catalogue.sources[source];
    return row !== undefined && isDocument(row.kind) ? [row] : [];
  });
