import { readMarking, type Catalogue, type Reading } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { hintsFrom } from '../../reading/marking-hints.ts';
import { readingsMarkup, unlikelyMarkup } from '../../reading/view.ts';
import { withWipers } from '../../reading/with-wipers.ts';
import { numberMarkup } from '../../search/device-pieces.ts';
import { typeNumberIn, type TypeNumber } from '../../search/type-number.ts';
import { habit } from '../kept/habits.ts';
import { colourAnswerFor } from './colours-asked.ts';

/** What reads a marking for the page of readings, apart from the page itself for its weight. */

/** The readings as elements, folded where the text is the type number of a device. */
const readingPieces = (
  catalogue: Catalogue,
  text: string,
  readings: readonly Reading[],
  number: TypeNumber | undefined,
): Node[] => {
  const pieces =
    number?.sure === true
      ? [unlikelyMarkup(catalogue, readings, habit())]
      : readingsMarkup(withWipers(catalogue, readings), text, readings, habit());
  return pieces.flatMap((piece) => (piece === false ? [] : [toDom(piece)]));
};

/**
 * What a text says, as elements, and the reading that is worth drawing.
 * @param chosen what is known of the part besides, by the key of its choice
 */
export const readingOf = async (
  catalogue: Catalogue,
  text: string,
  chosen: (key: string) => string,
): Promise<{ pieces: Node[]; drawn: Reading | undefined }> => {
  const colours = await colourAnswerFor(catalogue, text);
  const readings = readMarking(catalogue, text, hintsFrom(chosen));
  // Who says what the part is has seen that it is no device.
  const said = chosen('kind') !== '' || chosen('body') !== '';
  const number = said ? undefined : typeNumberIn(catalogue, text, readings);
  const read = colours === undefined || readings.length > 0;
  return {
    pieces: [
      ...(colours === undefined ? [] : [toDom(colours)]),
      ...numberMarkup(catalogue, text, number).map((piece) => toDom(piece)),
      ...(read ? readingPieces(catalogue, text, readings, number) : []),
    ],
    drawn: number?.sure === true ? undefined : readings[0],
  };
};
