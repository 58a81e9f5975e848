import { z } from 'zod';
import { list, provenance, text } from './cells.ts';

/** Path of a page within the site, with its anchor where it has one. */
export const sitePage = z
  .string()
  .regex(/^\/(?:[a-z\d-]+\/)+(?:#[a-z\d-]+)?$/u, 'expected a path such as /positions/reservoir/')
  .transform((page): `/${string}` => `/${page.slice(1)}`);

/** A page that words of the bench lead to, such as what one hears of a fault or the name of a meter. */
export const benchWordRow = z.strictObject({
  page: sitePage.describe('path of the page within the site, with its anchor where it has one'),
  title: text.describe('what the link says'),
  words: list.describe('words or short phrases that lead to it, in small letters'),
  ...provenance,
});
export type BenchWordRow = z.output<typeof benchWordRow>;
