import { midSentence } from './mid-sentence.ts';
import { capital } from './words.ts';

/**
 * What a page about a part in a position is called. A name that goes on behind a comma, such as
 * “Ceramic disc, class unknown”, ends with one too, or it would read as “unknown in”.
 */
export const partInPosition = (part: string, position: string): string =>
  `${capital(part)}${part.includes(',') ? ',' : ''} in ${midSentence(position)}`;
