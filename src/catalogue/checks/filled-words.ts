import type { Input } from '../../engine/sums/sum.ts';
import { number } from '../../schemas/cells.ts';

/** Whether the field of a bench sum that asks for a number is filled with words that are none. */
export const fillsNoNumber = (field: Input | undefined, takes: string, words: string): boolean =>
  takes === 'words' && field?.kind === 'quantity' && !number.safeParse(words).success;
