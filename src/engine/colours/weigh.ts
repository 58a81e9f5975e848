import type { Candidate } from './candidate.ts';
import type { SchemeChoice } from './scheme.ts';
import type { Taking } from './take.ts';

/** Which end has a place that is broader or stands apart, as given. */
export type ApartHint = 'first' | 'last';

/** What is asked: colours as they lie before the technician, and what is known beside them. */
export interface ColourRequest extends SchemeChoice {
  /** Ids in `markings/colours.csv`, from left to right or row by row; `undefined` where one cannot tell. */
  colours: readonly (string | undefined)[];
  /** The end with a broader place, or one that stands apart. */
  apart?: ApartHint | undefined;
}

/**
 * How readily each thing is believed, on the scale of the weights of printed markings: about one for
 * a factor of three. Only differences matter.
 */
export const weights = {
  scheme: { usual: 1, other: 0, rare: -1.5 },
  /** Read from the end that was not given first, where nothing speaks for it. */
  turned: -2,
  /** The end that stands apart is, or is not, where the scheme has it. */
  apartAgrees: 1.5,
  apartDiffers: -2,
  leadingNought: -3,
  outsideRange: -5,
  /** Each meaning that is met less often than others. */
  meaning: { usual: 0, other: -0.6, rare: -1.5 },
  /** A colour without a meaning in its place. */
  noMeaning: -2.5,
  coarseSeries: 1,
  fineSeries: 0.6,
  precisionSeries: 0,
  oldValue: 0,
  /** In a series that parts of the tolerance are not made in today, and never were. */
  unsuitedSeries: 0,
  tooFineSeries: -1.5,
  noSeries: -3,
} as const;

const COARSE = ['E3', 'E6', 'E12'];

/** How a value in figures is believed, by the series that it is in. */
export const preferenceWeight = ({ preference }: Pick<Candidate, 'preference'>): number => {
  if (preference === undefined) return 0;
  const { series, old, suits } = preference;
  if (series === undefined) return old ? weights.oldValue : weights.noSeries;
  const precision = !COARSE.includes(series) && series !== 'E24';
  if (!suits) return precision && !old ? weights.tooFineSeries : weights.unsuitedSeries;
  if (precision) return weights.precisionSeries;
  return series === 'E24' ? weights.fineSeries : weights.coarseSeries;
};

/** Whether the value is one that is met on such parts. */
export const inRange = ({ scheme, taking }: Pick<Candidate, 'scheme' | 'taking'>): boolean => {
  const { value } = taking;
  const { value_min: least, value_max: most } = scheme.row;
  // Limits are themselves met; the thousandth takes up rounding.
  return (
    value === undefined ||
    ((least === undefined || value >= least * 0.999) &&
      (most === undefined || value <= most * 1.001))
  );
};

/** Whether the first figure is a nought before others. */
export const leadingNought = ({ taking }: Pick<Candidate, 'taking'>): boolean =>
  taking.figures?.startsWith('0') === true;

const apartWeight = (
  { scheme, turned }: Pick<Candidate, 'scheme' | 'turned'>,
  hint: ApartHint | undefined,
): number => {
  if (hint === undefined) return turned ? weights.turned : 0;
  const { apart } = scheme.row;
  if (apart === '') return turned ? weights.turned : 0;
  return (apart === hint) !== turned ? weights.apartAgrees : weights.apartDiffers;
};

/** Whether every colour that is known has a meaning in its place. */
export const allUnderstood = ({ taking }: Pick<Candidate, 'taking'>): boolean =>
  taking.taken.every(({ colours, meanings }) => colours === undefined || meanings.length > 0);

const meaningsWeight = ({ taken }: Taking): number =>
  taken.reduce((sum, { colours, meanings: [usual] }) => {
    if (usual !== undefined) return sum + weights.meaning[usual.use];
    return colours === undefined ? sum : sum + weights.noMeaning;
  }, 0);

/** How well a candidate holds together with what is known. */
export const scoreOf = (
  candidate: Omit<Candidate, 'score'>,
  { apart }: Pick<ColourRequest, 'apart'>,
): number =>
  weights.scheme[candidate.scheme.row.use] +
  apartWeight(candidate, apart) +
  preferenceWeight(candidate) +
  (leadingNought(candidate) ? weights.leadingNought : 0) +
  (inRange(candidate) ? 0 : weights.outsideRange) +
  meaningsWeight(candidate.taking);
