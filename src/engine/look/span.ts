import type { LookRangeRow, QuestionRow } from '../../schemas/look.ts';

/** The scale of a question: where a number stands on it, and how far it goes. */
export interface Scale {
  at: (value: number) => number;
  value: (place: number) => number;
  low: number;
  high: number;
  /** How far outside a range a reading is still taken for one. */
  near: number;
}

/**
 * @param factor what one of the question's unit is in SI
 */
export const scaleOf = (question: QuestionRow, factor: number): Scale => {
  const { lowest = 0, highest = 1, near = 0 } = question;
  const [least, most] = [lowest * factor, highest * factor];
  return question.scale === 'log'
    ? {
        at: (value) => Math.log10(Math.min(most, Math.max(least, value))),
        value: (place) => 10 ** place,
        low: Math.log10(least),
        high: Math.log10(most),
        near: Math.log10(near),
      }
    : {
        at: (value) => Math.min(most, Math.max(least, value)),
        value: (place) => place,
        low: least,
        high: most,
        near: near * factor,
      };
};

/** A range on a scale: within `from` to `to` usual, possible as far as `low` and `high`. */
export interface Span {
  row: LookRangeRow;
  low: number;
  from: number;
  to: number;
  high: number;
}

/** @param toSi what makes a number of the row one of the question's SI unit */
export const spanOf = (row: LookRangeRow, scale: Scale, toSi: number): Span => {
  const place = (value: number | undefined): number | undefined =>
    value === undefined ? undefined : scale.at(value * toSi);
  const low = place(row.low) ?? place(row.usual_low) ?? scale.low;
  const high = place(row.high) ?? place(row.usual_high) ?? scale.high;
  // A range that is open towards later years or larger values is usual as far as it goes.
  return {
    row,
    low,
    from: place(row.usual_low) ?? low,
    to: place(row.usual_high) ?? high,
    high,
  };
};

/** How usual a place is for a span, from 1 within what is usual to 0 well outside. */
export const fitsSpan = (span: Span, place: number, near: number, edge: number): number => {
  const { low, from, to, high } = span;
  if (place >= from && place <= to) return 1;
  const [end, inner] = place < from ? [low, from] : [high, to];
  const [past, wide] = [Math.abs(place - inner), Math.abs(end - inner)];
  if (past <= wide) return 1 - ((1 - edge) * past) / wide;
  // Without a fringe of the possible, what is usual ends here.
  const start = wide === 0 ? 1 : edge;
  return Math.max(0, start * (1 - (past - wide) / near));
};

/** The whole of a span under `fitsSpan`, in lengths of the scale. */
export const areaOf = ({ low, from, to, high }: Span, near: number, edge: number): number => {
  const fringe = (wide: number): number =>
    (wide * (1 + edge)) / 2 + (near * (wide === 0 ? 1 : edge)) / 2;
  return to - from + fringe(from - low) + fringe(high - to);
};
