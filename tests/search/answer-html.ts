import type { Catalogue } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { answerTo } from '../../src/search/answer.ts';

/** All that the box on the first page says to a text at once, as HTML. */
export const answerHtml = (catalogue: Catalogue, text: string): string => {
  const { first, rest } = answerTo(catalogue, text);
  return [...first, ...rest()].map(toHtml).join('');
};
