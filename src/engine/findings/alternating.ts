import { timesTheVoltage } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, lesserOf, mapFalling, scale, type Range } from '../quantities/range.ts';
import {
  conditionOf,
  knowledgeOf,
  rangeOf,
  type Circumstances,
  type FindingModel,
} from './model.ts';

const SHARE = 'ac-share';
const CORONA = 'corona-start';

/**
 * AC voltage (V) that a film part rated for DC takes at mains frequency: a share of its
 * rating as long as heat and field decide, and no more than where discharges start in its gaps.
 */
export const alternatingRating = (part: Part, circumstances: Circumstances): Range | undefined => {
  if (part.voltageKind === 'ac') return exactly(part.ratedVoltage);
  const share = rangeOf(circumstances, part, SHARE);
  if (share === undefined) return undefined;
  const byShare = scale(share, part.ratedVoltage);
  const start = rangeOf(circumstances, part, CORONA);
  if (start === undefined) return byShare;
  return lesserOf(byShare, scale(start, timesTheVoltage(part)));
};

const isExempt = (part: Part, circumstances: Circumstances): boolean =>
  part.voltageKind === 'dc' && knowledgeOf(circumstances, part, SHARE).status === 'not-applicable';

/** AC voltage across the part as a share of what its kind takes. */
export const acVoltage: FindingModel = {
  measure: (part, circumstances) => {
    if (isExempt(part, circumstances)) {
      return { status: 'known', value: exactly(0), properties: [] };
    }
    const allowed = alternatingRating(part, circumstances);
    if (allowed === undefined) return { status: 'unknown', missing: [SHARE] };
    const voltage = conditionOf(circumstances, 'vac').max;
    return {
      status: 'known',
      value: mapFalling(allowed, (volt) => voltage / volt),
      properties: part.voltageKind === 'ac' ? [] : [SHARE, CORONA],
    };
  },
  working: (part, circumstances, value) => {
    const allowed = alternatingRating(part, circumstances);
    if (isExempt(part, circumstances) || allowed === undefined) {
      return 'for this kind the peak counts, with the rated voltage';
    }
    return (
      `${formatValue(conditionOf(circumstances, 'vac').max, 'V')} / ` +
      `${formatQuantity(allowed, 'V')} = ${formatQuantity(value, 'fraction')}; at mains frequency, ` +
      'less above a few kilohertz'
    );
  },
};
