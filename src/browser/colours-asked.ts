import { coloursAlone } from '../reading/colours/typed.ts';
import { toDom } from '../markup/to-dom.ts';
import type { Catalogue } from '../engine/index.ts';
import { cataloguePart } from './catalogue-part.ts';
import { habit } from './habits.ts';

/**
 * What a text of colours alone says, as an element; nothing for any other text. What reads colours
 * is fetched only then.
 */
export const colourAnswerFor = async (
  { markings }: Catalogue,
  text: string,
): Promise<Node | undefined> => {
  const colours = coloursAlone(markings.colours, text);
  if (colours === undefined) return undefined;
  const [{ colourAnswer }, catalogue] = await Promise.all([
    import('../search/colour-answer.ts'),
    cataloguePart('colours'),
  ]);
  const answer = colourAnswer(catalogue, colours, habit());
  return answer === undefined ? undefined : toDom(answer);
};
