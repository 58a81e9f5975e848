import type { SchemeChoice } from './scheme.ts';

/** Which end has a place that is broader or stands apart, as given. */
export type ApartHint = 'first' | 'last';

/** What is asked: colours as they lie before the technician, and what is known beside them. */
export interface ColourRequest extends SchemeChoice {
  /** Ids in `markings/colours.csv`, from left to right or row by row; `undefined` where one cannot tell. */
  colours: readonly (string | undefined)[];
  /** The end with a broader place, or one that stands apart. */
  apart?: ApartHint | undefined;
}
