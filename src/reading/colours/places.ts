import { extentOf, type Extent } from '../../drawing/path.ts';
import type { View } from '../../drawing/shape.ts';

/** How the places of a part lie to each other, which decides where their names go. */
export type Arrangement = 'row' | 'column' | 'grid';

/** One coloured place of a drawing, px about the middle of the part on the board. */
export interface PlaceBox extends Extent {
  /** Middle. */
  x: number;
  y: number;
  /** Whether the form itself does not draw it, so that a dot is laid over it. */
  laidOver?: boolean;
}

const boxOf = ({ left, top, right, bottom }: Extent, scale: number): PlaceBox => ({
  left: left * scale,
  top: top * scale,
  right: right * scale,
  bottom: bottom * scale,
  x: ((left + right) / 2) * scale,
  y: ((top + bottom) / 2) * scale,
});

/** Radius of a dot that the form itself does not draw, as a share of what it is on. */
const DOT = 0.2;

/** The body itself, which is drawn before everything on it. */
const bodyOf = (view: View, scale: number): PlaceBox | undefined => {
  const shape = view.shapes.find(({ fill }) => fill === 'body');
  return shape === undefined ? undefined : boxOf(extentOf(shape.path), scale);
};

/**
 * Where places of a view are; one that the form does not draw is a dot on the place before it.
 * @param names as in `painted` of colour-layouts.csv
 */
export const placesIn = (
  view: View,
  names: readonly string[],
  scale: number,
): (PlaceBox | undefined)[] => {
  const boxes: (PlaceBox | undefined)[] = [];
  for (const name of names) {
    const shape = view.shapes.find(({ place }) => place === name);
    const before = boxes.at(-1);
    if (shape !== undefined) boxes.push(boxOf(extentOf(shape.path), scale));
    else if (name === 'colour') boxes.push(bodyOf(view, scale));
    else if (before === undefined) boxes.push(undefined);
    else {
      const { x, y, bottom, top } = before;
      const radius = (bottom - top) * DOT;
      boxes.push({
        x,
        y,
        left: x - radius,
        right: x + radius,
        top: y - radius,
        bottom: y + radius,
      });
    }
  }
  return boxes;
};

const apart = (numbers: readonly number[]): boolean =>
  Math.max(...numbers) - Math.min(...numbers) > 4;

/** How places lie to each other. */
export const arrangementOf = (boxes: readonly PlaceBox[]): Arrangement => {
  if (!apart(boxes.map(({ y }) => y))) return 'row';
  return apart(boxes.map(({ x }) => x)) ? 'grid' : 'column';
};
