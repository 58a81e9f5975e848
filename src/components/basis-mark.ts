import type { Basis, SourceId } from '../engine/catalogue.ts';
import { h, type Markup } from '../markup/node.ts';
import { basisWords } from '../text/words.ts';
import { href } from './links.ts';

/** What a basis mark says. */
export interface Rests {
  basis: Basis;
  source: SourceId;
  /** Where the figure rests on several sources: the page that lists them. */
  several?: { count: number; path: `/${string}` } | undefined;
}

/** How a figure is known, as a mark that leads to its source. */
export const basisMark = ({ basis, source, several }: Rests): Markup => {
  const { mark, meaning } = basisWords[basis] ?? { mark: basis, meaning: basis };
  return h(
    'a',
    { class: 'basis', href: href(several?.path ?? `/sources/${source}/`) },
    h('span', { 'aria-hidden': 'true' }, mark, several && ` ×${several.count}`),
    h(
      'span',
      { class: 'hidden-text' },
      `${meaning}, ${several ? `${several.count} sources` : 'source'}`,
    ),
  );
};
