import type { Tolerance } from '../markings/meanings/reading.ts';
import type { Preference } from './preferred.ts';
import type { Scheme } from './scheme.ts';
import type { Marks, Taking } from './take.ts';

/** Colours read under one scheme from one end, with unknown places of the value filled in. */
export interface Candidate {
  scheme: Scheme;
  /** Whether the last place as given was read first. */
  turned: boolean;
  taking: Taking;
  /** Zero-based places as read that were filled in. */
  guessed: readonly number[];
  tolerance: Tolerance | undefined;
  /** Only where there is a value in figures. */
  preference: Preference | undefined;
  score: number;
}

/** Marks as the scheme reads them. */
export const asRead = (marks: Marks, turned: boolean): Marks =>
  turned ? marks.toReversed() : marks;

/** The place as it was given. */
export const placeGiven = (at: number, { turned, taking }: Candidate): number =>
  turned ? taking.marks.length - 1 - at : at;
