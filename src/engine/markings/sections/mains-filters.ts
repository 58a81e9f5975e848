import { say } from '../meanings/say.ts';
import type { Scan } from '../lexicon/scan.ts';
import { isFigure, isLetter, wordBegins } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { times } from '../values/value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

const NUMBER = String.raw`(\d*[.,]?\d+)`;
const UNIT = String.raw`\s?([pnuµμ])?[fF]?`;
const FILTER = new RegExp(
  String.raw`${NUMBER}${UNIT}\s?(?:X[12]?)?\s?\+\s?2\s?[x×]\s?${NUMBER}${UNIT}`,
  'uy',
);

const factors: Readonly<Record<string, number>> = {
  p: 1e-12,
  n: 1e-9,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
};

/** Whole numbers without a unit are picofarads, fractions microfarads. */
const farads = (number: string, unit: string | undefined): number => {
  const value = Number(number.replace(',', '.'));
  return times(value, factors[unit ?? (value >= 1 ? 'p' : 'u')] ?? NaN);
};

/**
 * Three capacitors of a mains filter in one body, such as `0,1µF X2 + 2x2500pF Y`: one across the line
 * and two from it to earth, each of which is replaced by a part that is approved for its own place.
 */
export const mainsFiltersAt = ({ lexicon, marking }: Scan, at: number): Token[] => {
  if (!wordBegins(marking, at)) return [];
  FILTER.lastIndex = at;
  const found = FILTER.exec(marking.text);
  const [whole = '', first = '', unit, second = '', unitOfBoth] = found ?? [];
  // A blank that a unit did not follow is none of it: `0,1+2x2500 250~`.
  const end = at + whole.trimEnd().length;
  const next = marking.text.charAt(end);
  if (whole === '' || isFigure(next) || isLetter(next)) return [];
  const across = farads(first, unit);
  const toEarth = farads(second, unitOfBoth);
  return lexicon.values.forms.filter
    .filter((form) => toEarth >= form.value_min && across <= form.value_max && toEarth < across)
    .map((form) => ({
      at,
      end,
      meaning: {
        slot: 'value',
        content: { says: 'sections', values: [across, toEarth, toEarth], symbols: [] },
        bodies: form.bodyBits,
        origins: form.originBits,
        types: form.types,
        means: () =>
          `a mains filter: ${say(across, 'F')} across the line, twice ${say(toEarth, 'F')} to earth`,
        source: form.source,
      },
      weight: weightOf(weights.valueWithUnit, form.use) + weights.sections,
      needs: [],
      assumed: [],
    }));
};
