/** A value with what it may be instead, in the unit that the axis prints. */
export interface PlotPoint {
  x: number;
  y: number;
  low: number;
  high: number;
}

export interface PlotAxis {
  label: string;
  scale: 'log' | 'linear';
  /** Its values are seconds. */
  isTime?: boolean;
  /** A value as people read it, with its unit. */
  print: (value: number) => string;
}

export interface PlotCurve {
  label: string;
  /** A line unless given; steps hold a value until the next point; dots stand for themselves. */
  as?: 'line' | 'steps' | 'dots';
  points: readonly PlotPoint[];
}

/** Curves over one axis, all of one unit. */
export interface Plot {
  title: string;
  x: PlotAxis;
  y: PlotAxis;
  curves: readonly PlotCurve[];
  /** The reader's own point on each curve. */
  points: readonly { x: number; y: number }[];
  limits: readonly { label: string; value: number }[];
}
