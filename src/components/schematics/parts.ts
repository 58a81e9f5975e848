import { h, type Element } from '../../markup/node.ts';
import { axis, circle, outline, scaled, strokes, type Axis, type Point } from './geometry.ts';
import { filled, label, stroke } from './marks.ts';

interface Named {
  /** Beside the part: above one that lies, to the right of one that stands. */
  name?: string;
  /** On the other side instead. */
  other?: boolean;
}

/** Leads from both ends to a body that is `body` long. */
const leads = ({ to, half }: Axis, body: number): string =>
  strokes(to(-half), to(-body / 2)) + strokes(to(body / 2), to(half));

/** Which side of a part is above it where it lies, or right of it where it stands. */
const nameSide = ({ to, lies }: Axis): 1 | -1 => {
  const [[x, y], [beside, above]] = [to(0), to(0, 1)];
  return (lies ? above < y : beside > x) ? 1 : -1;
};

/** The name of a part beside it, clear of a body that is `reach` wide to each side. */
const nameOf = (line: Axis, { name, other = false }: Named, reach: number): Element[] => {
  if (name === undefined) return [];
  const [x, y] = line.to(0, nameSide(line) * (other ? -reach : reach));
  // What stands lower in a name must clear the part as well.
  if (line.lies) return [label(name, [x, other ? y + 1.2 : y - (name.includes('_') ? 0.7 : 0.4)])];
  return [label(name, [x + (other ? -0.4 : 0.4), y + 0.4], other ? 'end' : 'start')];
};

const body = ({ to }: Axis, length: number, width: number): string =>
  outline(
    to(-length / 2, width / 2),
    to(length / 2, width / 2),
    to(length / 2, -width / 2),
    to(-length / 2, -width / 2),
  );

const RESISTOR = { length: 2.6, width: 1 };

/** A resistor, as a rectangle. */
export const resistor = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  return [
    stroke(leads(line, RESISTOR.length) + body(line, RESISTOR.length, RESISTOR.width)),
    ...nameOf(line, named, RESISTOR.width / 2),
  ];
};

const head = (tip: Point, towards: Axis, size = 0.8): Element => {
  const [along, across] = [towards.to(0), towards.to(-size, size * 0.4)];
  const back = towards.to(-size, -size * 0.4);
  const move = ([x, y]: Point): Point => [x - along[0] + tip[0], y - along[1] + tip[1]];
  return filled(outline(tip, move(across), move(back)));
};

/** A straight arrow that ends in a head. */
export const arrow = (from: Point, tip: Point): Element[] => [
  stroke(strokes(from, tip)),
  head(tip, axis(from, tip)),
];

/** A resistor that something else varies. */
export const variableResistor = (a: Point, b: Point, named: Named = {}): Element[] => {
  const { to } = axis(a, b);
  return [...resistor(a, b, named), ...arrow(to(-1.4, -1.3), to(1.4, 1.3))];
};

/** A potentiometer; its slider comes from a place beside its middle. */
export const potentiometer = (a: Point, b: Point, slider: Point, named: Named = {}): Element[] => {
  const { to } = axis(a, b);
  const middle = to(0);
  const gap = Math.hypot(slider[0] - middle[0], slider[1] - middle[1]);
  const reach = RESISTOR.width / 2 / gap;
  const tip: Point = [
    middle[0] + (slider[0] - middle[0]) * reach,
    middle[1] + (slider[1] - middle[1]) * reach,
  ];
  return [...resistor(a, b, named), ...arrow(slider, tip)];
};

const GAP = 0.7;
const PLATE = 1.1;

interface Capacitor extends Named {
  /** The first end is the positive one. */
  polar?: boolean;
}

const capacitorMarks = (
  a: Point,
  b: Point,
  { polar = false, ...named }: Capacitor,
  weight?: number,
): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  const plate = (along: number): string => strokes(to(along, -PLATE), to(along, PLATE));
  // The sign stands beside the positive plate, away from the name.
  const away = nameSide(line) * (named.other ? 0.85 : -0.85);
  const [x, y] = to(-GAP / 2 - 0.75, away);
  const sign = strokes([x - 0.4, y], [x + 0.4, y]) + strokes([x, y - 0.4], [x, y + 0.4]);
  return [
    stroke(leads(line, GAP) + (polar ? sign : '')),
    h('path', { 'stroke-width': weight, d: plate(-GAP / 2) + plate(GAP / 2) }),
    ...nameOf(line, named, PLATE),
  ];
};

/** A capacitor that only helps to see where the one in question sits. */
export const otherCapacitor = (a: Point, b: Point, options: Capacitor = {}): Element[] =>
  capacitorMarks(a, b, options);

