import { shortenDesignators } from '../job/index.ts';
import { h } from '../markup/node.ts';
import type { Element } from '../markup/node.ts';

/** A list of designators in which no line ends within a range such as `R1-R6`. */
export const designatorsMarkup = (list: readonly string[]): Element =>
  h(
    'span',
    { class: 'designators' },
    shortenDesignators(list)
      .split(', ')
      .map((one, at) => [at > 0 && ', ', h('span', {}, one)]),
  );
