import { formatQuantity, formatValue } from '../engine/index.ts';
import { shortenDesignators, type Assumed } from '../job/index.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { sentence } from '../text/words.ts';

const HOW = {
  default: 'usual in such a place',
  derived: 'worked out from the old part',
} as const;

/** In few words, for titles: `assumed: 84 V`. */
export const assumedShort = ({ range, unit }: Assumed): string =>
  `assumed: ${formatQuantity(range, unit)}`;

/** Which number nobody typed, and what to do about it. */
export const assumedWords = (assumed: Assumed): string => {
  const { name, range, unit, from, how, designators, lines } = assumed;
  const at = shortenDesignators(designators);
  const of = lines > 1 ? `, the highest of ${String(lines)} lines,` : '';
  return (
    `${sentence(
      `nobody typed the number that this rests on: ${midSentence(name)}${at === '' ? '' : ` (${at})`}${of} ` +
        `is taken as ${formatQuantity(range, unit)}, ${HOW[how]}`,
    )} ` +
    sentence(
      `measure, and put your own number at its line of the plan; below ${formatValue(from, unit)} this goes`,
    )
  );
};
