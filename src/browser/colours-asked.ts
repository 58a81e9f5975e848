import { coloursAlone } from '../reading/colours/typed.ts';
import type { Catalogue } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import { cataloguePart } from './catalogue-part.ts';
import { fetchedOnce } from './fetched-once.ts';
import { habit } from './habits.ts';

/** What reads colours, and its data. */
const fetched = fetchedOnce(() =>
  Promise.all([import('../search/colour-answer.ts'), cataloguePart('colours')]),
);

/**
 * What a text of colours alone says; nothing for any other text. What reads colours is fetched only
 * then.
 */
export const colourAnswerFor = async (
  { markings }: Catalogue,
  text: string,
): Promise<Markup | undefined> => {
  const colours = coloursAlone(markings.colours, text);
  if (colours === undefined) return undefined;
  const [{ colourAnswer }, catalogue] = await fetched();
  return colourAnswer(catalogue, colours, habit());
};
