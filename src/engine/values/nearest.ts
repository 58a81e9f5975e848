import { valuesBetween } from './series.ts';
import type { SeriesName } from './series.ts';

/** How far a stand-in's marked value may be from the old one. */
export interface ValuePolicy {
  /** `same`: timing and tuning; `at-least`: more is welcome; `window`: neither way is harmless. */
  kind: 'same' | 'at-least' | 'window';
  /** Smallest value allowed, as a share of the wanted one. */
  low: number;
  /** Largest value allowed, as a multiple of the wanted one. */
  high: number;
}

/** A preferred value that may be bought in place of a wanted one. */
export interface Preferred {
  /** In the unit of the wanted value. */
  value: number;
  /** To the wanted value. */
  ratio: number;
  series: SeriesName;
  /** Whether the policy allows it. */
  allowed: boolean;
  /** How it lies to the wanted value, and what is allowed. */
  why: string;
}

/** Within the tolerance of ordinary parts: what stands for the same value where nothing is known. */
const NEARLY_THE_SAME: ValuePolicy = { kind: 'same', low: 0.9, high: 1.1 };

/** Ratios nearer to each other than this are equal but for rounding. */
const ROUNDING = 1e-9;

/** No policy reaches further than this, which bounds the search. */
const FARTHEST = 1e6;

/** Searched beyond what is allowed, where every series has a value that is not allowed. */
const ONE_DECADE = 10;

/** A bound of a policy, as far as it is searched; one that is no number counts as the value. */
const reach = (ratio: number): number =>
  Number.isNaN(ratio) ? 1 : Math.min(FARTHEST, Math.max(1 / FARTHEST, ratio));

/** A value near a wanted one, whatever it is a member of. */
export type Near = Pick<Preferred, 'value' | 'ratio' | 'allowed'>;

const distance = ({ ratio }: Near): number => Math.abs(Math.log(ratio));

const percent = (share: number): string => {
  const figure = share * 100;
  return `${String(Number(figure.toPrecision(figure < 1 ? 1 : figure < 100 ? 2 : 3)))} %`;
};

const times = (ratio: number): string => `${String(Number(ratio.toPrecision(2)))} times`;

const comparison = (ratio: number): string => {
  if (Math.abs(ratio - 1) <= ROUNDING) return 'The wanted value itself';
  if (ratio >= 2) return `${times(ratio)} the wanted value`;
  return ratio > 1
    ? `${percent(ratio - 1)} above the wanted value`
    : `${percent(1 - ratio)} below the wanted value`;
};

const explain = (ratio: number, { low, high }: ValuePolicy): string => {
  const verdict =
    ratio < low - ROUNDING
      ? `less than the ${percent(low)} of it that must be kept`
      : ratio > high + ROUNDING
        ? `more than the ${percent(high)} of it that is allowed`
        : `allowed from ${percent(low)} to ${percent(high)} of it`;
  return `${comparison(ratio)}; ${verdict}.`;
};

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
    const allowed = ratio >= policy.low - ROUNDING && ratio <= policy.high + ROUNDING;
    return { value: member, ratio, allowed };
  });
  const larger = policy.kind === 'at-least' ? -1 : 1;
  const nearestFirst = candidates
    .map((near) => ({ near, far: distance(near) }))
    .sort((a, b) => {
      const difference = a.far - b.far;
      return Math.abs(difference) > ROUNDING ? difference : larger * (a.near.value - b.near.value);
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
): Preferred[] =>
  nearestMade(value, policy, (low, high) => valuesBetween(series, low, high)).map((near) => ({
    ...near,
    series,
    why: explain(near.ratio, policy),
  }));

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
