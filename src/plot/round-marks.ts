/** Share of a step by which a mark may miss the end of an axis: rounding only. */
const MISSED = 1e-9;

/** Digits that a mark is kept to, so that 3 times 0.1 is 0.3. */
const DIGITS = 12;

/** The ends of an axis, the lower one first. */
export type Ends = readonly [from: number, to: number];

/**
 * What lies between round marks of which a span, above 0, has about so many: 1, 2 or 5 in some decade,
 * whichever is nearest in ratio.
 */
const stepFor = (span: number, count: number): number => {
  const rough = span / count;
  const power = Math.floor(Math.log10(rough));
  const share = rough / 10 ** power;
  // Read from digits, so that ten times a decade is the next one to the last bit.
  if (share >= Math.sqrt(5 * 10)) return Number(`1e${String(power + 1)}`);
  if (share >= Math.sqrt(2 * 5)) return Number(`5e${String(power)}`);
  return Number(`${share >= Math.sqrt(2) ? '2' : '1'}e${String(power)}`);
};

/** Multiples of a step from one end to the other. */
const multiples = ([from, to]: Ends, step: number): number[] => {
  const first = Math.ceil(from / step - MISSED);
  const last = Math.floor(to / step + MISSED);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) =>
    Number(((first + index) * step).toPrecision(DIGITS)),
  );
};

/** About so many round marks between two ends; the end alone where both are one. */
export const roundMarks = (ends: Ends, count: number): number[] => {
  const [from, to] = ends;
  return from < to ? multiples(ends, stepFor(to - from, count)) : [from];
};

/** Two ends moved outwards to round marks. */
export const roundedOut = ([from, to]: Ends, count: number): Ends => {
  if (!(from < to)) return [from, to];
  const step = stepFor(to - from, count);
  const wider: Ends = [
    Math.floor(from / step + MISSED) * step,
    Math.ceil(to / step - MISSED) * step,
  ];
  // A wider span may ask for a longer step.
  return stepFor(wider[1] - wider[0], count) === step ? wider : roundedOut(wider, count);
};

/** 1, 2 and 5 in every decade between two ends above 0; of many decades the powers of ten alone. */
export const decadeMarks = ([from, to]: Ends, many: boolean): number[] => {
  const marks: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.ceil(Math.log10(to)); power += 1)
    for (const figure of many ? [1] : [1, 2, 5]) {
      const mark = Number(`${figure}e${power}`);
      if (mark >= from * (1 - MISSED) && mark <= to * (1 + MISSED)) marks.push(mark);
    }
  return marks;
};
