/** One line of the table; `beside` is what the figure may be at most, or what a peer takes. */
export type Row = readonly [what: string, figure: string, unit: string, beside?: string];

/** Runs of which the median is told. */
export const RUNS = 5;
/** In a second, and as many microseconds in each. */
export const MILLISECONDS = 1000;

/** The value that a share of them stay below, from 0 to 1; not a number where there is none. */
export const quantile = (values: readonly number[], share: number): number => {
  const rising = values.toSorted((a, b) => a - b);
  return rising[Math.round((rising.length - 1) * share)] ?? NaN;
};

/** The middle of several measurements. */
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Processor time that some work takes, ms. */
export const timed = (work: () => unknown): number => {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / MILLISECONDS;
};

/** The processor time of each of several runs, ms. */
export const repeat = (times: number, work: () => unknown): number[] =>
  Array.from({ length: times }, () => timed(work));

/** A number to three digits, or four where it is large. */
export const show = (value: number): string =>
  value.toLocaleString('en', { maximumSignificantDigits: value < 1000 ? 3 : 4 });

/** Calls per second of something that is done to each of some inputs, many times over. */
export const rate = <Input>(
  what: string,
  unit: string,
  inputs: readonly Input[],
  rounds: number,
  work: (input: Input) => unknown,
): Row => {
  const everyInput = (): void => {
    for (let round = 0; round < rounds; round += 1) inputs.forEach(work);
  };
  everyInput();
  const perSecond = (inputs.length * rounds * MILLISECONDS) / median(repeat(RUNS, everyInput));
  return [what, show(perSecond), unit];
};
