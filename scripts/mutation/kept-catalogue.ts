import { readFileSync } from 'node:fs';
import { deserialize } from 'node:v8';
import type { Catalogue } from '../../src/engine/catalogue.ts';

/**
 * Stands in for `src/catalogue/index.ts` while code of the engine is changed: every test file is run
 * from its beginning for every mutant, and to read and check the tables takes longer than most tests.
 */

const FILE = process.env['MUTATION_CATALOGUE'];

/** Where the catalogue outlives the module, which is loaded anew for each mutant. */
const lasting: { mutationCatalogue?: Catalogue } & object = globalThis;

/** The same for all mutants: what one of them writes into it must fail there and then. */
const frozen = <Value>(value: Value): Value => {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
};

/**
 * The catalogue as it was written down before the first mutant.
 * @throws if none was
 */
export const loadCatalogue = (): Catalogue => {
  if (FILE === undefined) throw new Error('MUTATION_CATALOGUE names no file');
  lasting.mutationCatalogue ??= frozen(deserialize(readFileSync(FILE)) as Catalogue);
  return lasting.mutationCatalogue;
};
