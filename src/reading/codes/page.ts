import { h, type Markup } from '../../markup/node.ts';
import { href } from '../../components/links.ts';

/** What the page of a code says. */
export interface CodePage {
  /** Heading, and title for search engines where nothing else is said. */
  title: string;
  /** Title for search engines, with the marks that people look for. */
  sought?: string;
  /** One sentence that answers what the code is. */
  answer: string;
  /** Sentences behind the answer. */
  more: string[];
  sections: { id: string; title: string; content: Markup[] }[];
}

/** A marking, in the face that markings are set in. */
export const mark = (text: string): Markup => h('code', {}, text);

/** A table with its heads; cells are pieces or texts, the first of each row a head. */
export const table = (
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly (Markup | readonly Markup[])[])[],
): Markup =>
  h(
    'div',
    { class: 'table-scroll', role: 'region', 'aria-label': `Table: ${caption}`, tabindex: '0' },
    h(
      'table',
      {},
      h('caption', { class: 'hidden-text' }, caption),
      h('thead', {}, h('tr', {}, ...heads.map((head) => h('th', { scope: 'col' }, head)))),
      h(
        'tbody',
        {},
        ...rows.map(([first, ...rest]) =>
          h('tr', {}, h('th', { scope: 'row' }, first), ...rest.map((cell) => h('td', {}, cell))),
        ),
      ),
    ),
  );

/** Pieces parted by commas. */
export const parted = (pieces: readonly Markup[]): Markup[] =>
  pieces.flatMap((piece, index) => (index === 0 ? [piece] : [', ', piece]));

/** A basis mark's link to the source of a figure. */
export const sourceLink = (source: string): Markup =>
  h('a', { class: 'basis', href: href(`/sources/${source}/`) }, 'source');
