import { z } from 'zod';
import { idList } from './cells.ts';

/** How far a meaning is to be expected where nothing speaks for another. */
export const use = z
  .enum(['usual', 'other', 'rare'])
  .describe('usual: the meaning to expect; other: met, and a rival of it; rare: seldom met');

/** How often a letter is met at all, where it cannot be read. */
export const met = z
  .enum(['often', 'sometimes', 'seldom'])
  .describe('how often the letter is met on parts, from the trade; ranks it where it is worn away');

/** Bodies and origins that a meaning is tied to; nothing for all. */
export const context = {
  bodies: idList.describe('bodies in bodies.csv that it is met on; none for all of its kind'),
  origins: idList.describe('where such marks were used, such as british or soviet; none for all'),
};
