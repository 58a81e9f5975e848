import type { Scan } from '../lexicon/scan.ts';
import type { Token } from '../meanings/token.ts';
import { times, valueToken } from './value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** Whether nothing is printed but the code, and at most the letter of its volts before it; X2 is a class of the mains. */
const isAlone = ({ marking: { text }, lexicon }: Scan, at: number): boolean =>
  at <= 1 &&
  text.length === at + 2 &&
  !lexicon.tables.safetyClasses.some(({ mark }) => mark === text);

/**
 * Values of small chips: a letter for two figures, then a figure that counts the noughts. The letter of the
 * volts may touch it where nothing else is printed.
 */
export const mantissaValuesAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  const isTouched = at === 1 && marking.text.length === at + 2;
  const { mantissas, chipMultipliers } = lexicon.values;
  const digits = chipMultipliers.get(marking.text.charAt(at + 1)) ?? [];
  const letters = digits.length === 0 ? [] : (mantissas.get(marking.text.charAt(at)) ?? []);
  return letters.flatMap((row) =>
    digits.map((digit) =>
      valueToken({
        at,
        end: at + 2,
        quantity: 'capacitance',
        value: times(row.value, digit.factor, 1e-12),
        figures: '',
        weight:
          weightOf(weights.mantissaLetter, row.use) +
          (isAlone(scan, at) ? weights.mantissaAlone : 0) +
          (row.bodies.includes(lexicon.hints.body ?? '') ? weights.ceramicChipKnown : 0),
        needs: isTouched ? [] : ['whole-word'],
        // With its volts it is as well a chip of tantalum, which alone is marked with them.
        bodies: isTouched ? lexicon.bodies.bitsOf([...row.bodies, 'tantalum']) : row.bodyBits,
        origins: row.originBits,
        source: row.source,
        settle: 'only ceramic chips carry a letter and a figure alone',
        assumed: [],
      }),
    ),
  );
};
