import { FLOAT_ERROR } from '../quantities/within.ts';
import { valuesBetween, type SeriesName } from './series.ts';

/** How far a stand-in's marked value may be from the old one. */
export interface ValuePolicy {
  /** `same`: timing and tuning; `at-least`: more is welcome; `window`: neither way is harmless. */
  kind: 'same' | 'at-least' | 'window';
  /** Smallest value allowed, as a share of the wanted one. */
  low: number;
  /** Largest value allowed, as a multiple of the wanted one. */
  high: number;
}

/** A value near a wanted one, whatever it is a member of. */
export interface Near {
  /** In the unit of the wanted value. */
  value: number;
  /** To the wanted value. */
  ratio: number;
  /** Whether the policy allows it. */
  allowed: boolean;
}

/** Within the tolerance of ordinary parts: what stands for the same value where nothing is known. */
const NEARLY_THE_SAME: ValuePolicy = { kind: 'same', low: 0.9, high: 1.1 };

/** No policy reaches further than this, which bounds the search. */
const FARTHEST = 1e6;

/** Searched beyond what is allowed, where every series has a value that is not allowed. */
const ONE_DECADE = 10;

/** A bound of a policy, as far as it is searched; one that is no number counts as the value. */
const reach = (ratio: number): number =>
  Number.isNaN(ratio) ? 1 : Math.min(FARTHEST, Math.max(1 / FARTHEST, ratio));

const distance = ({ ratio }: Near): number => Math.abs(Math.log(ratio));

/**
 * Values near a wanted one, in the order of `nearestPreferred`, of those that are made.
 * @param made the values that are made between two limits, both included
 */
export const nearestMade = (
  value: number,
  policy: ValuePolicy,
  made: (low: number, high: number) => readonly number[],
): Near[] => {
  if (!(value > 0) || !Number.isFinite(value)) return [];
  const low = (value * reach(policy.low)) / ONE_DECADE;
  const high = value * reach(policy.high) * ONE_DECADE;
  const candidates = made(low, high).map((member): Near => {
    const ratio = member / value;
    const allowed = ratio >= policy.low - FLOAT_ERROR && ratio <= policy.high + FLOAT_ERROR;
    return { value: member, ratio, allowed };
  });
  const larger = policy.kind === 'at-least' ? -1 : 1;
  const nearestFirst = candidates
    .map((near) => ({ near, far: distance(near) }))
    .sort((a, b) => {
      const difference = a.far - b.far;
      return Math.abs(difference) > FLOAT_ERROR
        ? difference
        : larger * (a.near.value - b.near.value);
    })
    .map(({ near }) => near);
  return [
    ...nearestFirst.filter(({ allowed }) => allowed),
    ...nearestFirst.filter(({ allowed }) => !allowed).slice(0, 1),
  ];
};

/**
 * Preferred values near a wanted one, for the old values that are made no more (0.05 µF, 25 µF,
 * 500 pF). First all that the policy allows, the nearest in ratio first, then the nearest one that
 * it does not allow. Of two equally near, `at-least` puts the larger first and the others the
 * smaller.
 *
 * Values further than ten million times away are not looked for.
 *
 * @param value above zero, in any unit; anything else gives an empty list
 * @param policy default: within ten percent
 */
export const nearestPreferred = (
  value: number,
  series: SeriesName,
  policy: ValuePolicy = NEARLY_THE_SAME,
): Near[] => nearestMade(value, policy, (low, high) => valuesBetween(series, low, high));

/**
 * The smallest offered rating that is not below the wanted one: 630 V for 600 V.
 * @param volts wanted, V
 * @param offered ratings that can be bought, V, in any order
 * @returns nothing where none suffices
 */
export const nearestVoltage = (volts: number, offered: readonly number[]): number | undefined => {
  const sufficient = offered.filter((rating) => rating >= volts && Number.isFinite(rating));
  return sufficient.length === 0 ? undefined : sufficient.reduce((a, b) => Math.min(a, b));
};
