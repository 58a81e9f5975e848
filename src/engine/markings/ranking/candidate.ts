import type { Parse } from '../ways/parse.ts';
import type { Reading } from '../meanings/reading.ts';
import { madeUp } from '../text/text.ts';

/** A way to take the marking, with how far it is to be believed. */
export interface Scored {
  parse: Parse;
  score: number;
}

/** A reading with what it was made from, before it is set among its rivals. */
export interface Candidate extends Scored {
  reading: Reading;
  /** What its value is told by among rivals. */
  value: string;
  /** How many letters and figures it leaves without a meaning. */
  lost: number;
}

/** Whether characters were made up that cannot be read. */
export const hasMadeUp = ({ taken }: Parse): boolean =>
  taken.some(({ assumed }) => madeUp(assumed) > 0);
