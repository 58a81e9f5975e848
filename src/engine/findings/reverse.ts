import type { Part } from '../assessment/parts.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, lesserOf, mapFalling, scale, type Range } from '../quantities/range.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';

const SHARE = 'reverse-voltage';
const MOST = 'reverse-voltage-most';

/** Reverse voltage (V) that a part withstands: a share of its rating, and never more than a limit. */
export const reverseWithstood = (part: Part, circumstances: Circumstances): Range | undefined => {
  const share = rangeOf(circumstances, part, SHARE);
  const most = rangeOf(circumstances, part, MOST);
  const byShare = share && scale(share, part.ratedVoltage);
  if (byShare === undefined || most === undefined) return byShare ?? most;
  return lesserOf(byShare, most);
};

const isPolar = (part: Part, { catalogue }: Circumstances): boolean =>
  catalogue.types[part.type]?.polarity !== 'non-polar' && part.made?.kind !== 'back-to-back';

/** Voltage the wrong way round as a share of what a polar part withstands. */
export const reverseVoltage: FindingModel = {
  measure: (part, circumstances) => {
    const reverse = conditionOf(circumstances, 'v-reverse').max;
    if (reverse === 0 || !isPolar(part, circumstances)) {
      return { status: 'known', value: exactly(0), properties: [] };
    }
    const limit = reverseWithstood(part, circumstances);
    if (limit === undefined) return { status: 'unknown', missing: [SHARE] };
    return {
      status: 'known',
      // A part that withstands nothing is beyond its limit by more than any number can say.
      value: mapFalling(limit, (volt) => Math.min(Number.MAX_VALUE, reverse / volt)),
      properties: [SHARE, MOST].filter(
        (property) => rangeOf(circumstances, part, property) !== undefined,
      ),
    };
  },
  working: (part, circumstances, value) => {
    if (!isPolar(part, circumstances)) return 'non-polar: either way round';
    const reverse = conditionOf(circumstances, 'v-reverse').max;
    if (reverse === 0) return 'no reverse voltage occurs here';
    const limit = reverseWithstood(part, circumstances);
    if (limit?.max === 0)
      return `${formatValue(reverse, 'V')} on a part that withstands none the wrong way round`;
    return (
      `${formatValue(reverse, 'V')} the wrong way round / ` +
      `${limit ? formatQuantity(limit, 'V') : 'not known'} withstood = ` +
      formatQuantity(value, 'fraction')
    );
  },
};
