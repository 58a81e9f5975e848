import { pointsOf, type Path, type Point } from './path.ts';

/** Outlines as SVG writes them, in few characters: pages have hundreds of them. */

/** Parts of a unit that are told apart, unless said otherwise. */
const FINE = 10;

/** A stroke from where the pen is, in whole parts of a unit; `s` is a curve that goes on as one ended. */
interface Step {
  command: 'm' | 'l' | 'c' | 's' | 'z';
  places: readonly Point[];
}

/** Whether one straight stroke goes on as another began. */
const goesOn = ([ax, ay]: Point, [bx, by]: Point): boolean =>
  ax * by === ay * bx && ax * bx + ay * by > 0;

/** Where a curve would be guided to, had it gone on as it ended. */
const guideOf = ({ command, places }: Step): Point | undefined => {
  const [[gx, gy], [x, y]] = [places.at(-2) ?? [0, 0], places.at(-1) ?? [0, 0]];
  return command === 'c' || command === 's' ? [x - gx, y - gy] : undefined;
};

const isSame = ([ax, ay]: Point, [bx, by]: Point): boolean => ax === bx && ay === by;
const goesNowhere = ({ places }: Step): boolean => places.every((place) => isSame(place, [0, 0]));

/**
 * Puts a stroke behind others: straight ones that go on are one, a curve that goes on as one ended
 * names no guide for that, and one within an outline that goes nowhere is none.
 */
const add = (steps: Step[], step: Step): void => {
  const [last, [by, ...others]] = [steps.at(-1), step.places];
  const isWithin = last !== undefined && last.command !== 'm' && last.command !== 'z';
  if (by === undefined || !isWithin) {
    steps.push(step);
    return;
  }
  if (goesNowhere(step)) return;
  const [before] = last.places;
  const guide = guideOf(last);
  if (step.command === 'l' && last.command === 'l' && before !== undefined && goesOn(before, by))
    steps[steps.length - 1] = { command: 'l', places: [[before[0] + by[0], before[1] + by[1]]] };
  else if (step.command === 'c' && guide !== undefined && isSame(guide, by))
    steps.push({ command: 's', places: others });
  else steps.push(step);
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

/** A number without a nought before the point. */
const print = (number: number): string => String(number).replace(/^(-?)0\./, '$1.');

/** Numbers one behind the other: a sign, or a point behind a point, parts them by itself. */
const joined = (numbers: readonly number[]): string =>
  numbers.map(print).reduce((text, number) => {
    const parts = number.startsWith('-') || (number.startsWith('.') && /\.\d+$/.test(text));
    return text === '' || parts ? text + number : `${text} ${number}`;
  }, '');

const stepText = ({ command, places }: Step, fine: number): string => {
  const [by, ...guides] = places.map(([x, y]): Point => [x / fine, y / fine]);
  if (by === undefined) return command;
  if (command === 'l' && by[1] === 0) return `h${print(by[0])}`;
  if (command === 'l' && by[0] === 0) return `v${print(by[1])}`;
  return command + joined([by, ...guides].flat());
};

/**
 * An outline as SVG writes it, at so many units a millimetre.
 * @param fine parts of a unit that are told apart
 */
export const written = (path: Path, scale: number, [dx, dy]: Point, fine = FINE): string =>
  stepsOf(path, ([x, y]) => [
    Math.round((x * scale + dx) * fine),
    Math.round((y * scale + dy) * fine),
  ])
    .map((step) => stepText(step, fine))
    .join('');
