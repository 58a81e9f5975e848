import type { Tolerance } from '../assessment/parts.ts';
import { formatValue } from '../quantities/index.ts';
import { exactly } from '../quantities/range.ts';
import { plain, type FindingModel } from './model.ts';

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
  measure: ({ tolerance: { minus, plus } }) => ({
    status: 'known',
    value: exactly(worse({ minus, plus })),
    properties: [],
  }),
  working: ({ tolerance }) => asBought(tolerance),
};

/** Closest tolerance that capacitors are sold in: a part that is said to be exact counts as that. */
const CLOSEST = 0.005;

/** How many times as far off its mark a part may be as the old one was. */
export const toleranceKept: FindingModel = {
  measure: (part, { original }) =>
    plain(worse(part.tolerance) / Math.max(CLOSEST, worse(original.tolerance))),
  working: (part, { original }, ratio) =>
    `${formatValue(worse(part.tolerance), 'fraction')} / ` +
    `${formatValue(Math.max(CLOSEST, worse(original.tolerance)), 'fraction')} = ` +
    formatValue(ratio.typ, 'ratio'),
};
