import { isSetByHand } from './set-by-hand.ts';
import type { Tolerance } from '../assessment/parts.ts';
import { formatValue } from '../quantities/index.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { plain, type Circumstances, type FindingModel } from './model.ts';

/** Marked value of the part over that of the old one. */
export const value: FindingModel = {
  measure: (part, { original }) => plain(part.capacitance / original.capacitance),
  working: (part, { original }, ratio) =>
    `${formatValue(part.capacitance, 'F')} / ${formatValue(original.capacitance, 'F')} = ` +
    `${formatValue(ratio.typ, 'ratio')}`,
};

/** Both sides of a tolerance, for a working. */
export const asBought = ({ minus, plus }: Tolerance): string =>
  minus === plus
    ? `±${formatValue(plus, 'fraction')} as bought`
    : `+${formatValue(plus, 'fraction')} / −${formatValue(minus, 'fraction')} as bought`;

/** The worse side of a tolerance. */
const worse = ({ minus, plus }: Tolerance): number => Math.max(minus, plus);

/** How far the part as bought may be off its mark, the worse side. */
export const tolerance: FindingModel = {
  measure: (part, circumstances) =>
    plain(isSetByHand(part, circumstances) ? 0 : worse(part.tolerance)),
  working: (part, circumstances) =>
    isSetByHand(part, circumstances)
      ? `${asBought(part.tolerance)}, which setting it by hand makes up for`
      : asBought(part.tolerance),
};

/** How far the old part may be off its mark; one that is said to be exact counts as the closest sold. */
const ofOld = ({ catalogue, original }: Circumstances): number =>
  Math.max(ruleOf(catalogue, 'closest-tolerance'), worse(original.tolerance));

/** How many times as far off its mark a part may be as the old one was. */
export const toleranceKept: FindingModel = {
  measure: (part, circumstances) => plain(worse(part.tolerance) / ofOld(circumstances)),
  working: (part, circumstances, ratio) =>
    `${formatValue(worse(part.tolerance), 'fraction')} / ${formatValue(ofOld(circumstances), 'fraction')} = ` +
    formatValue(ratio.typ, 'ratio'),
};
