import { h, type Element, type Markup } from '../markup/node.ts';
import { href } from './links.ts';

/** A link within the site. */
export const link = (path: `/${string}`, ...content: Markup[]): Element =>
  h('a', { href: href(path) }, ...content);
