/** A place on the grid of a drawing, from its upper left corner. */
export type Point = readonly [x: number, y: number];

/** Units of the drawing in one step of the grid. */
const STEP = 10;

/** A length on the grid in units of the drawing, to a tenth: finer than a screen shows. */
export const scaled = (length: number): string => String(Math.round(length * STEP * 10) / 10);

/** A place as a path of SVG writes it. */
const at = ([x, y]: Point): string => `${scaled(x)} ${scaled(y)}`;

/** Straight strokes from place to place. */
export const strokes = (...points: Point[]): string => `M${points.map(at).join('L')}`;

/** Straight strokes that come back to where they began. */
export const outline = (...points: Point[]): string => `${strokes(...points)}z`;

/** A circle about a place. */
export const circle = ([x, y]: Point, radius: number): string => {
  const arc = `a${scaled(radius)} ${scaled(radius)} 0 1 0`;
  return `M${at([x - radius, y])}${arc} ${scaled(2 * radius)} 0${arc} ${scaled(-2 * radius)} 0z`;
};

/** A part lying between two places, in its own coordinates. */
export interface Axis {
  /** A place so far along from the middle towards the second end, and so far to the side. */
  to: (along: number, side?: number) => Point;
  /** Half of the distance between the ends. */
  half: number;
  /** Whether it lies rather than stands. */
  lies: boolean;
}

/**
 * The axis of a part from one end to the other. To the side counts upwards of a part that runs to
 * the right, and to the right of one that runs down.
 */
export const axis = ([ax, ay]: Point, [bx, by]: Point): Axis => {
  const length = Math.hypot(bx - ax, by - ay);
  const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
  const [mx, my] = [(ax + bx) / 2, (ay + by) / 2];
  return {
    to: (along, side = 0) => [mx + along * dx + side * dy, my + along * dy - side * dx],
    half: length / 2,
    lies: Math.abs(dx) >= Math.abs(dy),
  };
};
