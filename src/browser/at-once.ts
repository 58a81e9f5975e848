import type { Catalogue } from '../engine/index.ts';
import { toDom } from '../markup/to-dom.ts';
import { answerMarkup } from '../search/answer.ts';
import { colourAnswerFor } from './colours-asked.ts';
import { habit } from './habits.ts';

/** What the box on the first page answers at once, apart from the page itself for its weight. */
export const answerPieces = async (catalogue: Catalogue, text: string): Promise<Node[]> => {
  const colours = await colourAnswerFor(catalogue, text);
  const pieces = answerMarkup(catalogue, text, habit()).map((piece) => toDom(piece));
  return colours === undefined ? pieces : [colours, ...pieces];
};
