import type { CautionRow } from '../../schemas/cautions.ts';
import { byGravity } from '../../substitution/cautions.ts';
import { highestAssumed, type Assumed } from './assumed.ts';
import type { DueCaution } from './due-cautions.ts';

/** A caution where the work is. */
export interface PlacedCaution {
  row: CautionRow;
  /** Whether it stands here for the first time on the sheet, with all its words. */
  isFirst: boolean;
  /** The number that nobody typed, where nothing else brings the caution up here. */
  assumed: Assumed | undefined;
}

/** What all of these rest on; nothing where one of them counts without an assumed number. */
const restsOn = (alike: readonly DueCaution[]): Assumed | undefined => {
  const assumed = alike.flatMap((one) => one.assumed ?? []);
  return assumed.length < alike.length ? undefined : highestAssumed(assumed);
};

/** Places cautions from the top of a sheet to its end, and knows which stood before. */
export const newPlacing = (): ((due: readonly DueCaution[]) => PlacedCaution[]) => {
  const seen = new Set<string>();
  return (due) =>
    [...Map.groupBy(due, ({ row }) => row.id).values()]
      .flatMap((alike) => {
        const [first] = alike;
        return first === undefined ? [] : [{ row: first.row, assumed: restsOn(alike) }];
      })
      .toSorted((a, b) => byGravity(a.row, b.row))
      .map(({ row, assumed }) => {
        const isFirst = !seen.has(row.id);
        seen.add(row.id);
        return { row, isFirst, assumed };
      });
};
