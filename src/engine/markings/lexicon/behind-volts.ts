import { wordsFoundAt, type Scan } from './scan.ts';
import { wordEnds, type Marking } from '../text/text.ts';

/** Shorter words of the tables are letters of tolerances and the like. */
const FEWEST = 3;

const VOLTS_BEFORE = /\d[kK]?(?:V|VDC|VAC)$/u;

/** Characters of the longest unit of volts, with the figure before it. */
const LONGEST_UNIT = 5;

/**
 * Whether a word of the tables ends a printed word that begins with volts and their unit, as the X7R of
 * `104M50VX7R` does: it may stand there though letters run into it.
 * @param end index behind the word of the tables
 */
export const endsBehindVolts = (marking: Marking, at: number, end: number): boolean =>
  end - at >= FEWEST &&
  wordEnds(marking, end) &&
  VOLTS_BEFORE.test(marking.text.slice(Math.max(0, at - LONGEST_UNIT), at));

/**
 * Whether such a word, as it is written, is all that is behind an index of a printed word, as the MKT
 * of `250MKT` is behind its volts.
 */
export const isWordBehind = (scan: Scan, at: number): boolean =>
  wordsFoundAt(scan, at).some(
    ({ end, sameCase, assumed }) =>
      sameCase && assumed.length === 0 && end - at >= FEWEST && wordEnds(scan.marking, end),
  );
