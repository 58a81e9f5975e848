import type { DeratingRow } from '../../schemas/derating.ts';
import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'derating';

/** Some makers let a rating be passed a little at low temperature; more than this is a slip. */
const LARGEST_SHARE = 1.1;

/** Whether two rows speak of one rating at one temperature; the second starts no lower. */
const meet = (first: DeratingRow, second: DeratingRow): boolean =>
  second.from_c < first.to_c &&
  (first.above_v ?? 0) < (second.up_to_v ?? Infinity) &&
  (second.above_v ?? 0) < (first.up_to_v ?? Infinity);

export const deratingSpans: Check = {
  id: rule,
  about:
    'The temperature spans of a guideline do not overlap for a type and rating, and shares are shares.',
  needs: ['derating.csv'],
  check: (tables) => {
    const rows = goodRows(tables, 'derating.csv');
    const shares = rows.flatMap((row) =>
      (['share', 'end_share'] as const)
        .filter((column) => row.value[column] > LARGEST_SHARE)
        .map((column) =>
          cellFault(rule, 'derating.csv', row, column, {
            wrong: 'more than the rating',
            expected: `a share up to ${LARGEST_SHARE}`,
          }),
        ),
    );
    const spans = rows.flatMap((row) => row.value.types.map((type) => ({ type, row })));
    const groups = Map.groupBy(spans, ({ type, row }) => `${row.value.guideline} ${type}`);
    const overlaps = [...groups.values()].flatMap((group) => {
      const upwards = [...group].sort((a, b) => a.row.value.from_c - b.row.value.from_c);
      return upwards.flatMap(({ type, row }, index): Fault[] => {
        const before = upwards.slice(0, index).find((one) => meet(one.row.value, row.value));
        if (before === undefined) return [];
        return [
          cellFault(rule, 'derating.csv', row, 'from_c', {
            wrong: `overlaps line ${before.row.line} for ${type}`,
            expected: `a span from ${before.row.value.to_c} degC on`,
          }),
        ];
      });
    });
    return [...shares, ...overlaps];
  },
};
