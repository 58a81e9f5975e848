import { keepText, keptText } from './kept-text.ts';

/** The derating guideline that this reader chose last, kept on this device. */

const KEY = 'guideline';

/** Its id; nothing for the usual one. It may have been written by anybody. */
export const likedGuideline = (): string => keptText(KEY);

/** Keeps it for other pages. */
export const likeGuideline = (id: string): void => {
  keepText(KEY, id);
};
