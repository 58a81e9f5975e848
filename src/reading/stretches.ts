import type { Reading } from '../engine/index.ts';

type Evidence = Reading['evidence'][number];

/** A stretch of a marking: taken for something, left without a meaning, or between others. */
export type Stretch =
  | { kind: 'taken'; text: string; at: number; number: number; evidence: Evidence }
  | { kind: 'lost'; text: string; at: number; number: number }
  | { kind: 'between'; text: string; at: number };

/** The whole marking as stretches in their order, those with something to say numbered from one. */
export const stretchesOf = (marking: string, reading: Reading): Stretch[] => {
  const stretches: Stretch[] = [];
  const lost = [...reading.notUnderstood];
  let number = 0;
  let at = 0;

  const between = (end: number): void => {
    while (at < end) {
      const next = lost[0];
      const found = next === undefined || next === '' ? -1 : marking.slice(at, end).indexOf(next);
      const stop = found < 0 ? end : at + found;
      if (stop > at) stretches.push({ kind: 'between', text: marking.slice(at, stop), at });
      if (found >= 0 && next !== undefined) {
        lost.shift();
        number += 1;
        stretches.push({ kind: 'lost', text: next, at: stop, number });
      }
      at = found >= 0 && next !== undefined ? stop + next.length : end;
    }
  };

  for (const evidence of reading.evidence) {
    between(evidence.at);
    number += 1;
    stretches.push({ kind: 'taken', text: evidence.text, at: evidence.at, number, evidence });
    at = evidence.at + evidence.text.length;
  }
  between(marking.length);
  return stretches;
};
