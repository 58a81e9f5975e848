import type { Catalogue, SourceId } from '../engine/catalogue.ts';
import type { SourceRow } from '../schemas/sources.ts';

/** Kinds of source that stand for no document. */
const NO_DOCUMENT: readonly SourceRow['kind'][] = ['trade', 'identity'];

/** The documents that rows rest on, each once, in the order in which they come up. */
export const citedDocuments = (
  catalogue: Catalogue,
  rows: readonly { source: SourceId }[],
): SourceRow[] =>
  [...new Set(rows.map(({ source }) => source))].flatMap((source) => {
    const row = catalogue.sources[source];
    return row === undefined || NO_DOCUMENT.includes(row.kind) ? [] : [row];
  });
