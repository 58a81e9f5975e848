import { ellipse, mapped, rectangle, segment, type Point } from '../path.ts';
import { inner, solid, type Note, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** Between neighbouring pins, mm. */
const STEP = 2.54;

/** Pin 1 is at the lower left beside the notch; the numbers run round against the clock. */
const above = (spec: PartSpec): View => {
  const { length, width } = spec;
  const pins = spec.pins ?? 8;
  const row = pins / 2;
  const reach = ((spec.pitch ?? width + 1.3) - width) / 2;
  const [half, wide, thick] = [width / 2, 1.3, reach + 0.2];
  const xs = Array.from({ length: row }, (_, i) => (i - (row - 1) / 2) * STEP);
  const legs = (y: number): Shape[] =>
    xs.map((x) => solid(rectangle([x - wide / 2, y], wide, thick, 0.1), 'metal'));
  const note = (text: string, x: number, below: boolean): Note => ({
    text,
    at: [x, below ? reach : -width - reach],
    side: below ? 'below' : 'above',
  });
  const [first = 0] = xs;
  const last = xs.at(-1) ?? 0;
  return {
    name: 'above',
    from: -length / 2,
    shapes: [
      ...legs(-0.2),
      ...legs(-width - reach),
      solid(rectangle([-length / 2, -width], length, width, 0.3), 'body'),
      inner(segment([-length / 2, -half], 0.8, 0.8, -Math.PI / 2, Math.PI / 2)),
      inner(ellipse([-length / 2 + 1, -1], 0.4)),
    ],
    print: { at: [0.4, -half - 0.3], width: length - 2.8, height: width * 0.66 },
    notes: [
      note('1', first, true),
      note(String(row), last, true),
      note(String(row + 1), last, false),
      note(String(pins), first, false),
    ],
  };
};

type Side = Note['side'];

/** How a direction from the middle turns, and the sides of notes with it, by where the notch points. */
const TURNS: Readonly<
  Record<
    'right' | 'up' | 'down',
    { turn: (point: Point) => Point; above: Side; below: Side; upright: boolean }
  >
> = {
  right: { turn: ([x, y]) => [-x, -y], above: 'below', below: 'above', upright: false },
  up: { turn: ([x, y]) => [-y, x], above: 'right', below: 'left', upright: true },
  down: { turn: ([x, y]) => [y, -x], above: 'left', below: 'right', upright: true },
};

/** The same view as the board lies: the notch where it points there. */
const asItLies = (spec: PartSpec): View => {
  const view = above(spec);
  const { notch = 'left', length, width } = spec;
  if (notch === 'left') return view;
  const { turn, upright, ...sides } = TURNS[notch];
  const [wide, high] = upright ? [width, length] : [length, width];
  const placed = ([x, y]: Point): Point => {
    const [dx, dy] = turn([x, y + width / 2]);
    return [dx, dy - high / 2];
  };
  const { print } = view;
  return {
    ...view,
    from: -wide / 2,
    shapes: view.shapes.map((shape) => ({ ...shape, path: mapped(shape.path, placed) })),
    ...(print === undefined
      ? {}
      : {
          print: upright
            ? { at: [0, -high / 2], width: width * 0.86, height: length * 0.3 }
            : { ...print, at: placed(print.at) },
        }),
    notes: (view.notes ?? []).map((note) => ({
      ...note,
      at: placed(note.at),
      side: note.side === 'above' ? sides.above : sides.below,
    })),
  };
};

const end = (spec: PartSpec): View => {
  const { width, height } = spec;
  const span = (spec.pitch ?? width + 1.3) / 2;
  const leg = (side: number): Shape =>
    solid(
      [
        ['M', [side * (width / 2 - 0.2), -height * 0.55]],
        ['L', [side * (span - 0.05), -height * 0.55]],
        ['L', [side * (span + 0.15), -height * 0.35]],
        ['L', [side * (span + 0.15), 3]],
        ['L', [side * (span - 0.15), 3]],
        ['L', [side * (span - 0.15), -height * 0.55 + 0.3]],
        ['L', [side * (width / 2 - 0.2), -height * 0.55 + 0.3]],
        ['Z'],
      ],
      'metal',
    );
  return {
    name: 'side',
    from: -width / 2,
    shapes: [
      leg(-1),
      leg(1),
      solid(
        [
          ['M', [-width / 2 + 0.25, -height]],
          ['L', [width / 2 - 0.25, -height]],
          ['L', [width / 2, -height * 0.5]],
          ['L', [width / 2 - 0.25, -0.4]],
          ['L', [-width / 2 + 0.25, -0.4]],
          ['L', [-width / 2, -height * 0.5]],
          ['Z'],
        ],
        'body',
      ),
    ],
  };
};

/** A dual in-line package, its notch to the left unless it is said where it points. */
export const dip: Form = {
  name: 'dual in-line package',
  views: (spec) => [asItLies(spec), end(spec)],
};
