import { shortenDesignators } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';

/**
 * Designators as a list in which no line ends within a range such as `R1-R6`.
 * @param unnamed what stands for none
 */
export const designatorsMarkup = (list: readonly string[], unnamed = ''): Element =>
  h(
    'span',
    { class: 'designators' },
    (shortenDesignators(list) || unnamed)
      .split(', ')
      .map((one, at) => [at > 0 && ', ', h('span', {}, one)]),
  );
