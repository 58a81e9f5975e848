import { href } from '../components/links.ts';
import type { Assessment, Catalogue, Habit, SourceId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';

/** What the pieces of a substitution page are drawn from. */
export interface Shown {
  catalogue: Catalogue;
  assessments: readonly Assessment[];
  habit?: Habit | undefined;
}

export const link = (path: `/${string}`, ...children: Markup[]): Markup =>
  h('a', { href: href(path) }, ...children);

export const typeName = (catalogue: Catalogue, { candidate }: Assessment): string =>
  catalogue.types[candidate.type]?.name ?? candidate.type;

/** Stand-ins for a document: a row that rests on one says so by its basis already. */
const NO_DOCUMENT = ['trade', 'identity'];

/** The documents of a page in the order in which it first cites them. */
export const citedSources = ({ catalogue, assessments }: Shown): SourceId[] => {
  const all = assessments.flatMap(({ findings }) => findings.flatMap(({ sources }) => sources));
  return [...new Set(all)].filter(
    (source) => !NO_DOCUMENT.includes(catalogue.sources[source]?.kind ?? ''),
  );
};
