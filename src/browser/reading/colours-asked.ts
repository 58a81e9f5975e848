import type { Catalogue } from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { coloursAsked } from '../../reading/colours/typed.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { fetchedOnce } from '../fetched/fetched-once.ts';
import { habit } from '../kept/habits.ts';

/** What reads colours, and its data. */
const fetched = fetchedOnce(() =>
  Promise.all([import('../../search/colour-answer.ts'), cataloguePart('colours')]),
);

/**
 * What a text that asks about colours says; nothing for any other text. What reads colours is fetched only
 * then, and where it cannot be, that is what is said.
 */
export const colourAnswerFor = async (
  { markings }: Catalogue,
  text: string,
): Promise<Markup | undefined> => {
  const colours = coloursAsked(markings.colours, text);
  if (colours === undefined) return undefined;
  const found = await fetched().catch(() => undefined);
  if (found === undefined)
    return h('p', {}, 'The tables of colours could not be fetched; please try again.');
  const [{ colourAnswer }, catalogue] = found;
  return colourAnswer(catalogue, colours, habit());
};
