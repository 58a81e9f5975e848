import { pointsOf, type Path, type Point } from './path.ts';

/** Outlines as SVG writes them, in few characters: pages have hundreds of them. */

/** Parts of a unit that are told apart. */
const FINE = 10;

/** A stroke from where the pen is, in whole tenths of a unit. */
interface Step {
  command: 'm' | 'l' | 'c' | 'z';
  places: readonly Point[];
}

/** Whether one straight stroke goes on as another began. */
const goesOn = ([ax, ay]: Point, [bx, by]: Point): boolean =>
  ax * by === ay * bx && ax * bx + ay * by > 0;

/** Puts a stroke behind others: straight ones that go on are one, and one within a line that goes nowhere is none. */
const add = (steps: Step[], step: Step): void => {
  const [last, by] = [steps.at(-1), step.places[0]];
  const before = last?.command === 'l' && step.command === 'l' ? last.places[0] : undefined;
  if (before === undefined || by === undefined) steps.push(step);
  else if (goesOn(before, by))
    steps[steps.length - 1] = { command: 'l', places: [[before[0] + by[0], before[1] + by[1]]] };
  else if (by[0] !== 0 || by[1] !== 0) steps.push(step);
};

const stepsOf = (path: Path, whole: (point: Point) => Point): Step[] => {
  let [pen, start]: [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  const steps: Step[] = [];
  for (const stroke of path) {
    const from = pen;
    const ends = pointsOf(stroke).map(whole);
    pen = stroke[0] === 'Z' ? start : (ends.at(-1) ?? pen);
    if (stroke[0] === 'M') start = pen;
    add(steps, {
      command: stroke[0].toLowerCase() as Step['command'],
      places: ends.map(([x, y]): Point => [x - from[0], y - from[1]]),
    });
  }
  return steps;
};

/** Tenths without a nought before the point. */
const print = (tenths: number): string => String(tenths / FINE).replace(/^(-?)0\./, '$1.');

/** Numbers one behind the other: a sign, or a point behind a point, parts them by itself. */
const joined = (numbers: readonly number[]): string =>
  numbers.map(print).reduce((text, number) => {
    const parts = number.startsWith('-') || (number.startsWith('.') && /\.\d+$/.test(text));
    return text === '' || parts ? text + number : `${text} ${number}`;
  }, '');

const stepText = ({ command, places: [by, ...guides] }: Step): string => {
  if (by === undefined) return command;
  if (command === 'l' && by[1] === 0) return `h${print(by[0])}`;
  if (command === 'l' && by[0] === 0) return `v${print(by[1])}`;
  return command + joined([by, ...guides].flat());
};

/** An outline as SVG writes it, at so many units a millimetre, to a tenth of a unit. */
export const written = (path: Path, scale: number, [dx, dy]: Point): string =>
  stepsOf(path, ([x, y]) => [
    Math.round((x * scale + dx) * FINE),
    Math.round((y * scale + dy) * FINE),
  ])
    .map(stepText)
    .join('');
