/**
 * Writes src/substitution/tolerance-letters.generated.ts from the letters of data/markings that are usual
 * wherever a part comes from, so that a field reads them without tables: `node scripts/generate-tolerance-letters.ts`.
 */
import { formatted, rowsOf, writeIfRun } from './generated-module.ts';

const CAPACITORS = new URL('../data/markings/tolerance-letters.csv', import.meta.url);
const RESISTORS = new URL('../data/markings/resistor-tolerances.csv', import.meta.url);
const MODULE = new URL('../src/substitution/tolerance-letters.generated.ts', import.meta.url);

type Row = Record<string, string>;

const isUsual = (row: Row): boolean =>
  row['use'] === 'usual' && row['script'] === 'latin' && row['origins'] === '';

const entry = ({ letter, minus, plus }: Row): string => `${letter}: [${minus}, ${plus}],`;

/** The text of the module, as the formatter leaves it. */
export const toleranceLettersModule = async (): Promise<string> => {
  const capacitors = (await rowsOf(CAPACITORS)).filter(isUsual);
  const single = capacitors.filter(({ letter = '' }) => letter.length === 1);
  const inPercent = single.filter((row) => row['unit'] === 'percent');
  const small = single.filter((row) => row['unit'] === 'pF' && row['from_f'] === '');
  const resistors = (await rowsOf(RESISTORS))
    .filter(isUsual)
    .map((row): Row => ({ ...row, minus: row['percent'] ?? '', plus: row['percent'] ?? '' }));
  const [first] = small;
  return formatted(
    MODULE,
    `
    // Written by scripts/generate-tolerance-letters.ts from data/markings, whose rows name the sources.
    /** Letters of capacitors, per cent minus and plus. */
    export const OF_CAPACITORS = { ${inPercent.map(entry).join('\n')} } as const;

    /** Letters that mean picofarads on the smallest ones, minus and plus. */
    export const OF_SMALL_CAPACITORS = { ${small.map(entry).join('\n')} } as const;

    /** The smallest ones are below this, F. */
    export const SMALL_BELOW = ${first?.['below_f'] ?? '0'};

    /** Letters of resistors, per cent each way. */
    export const OF_RESISTORS = { ${resistors.map(entry).join('\n')} } as const;
  `,
  );
};

await writeIfRun(import.meta.url, MODULE, toleranceLettersModule);
