import { h, type Markup } from '../markup/node.ts';

/** Links in a row, to be pressed with a finger. */
export const chips = (links: readonly Markup[]): Markup =>
  h('ul', { class: 'chips' }, ...links.map((one) => h('li', {}, one)));
