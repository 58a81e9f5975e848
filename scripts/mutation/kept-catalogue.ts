import { readFileSync } from 'node:fs';
import { deserialize } from 'node:v8';
import type { Catalogue } from '../../src/engine/catalogue.ts';

/**
 * Stands in for `src/catalogue/index.ts` while code of the engine is changed: every mutant is run in
 * a process of its own, and to read and check the tables takes longer than most of its tests.
 */

const FILE = process.env['MUTATION_CATALOGUE'];

let kept: Catalogue | undefined;

/**
 * The catalogue as it was written down before the first mutant.
 * @throws if none was
 */
export const loadCatalogue = (): Catalogue => {
  if (FILE === undefined) throw new Error('MUTATION_CATALOGUE names no file');
  kept ??= deserialize(readFileSync(FILE)) as Catalogue;
  return kept;
};
