import { parseQuantity } from '../../engine/index.ts';
import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import type { Job } from '../model/job.ts';

/** How many more than needed are bought of each thing. */
export interface SpareRule {
  /** Share of the quantity. */
  share: number;
  least: number;
  /** What of it could not be understood and counts as nothing. */
  faults: readonly string[];
}

/** More than this many times the quantity is no spare but a slip of the finger. */
const MOST_SHARE = 10;
const MOST_LEAST = 1000;

/** The rule of a job, `10 %` and `1`; what is empty counts as nothing. */
export const spareRuleOf = ({ spareShare, spareLeast }: Job['whole']): SpareRule => {
  const faults: string[] = [];
  const share = spareShare.trim() === '' ? undefined : parseQuantity(spareShare, 'fraction', '%');
  const typ = share === undefined ? 0 : share.ok ? share.value.typ : NaN;
  if (!(typ >= 0 && typ <= MOST_SHARE))
    faults.push(
      'The share of spares is not understood and counts as none; write one such as 10 %.',
    );
  const least = Number(spareLeast.trim());
  const isCount = Number.isInteger(least) && least >= 0 && least <= MOST_LEAST;
  if (!isCount)
    faults.push(
      'The least number of spares is not understood and counts as none; write one such as 1.',
    );
  return { share: typ >= 0 && typ <= MOST_SHARE ? typ : 0, least: isCount ? least : 0, faults };
};

/** Spares for a quantity, rounded up; a tenth of 30 are 3, though sums of a computer make it more. */
export const sparesFor = (needed: number, { share, least }: SpareRule): number =>
  needed === 0 ? 0 : Math.max(Math.ceil(needed * share - FLOAT_ERROR), least);
