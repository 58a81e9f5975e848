import { scaleLinear, scaleLog } from 'd3-scale';
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

const isPower = (value: number): boolean => {
  const exponent = Math.log10(value);
  return Math.abs(exponent - Math.round(exponent)) < 1e-9;
};

const isStep = (value: number): boolean => /^[125]/.test(value.toExponential());

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

/** From here on a logarithmic axis in seconds is marked in larger units. */
const LONG = 100;

/** A scale from the ends of what is drawn to the ends of the place for it. */
export const plotScale = (
  kind: 'log' | 'linear',
  domain: readonly [number, number],
  place: readonly [number, number],
  { count = 6, isTime = false }: Marked = {},
): PlotScale => {
  if (kind === 'linear') {
    const unit = isTime ? timeUnit(domain[1]) : 1;
    const inUnits = scaleLinear(
      domain.map((end) => end / unit),
      [0, 1],
    ).nice(count);
    const [from = 0, to = 1] = inUnits.domain().map((end) => end * unit);
    const at = scaleLinear([from, to], [...place]);
    return { at, ticks: inUnits.ticks(count).map((tick) => tick * unit) };
  }
  const scale = scaleLog([...domain], [...place]);
  const [from = 1, to = 10] = scale.domain();
  const decades = Math.abs(Math.log10(to / from));
  const ticks = scale.ticks().filter(decades >= MANY_DECADES ? isPower : isStep);
  const marks = isTime && to >= LONG ? timeMarks(ticks, from, to, decades < MANY_DECADES) : ticks;
  return { at: scale, ticks: thinned(marks) };
};
