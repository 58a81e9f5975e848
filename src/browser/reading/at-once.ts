import type { Catalogue } from '../../engine/index.ts';
import { answerTo, type Answered } from '../../search/answer.ts';
import { meantText } from '../../search/near-words.ts';
import { habit } from '../kept/habits.ts';
import { colourAnswerFor } from './colours-asked.ts';

export { meantText };

/** What the box on the first page answers at once, apart from the page itself for its weight. */
export const answerPieces = async (catalogue: Catalogue, text: string): Promise<Answered> => {
  const colours = await colourAnswerFor(catalogue, text);
  const answered = answerTo(catalogue, text, habit());
  return colours === undefined
    ? answered
    : { ...answered, first: [colours, ...answered.first], sure: true };
};
