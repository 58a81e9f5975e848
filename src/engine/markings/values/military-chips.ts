import type { Scan } from '../lexicon/scan.ts';
import type { Token } from '../meanings/token.ts';
import { weights } from '../meanings/weights.ts';
import { wordBegins } from '../text/text.ts';
import { times, valueToken } from './value-token.ts';

/**
 * A film chip of the American military, such as `M55342K06B10E0R`: the number of the specification, its
 * characteristic or a stroke, its style, its ends, three figures of the value with a letter for the point, and
 * a letter for the failure rate, which may be left off.
 */
const NUMBER =
  /[MD]55342[A-Z/]\d{2}[A-Z](?=[\dA-Z]{4})(\d{1,3})([A-Z])(\d{0,2})[A-Z]?(?![\p{L}\d])/uy;

/** Signs of the value, its letter for the point among them. */
const SIGNS_OF_VALUE = 4;

/** The value of such a chip, ohm, with the tolerance that its letter stands for as well. */
export const militaryChipsAt = ({ lexicon, marking }: Scan, at: number): Token[] => {
  if (!wordBegins(marking, at)) return [];
  NUMBER.lastIndex = at;
  const [all, whole = '', letter = '', part = ''] = NUMBER.exec(marking.text) ?? [];
  if (all === undefined || whole.length + 1 + part.length !== SIGNS_OF_VALUE) return [];
  const figures = Number(`${whole}.${part === '' ? '0' : part}`);
  return lexicon.tables.militaryChipLetters
    .filter((row) => row.letter === letter && figures > 0)
    .map((row) => {
      const share = row.percent / 100;
      return valueToken({
        at,
        end: at + all.length,
        quantity: 'resistance',
        value: times(figures, row.factor),
        figures: '',
        weight: weights.valueWithUnit.usual,
        bodies: lexicon.bodies.bitsOf(['resistor-chip']),
        origins: lexicon.origins.bitsOf(['american']),
        source: row.source,
        settle: '',
        implies: { minus: share, plus: share, unit: 'fraction' },
        tellsKind: true,
        assumed: [],
      });
    });
};
