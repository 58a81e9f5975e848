/** The span of a quantity that an axis shows, and where its marks stand. All values in one unit. */
export interface Axis {
  min: number;
  max: number;
  scale: 'log' | 'linear';
  ticks: number[];
}

const decade = (value: number): number => Math.floor(Math.log10(value) + 1e-9);

const logTicks = (min: number, max: number): number[] => {
  const first = Math.ceil(Math.log10(min) - 1e-9);
  return Array.from({ length: decade(max) - first + 1 }, (_, i) => Number(`1e${first + i}`));
};

const linearTicks = (min: number, max: number): number[] => {
  const rough = (max - min) / 4;
  const power = 10 ** decade(rough);
  const step = ([1, 2, 5, 10].find((digit) => digit * power >= rough) as number) * power;
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  // Dividing by the reciprocal keeps 0.1 steps free of 0.30000000000000004.
  return Array.from({ length: last - first + 1 }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
};

/** Values beyond this, either way, are more or less than can be told, and no axis reaches so far. */
const BEYOND = 1e100;

/** Whether a value has a place on an axis. */
const isShown = (value: number): boolean =>
  value === 0 || (Math.abs(value) < BEYOND && Math.abs(value) > 1 / BEYOND);

/**
 * The axis that shows all of the given values: whole decades where it is logarithmic and the values
 * are above zero, round steps otherwise. Values too large or too small to be told are passed over.
 */
export const axisOver = (values: readonly number[], scale: 'log' | 'linear'): Axis => {
  const finite = values.filter(isShown);
  const positive = finite.filter((value) => value > 0);
  if (scale === 'log' && positive.length > 0) {
    const min = 10 ** decade(Math.min(...positive));
    const max = 10 ** Math.ceil(Math.log10(Math.max(...positive)) - 1e-9);
    const top = max > min ? max : min * 10;
    return { min, max: top, scale, ticks: logTicks(min, top) };
  }
  const low = Math.min(0, ...finite);
  const high = Math.max(0, ...finite);
  const top = high > low ? high : low + 1;
  return { min: low, max: top, scale: 'linear', ticks: linearTicks(low, top) };
};

/** How far along the axis a value stands, 0 to 1; what lies beyond an end is put at that end. */
export const placeOn = (axis: Axis, value: number): number => {
  const share =
    axis.scale === 'log'
      ? Math.log(Math.max(value, axis.min) / axis.min) / Math.log(axis.max / axis.min)
      : (value - axis.min) / (axis.max - axis.min);
  return Math.min(1, Math.max(0, share));
};
