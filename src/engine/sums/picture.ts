import type { Unit } from '../quantities/index.ts';

/** A level line in a plot that a curve is held against. */
export interface PlotLimit {
  label: string;
  /** SI, of the vertical axis. */
  value: number;
}

/** A curve as points of its typical value, each with what the other inputs' ranges make of it. */
export interface Curve {
  label: string;
  /** line unless given; steps hold a value until the next point; dots stand for themselves. */
  as?: 'line' | 'steps' | 'dots';
  points: readonly { x: number; y: number; low: number; high: number }[];
}

interface Axis {
  label: string;
  unit: Unit;
  scale: 'log' | 'linear';
}

/** All that a plot of a sum shows, in SI units. */
export interface SumPlot {
  title: string;
  x: Axis;
  y: Axis;
  curves: readonly Curve[];
  /** The visitor's own point, on each curve. */
  points: readonly { x: number; y: number }[];
  limits: readonly PlotLimit[];
}

/** A point of a curve without width. */
export const dot = (x: number, y: number): Curve['points'][number] => ({ x, y, low: y, high: y });
