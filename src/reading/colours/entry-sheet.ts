import type { View } from '../../drawing/shape.ts';
import type { Colours, PartSpec } from '../../drawing/spec.ts';
import { toTenth } from '../../drawing/to-tenth.ts';
import { h, type Element } from '../../markup/node.ts';
import type { Arrangement, PlaceBox } from './places.ts';
import type { ColourState } from './state.ts';

/** Width of the drawing, px. */
export const WIDTH = 340;
/** Size of names and their distance from what they name, px. */
export const NAME = 13;
export const OFF = 8;
/** From one line of names to the next, px. */
export const LINE = 16;
/** Room above and below the body, px. */
export const ABOVE = 36;
export const BELOW = 42;
/** One view of the part with the places that are on it. */
export interface Side {
  view: View;
  /** The place's number and where it is. */
  places: { at: number; box: PlaceBox }[];
  arrangement: Arrangement;
}

/** What all pieces of a drawing go by. */
export interface Page {
  state: ColourState;
  colours: Colours;
  /** Number of the place that is being set. */
  current: number;
  spec: PartSpec;
  /** Px to the millimetre. */
  scale: number;
  /** Edges of the body, px. */
  bottom: number;
  right: number;
  top: number;
  /** The line below the body that each name stands in. */
  lines: ReadonlyMap<number, number>;
}

/** Words in ink about a place, px. */
export const text = (
  words: string,
  x: number,
  y: number,
  more: Readonly<Record<string, string | number | undefined>> = {},
): Element =>
  h(
    'text',
    { x: toTenth(x), y: toTenth(y), 'font-size': NAME, 'text-anchor': 'middle', ...more },
    words,
  );
