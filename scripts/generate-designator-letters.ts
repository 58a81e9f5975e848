/**
 * Writes src/job/model/designator-letters.generated.ts from data/job/designator-letters.csv, so that a parts
 * list can be cut before any table is fetched: `node scripts/generate-designator-letters.ts`.
 */
import { formatted, rowsOf, writeIfRun } from './generated-module.ts';

const TABLE = new URL('../data/job/designator-letters.csv', import.meta.url);
const MODULE = new URL('../src/job/model/designator-letters.generated.ts', import.meta.url);

/** A single letter begins no type number, and one of another script none that is met. */
const SEVERAL = /^[A-Z]{2,3}$/;

/** The text of the module, as the formatter leaves it. */
export const designatorLettersModule = async (): Promise<string> => {
  const rows = await rowsOf(TABLE);
  const letters = rows
    .filter((row) => row['numbers_too'] === 'no')
    .map((row) => row['letters'] ?? '')
    .filter((one) => SEVERAL.test(one));
  return formatted(
    MODULE,
    `
    // Written by scripts/generate-designator-letters.ts from data/job/designator-letters.csv.
    /** Letters of designators that have two or three, with spaces between. */
    export const DESIGNATOR_LETTERS =
      '${letters.toSorted().join(' ')}';
  `,
  );
};

await writeIfRun(import.meta.url, MODULE, designatorLettersModule);