/** Weight of the plates of the capacitor in question: what sees no colour sees this. */
const HEAVY = 2.6;

/** The capacitor in question; the first end is the positive one where it is polar. */
export const capacitor = (a: Point, b: Point, options: Capacitor = {}): Element[] => [
  h(
    'g',
    { class: 'here', stroke: 'currentColor' },
    capacitorMarks(a, b, { name: 'C', ...options }, HEAVY),
  ),
];

const TURNS = 4;
const TURN = 0.8;

/** A coil: half circles. */
export const coil = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  const length = TURNS * TURN;
  const places = Array.from({ length: TURNS + 1 }, (_, i) => to(-length / 2 + i * TURN));
  const radius = scaled(TURN / 2);
  const turns = places
    .slice(1)
    .map(([x, y]) => `A${radius} ${radius} 0 0 1 ${scaled(x)} ${scaled(y)}`);
  const start = strokes(...places.slice(0, 1));
  return [stroke(leads(line, length) + start + turns.join('')), ...nameOf(line, named, TURN / 2)];
};

/** The iron of a transformer, or of a choke, along a line. */
export const core = (a: Point, b: Point): Element[] => {
  const { to, half } = axis(a, b);
  return [-0.2, 0.2].map((side) => stroke(strokes(to(-half, side), to(half, side))));
};

const DIODE = { half: 0.7, width: 0.8 };

/** A diode, from its anode to its cathode. */
export const diode = (a: Point, b: Point, options: Named & { zener?: true } = {}): Element[] => {
  const line = axis(a, b);
  const { to, half } = line;
  const { half: tip, width } = DIODE;
  const hook = options.zener ? strokes(to(tip, -width), to(tip - 0.5, -width)) : '';
  return [
    stroke(
      strokes(to(-half), to(half)) +
        outline(to(-tip, width), to(tip), to(-tip, -width)) +
        strokes(to(tip, width), to(tip, -width)) +
        hook,
    ),
    ...nameOf(line, options, width),
  ];
};

/** A switch, open; its blade turns about the first end. */
export const openSwitch = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  return [
    stroke(
      leads(line, 2.8) +
        strokes(to(-1.4), to(1.1, line.lies ? 1.2 : -1.2)) +
        circle(to(1.4), 0.2) +
        circle(to(-1.4), 0.2),
    ),
    ...nameOf(line, named, line.lies ? 1.3 : 0.4),
  ];
};

/** A fuse: the wire goes through its body. */
export const fuse = (a: Point, b: Point): Element[] => {
  const line = axis(a, b);
  return [stroke(strokes(a, b) + body(line, RESISTOR.length, RESISTOR.width))];
};

/** A quartz crystal. */
export const crystal = (a: Point, b: Point): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  const plate = (along: number): string => strokes(to(along, -1), to(along, 1));
  return [stroke(leads(line, 2) + plate(-1) + plate(1) + body(line, 1.1, 2.2))];
};

const ROUND = 1.6;

const round = (line: Axis, inside: string): string =>
  leads(line, 2 * ROUND) + circle(line.to(0), ROUND) + inside;

/** A source of constant current. */
export const currentSource = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  return [stroke(round(line, strokes(to(0, -ROUND), to(0, ROUND)))), ...nameOf(line, named, ROUND)];
};

/** A lamp. */
export const lamp = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  const { to } = line;
  const d = ROUND * Math.SQRT1_2;
  return [
    stroke(round(line, strokes(to(-d, -d), to(d, d)) + strokes(to(-d, d), to(d, -d)))),
    ...nameOf(line, named, ROUND),
  ];
};

/** A moving-coil meter. */
export const meter = (a: Point, b: Point, named: Named = {}): Element[] => {
  const line = axis(a, b);
  const [x, y] = line.to(0);
  return [
    stroke(round(line, '')),
    ...arrow([x - 0.9, y + 0.9], [x + 0.8, y - 0.8]),
    ...nameOf(line, named, ROUND),
  ];
};

/** A loudspeaker, its leads above and below; three steps high. */
export const loudspeaker = ([x, y]: Point, name?: string): Element[] => [
  stroke(
    strokes([x, y], [x, y + 0.5]) +
      strokes([x, y + 2.5], [x, y + 3]) +
      outline([x - 0.6, y + 0.5], [x + 0.6, y + 0.5], [x + 0.6, y + 2.5], [x - 0.6, y + 2.5]) +
      strokes([x + 0.6, y + 0.5], [x + 2, y - 0.6], [x + 2, y + 3.6], [x + 0.6, y + 2.5]),
  ),
  ...(name === undefined ? [] : [label(name, [x + 2.5, y + 1.9], 'start')]),
];
