import type { Catalogue } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import { toDom } from '../markup/to-dom.ts';
import { answerTo } from '../search/answer.ts';
import { colourAnswerFor } from './colours-asked.ts';
import { habit } from './habits.ts';

const nodesOf = (pieces: readonly Markup[]): Node[] => pieces.map((piece) => toDom(piece));

/** What the box on the first page answers, in two turns. */
export interface AnswerPieces {
  first: Node[];
  rest: () => Node[];
}

/** What the box on the first page answers at once, apart from the page itself for its weight. */
export const answerPieces = async (catalogue: Catalogue, text: string): Promise<AnswerPieces> => {
  const colours = await colourAnswerFor(catalogue, text);
  const { first, rest } = answerTo(catalogue, text, habit());
  const pieces = nodesOf(first);
  return {
    first: colours === undefined ? pieces : [colours, ...pieces],
    rest: () => nodesOf(rest()),
  };
};
