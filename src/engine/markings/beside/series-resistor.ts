import type { SourceId } from '../../catalogue.ts';
import { say } from '../meanings/say.ts';
import { unitsFoundAt, writtenAt, type Scan } from '../lexicon/scan.ts';
import { skipBlanks, wordEnds } from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { times } from '../values/value-token.ts';
import { weights } from '../meanings/weights.ts';

/** Signs between the two. */
const SIGNS: ReadonlySet<string> = new Set('+&');

const BEHIND_VALUE: readonly Need[] = ['value-before'];

/** A unit of ohms: where it ends, what it counts, and where that is from. */
interface Ohms {
  end: number;
  factor: number;
  source: SourceId;
}

/** Letters that stand for ohms behind a number, such as R and k. */
const lettersAt = ({ lexicon, marking }: Scan, at: number): Ohms[] =>
  (lexicon.values.points.get(marking.text.charAt(at)) ?? [])
    .filter(({ quantity, places }) => quantity === 'resistance' && places.includes('end'))
    .map(({ factor, source }) => ({ end: at + 1, factor, source }));

/** A unit of ohms at an index, in full or as a letter. */
const unitAt = (scan: Scan, at: number): Ohms | undefined => {
  const full = unitsFoundAt(scan, at)
    .filter(({ item, assumed }) => item.row.quantity === 'resistance' && assumed.length === 0)
    .map(({ item: { row }, end }) => ({ end, factor: row.factor, source: row.source }));
  return [...full, ...lettersAt(scan, at)].find(({ end }) => wordEnds(scan.marking, end));
};

/**
 * A resistor in series in the body of a capacitor, behind a plus: the second of `0.1µF+100Ω`, which
 * quenches sparks.
 */
export const seriesResistorAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  if (!SIGNS.has(marking.text.charAt(at))) return [];
  return writtenAt(scan, skipBlanks(marking, at + 1)).flatMap((number): Token[] => {
    const unit = unitAt(scan, skipBlanks(marking, number.end));
    if (unit === undefined || number.assumed.length > 0) return [];
    const ohms = times(number.value, unit.factor);
    return [
      {
        at,
        end: unit.end,
        meaning: {
          content: { says: 'remark' },
          bodies: lexicon.bodiesOfKind.capacitor,
          origins: lexicon.origins.all,
          types: [],
          means: () => `a resistor of ${say(ohms, 'Ω')} in series with it in the same body`,
          source: unit.source,
        },
        weight: weights.seriesResistor,
        needs: BEHIND_VALUE,
        assumed: [],
      },
    ];
  });
};
