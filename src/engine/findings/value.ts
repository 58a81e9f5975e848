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

/** How far the part as bought may be off its mark, the worse side. */
export const tolerance: FindingModel = {
  measure: ({ tolerance: { minus, plus } }) => ({
    status: 'known',
    value: exactly(Math.max(minus, plus)),
    properties: [],
  }),
  working: ({ tolerance }) => asBought(tolerance),
};
