import type { Scan } from '../lexicon/scan.ts';
import type { Token } from '../meanings/token.ts';
import { times, valueToken } from './value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** Values of small chips: a letter for two figures, then a figure that counts the noughts. */
export const mantissaValuesAt = ({ lexicon, marking }: Scan, at: number): Token[] => {
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
          (row.bodies.includes(lexicon.hints.body ?? '') ? weights.ceramicChipKnown : 0),
        needs: ['whole-word'],
        bodies: row.bodyBits,
        origins: row.originBits,
        source: row.source,
        settle: 'only ceramic chips carry a letter and a figure alone',
        assumed: [],
      }),
    ),
  );
};
