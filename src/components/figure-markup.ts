import { h, type Markup } from '../markup/node.ts';

/** A printed figure, such as `2.5–110 V/µs, typically 17 V/µs`: it may part after a comma alone. */
export const figureMarkup = (text: string): Markup[] =>
  text
    .split(/(?<=,) /)
    .flatMap((part, i) => [...(i === 0 ? [] : [' ']), h('span', { class: 'qty' }, part)]);
