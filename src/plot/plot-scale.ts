import { decadeMarks, roundedOut, roundMarks, type Ends } from './round-marks.ts';
import { timeMarks, timeUnit } from './time-steps.ts';

/** Where values of one axis stand in a drawing, and the marks along it. */
export interface PlotScale {
  at: (value: number) => number;
  ticks: readonly number[];
}

/** Decades shown by their powers of ten alone from here on. */
const MANY_DECADES = 3;
/** And by every second, third … one where there are more than so many. */
const MOST_TICKS = 8;

const thinned = (ticks: readonly number[]): number[] => {
  const every = Math.ceil(ticks.length / MOST_TICKS);
  return ticks.filter((_, index) => index % every === 0);
};

interface Marked {
  /** About how many marks a plain axis has. */
  count?: number;
  /** The axis is one of seconds, marked in minutes, hours and years where they are many. */
  isTime?: boolean;
}

/** Where a share of the way between two ends is in the place for it. */
const placed =
  ([from, to]: Ends, share: (value: number) => number) =>
  (value: number): number =>
    from + (to - from) * share(value);

/** How far a number is from one end to the other, 0 to 1; halfway where both are one. */
const shareOf = (value: number, [from, to]: Ends): number =>
  from === to ? 0.5 : (value - from) / (to - from);

/** From here on a logarithmic axis in seconds is marked in larger units. */
const LONG = 100;

/** Fewest marks that tell how an axis goes. */
const FEWEST = 2;

/** Round marks of a piece of an axis: about so many, or more where those are too few. */
const marksOfPiece = (domain: Ends, count: number): number[] => {
  const marks = roundMarks(domain, count);
  return marks.length < FEWEST && domain[0] < domain[1] ? marksOfPiece(domain, count + 1) : marks;
};

/** Marks of an axis of decades; where it has but a piece of one, round ones between its ends. */
const marksOfDecades = (domain: Ends, isTime: boolean): number[] => {
  const [from, to] = domain;
  const areMany = Math.log10(to / from) >= MANY_DECADES;
  const plain = decadeMarks(domain, areMany);
  const marks = isTime && to >= LONG ? timeMarks(plain, from, to, !areMany) : plain;
  return marks.length < FEWEST ? marksOfPiece(domain, FEWEST + 1) : thinned(marks);
};

/** A scale from the ends of what is drawn to the ends of the place for it. */
export const plotScale = (
  kind: 'log' | 'linear',
  domain: Ends,
  place: Ends,
  { count = 6, isTime = false }: Marked = {},
): PlotScale => {
  if (kind === 'linear') {
    const unit = isTime ? timeUnit(domain[1]) : 1;
    const inUnits = roundedOut([domain[0] / unit, domain[1] / unit], count);
    return {
      at: placed(place, (value) => shareOf(value / unit, inUnits)),
      ticks: roundMarks(inUnits, count).map((tick) => tick * unit),
    };
  }
  const powers: Ends = [Math.log(domain[0]), Math.log(domain[1])];
  return {
    at: placed(place, (value) => shareOf(Math.log(value), powers)),
    ticks: marksOfDecades(domain, isTime),
  };
};
