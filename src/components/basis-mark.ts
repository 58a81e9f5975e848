import type { Basis, SourceId } from '../engine/catalogue.ts';
import { h, type Markup } from '../markup/node.ts';
import { basisWords } from '../text/words.ts';
import { href } from './links.ts';

/** What a basis mark says. */
export interface Rests {
  basis: Basis;
  /** Nothing where the link to it stands beside the mark. */
  source?: SourceId | undefined;
  /** Where the figure rests on several sources: the page that lists them. */
  several?: { count: number; path: `/${string}` } | undefined;
}

/** How a figure is known, as a mark that leads to its source. */
export const basisMark = ({ basis, source, several }: Rests): Markup => {
  const { mark, meaning } = basisWords[basis] ?? { mark: basis, meaning: basis };
  const said = (more: string): Markup[] => [
    h('span', { 'aria-hidden': 'true' }, mark, several && ` ×${several.count}`),
    h('span', { class: 'hidden-text' }, meaning + more),
  ];
  if (several !== undefined)
    return h(
      'a',
      { class: 'basis', href: href(several.path) },
      said(`, ${String(several.count)} sources`),
    );
  return source === undefined
    ? h('span', { class: 'basis' }, said(''))
    : h('a', { class: 'basis', href: href(`/sources/${source}/`) }, said(', source'));
};
