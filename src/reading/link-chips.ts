import { href } from '../components/links.ts';
import { h, type Markup } from '../markup/node.ts';

/** Links to choose from, as chips: a path below the base with its query, and words for each. */
export const linkChips = (links: readonly (readonly [`/${string}`, string])[]): Markup =>
  h(
    'ul',
    { class: 'chips' },
    ...links.map(([path, words]) => h('li', {}, h('a', { href: href(path) }, words))),
  );
