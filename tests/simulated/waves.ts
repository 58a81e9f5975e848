/** What a simulation gave: columns of equal length by name, such as `time`, `v(out)`, `i(v1)`. */
export interface Waves {
  real: ReadonlyMap<string, readonly number[]>;
  /** Imaginary parts, in an analysis over frequency only. */
  imaginary: ReadonlyMap<string, readonly number[]>;
}

const columnOf = (columns: Waves['real'], name: string): readonly number[] => {
  const column = columns.get(name);
  if (column === undefined || column.length === 0) {
    throw new Error(`no column ${name}; there are ${[...columns.keys()].join(', ')}`);
  }
  return column;
};

/** A column of real numbers, or the real parts. */
export const realOf = (waves: Waves, name: string): readonly number[] => columnOf(waves.real, name);

/** The only or last value of a column. */
export const lastOf = (waves: Waves, name: string): number => realOf(waves, name).at(-1) ?? NaN;

const sampleAt = (column: readonly number[], index: number): number => column[index] ?? NaN;

/**
 * Value of a column at a place on another that rises, straight between two steps of the solver.
 * @throws when the place lies outside what was simulated
 */
export const valueAt = (waves: Waves, name: string, place: number, along = 'time'): number => {
  const axis = realOf(waves, along);
  const column = realOf(waves, name);
  const after = axis.findIndex((x) => x >= place);
  if (after < 0 || place < sampleAt(axis, 0)) throw new Error(`${along} ${place} not simulated`);
  if (after === 0) return sampleAt(column, 0);
  const [x0, x1] = [sampleAt(axis, after - 1), sampleAt(axis, after)];
  const [y0, y1] = [sampleAt(column, after - 1), sampleAt(column, after)];
  return y0 + ((y1 - y0) * (place - x0)) / (x1 - x0);
};

/** Values of a column at times from one to another, s, both included where a step falls on them. */
export const between = (waves: Waves, name: string, from: number, to: number): number[] => {
  const time = realOf(waves, 'time');
  return realOf(waves, name).filter((_, index) => {
    const t = sampleAt(time, index);
    return t >= from && t <= to;
  });
};

/** Magnitude and phase (degrees) of each point of an analysis over frequency. */
export const polarOf = (waves: Waves, name: string): { magnitude: number; phase: number }[] => {
  const imaginary = columnOf(waves.imaginary, name);
  return realOf(waves, name).map((re, index) => {
    const im = sampleAt(imaginary, index);
    return { magnitude: Math.hypot(re, im), phase: (Math.atan2(im, re) * 180) / Math.PI };
  });
};

/** Times (s) at which a column rises through a level, straight between two steps. */
export const risesThrough = (waves: Waves, name: string, level: number): number[] => {
  const time = realOf(waves, 'time');
  const column = realOf(waves, name);
  return time.slice(1).flatMap((t1, index) => {
    const [y0, y1] = [sampleAt(column, index), sampleAt(column, index + 1)];
    const t0 = sampleAt(time, index);
    return y0 < level && y1 >= level ? [t0 + ((t1 - t0) * (level - y0)) / (y1 - y0)] : [];
  });
};

/**
 * Peak value of one harmonic of a column, by Fourier's integral over the last whole periods.
 * @param fundamental Hz
 * @param order 1 for the fundamental
 * @param periods whole periods taken, from the end backwards
 */
export const harmonicOf = (
  waves: Waves,
  name: string,
  fundamental: number,
  order: number,
  periods: number,
): number => {
  const STEPS = 4096 * periods;
  const end = lastOf(waves, 'time');
  const start = end - periods / fundamental;
  const time = realOf(waves, 'time');
  const column = realOf(waves, name);
  let [cosine, sine, after] = [0, 0, 1];
  for (let step = 0; step < STEPS; step += 1) {
    const t = start + ((end - start) * step) / STEPS;
    while (sampleAt(time, after) < t) after += 1;
    const [t0, t1] = [sampleAt(time, after - 1), sampleAt(time, after)];
    const [y0, y1] = [sampleAt(column, after - 1), sampleAt(column, after)];
    const y = y0 + ((y1 - y0) * (t - t0)) / (t1 - t0);
    const angle = 2 * Math.PI * order * fundamental * t;
    cosine += y * Math.cos(angle);
    sine += y * Math.sin(angle);
  }
  return (2 * Math.hypot(cosine, sine)) / STEPS;
};
