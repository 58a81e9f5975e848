import type { ColourTables } from '../schemas/marking-colours.ts';
import type { FINISHES, POLARITY_MARKS } from '../schemas/drawings.ts';
import type { FormId } from './forms/index.ts';

/** An id of `markings/colours.csv`. */
export type ColourId = string;

/** What a drawing needs of a colour. */
export type Colour = Pick<ColourTables['colours'][number], 'name' | 'fill' | 'ink'>;

/** Finds a colour by its id. */
export type Colours = (id: ColourId) => Colour | undefined;

export type Finish = (typeof FINISHES)[number];
export type PolarityMark = (typeof POLARITY_MARKS)[number];

/**
 * A part to draw, as plain data. Sides are in millimetres and mean what they mean in `bodies.csv`:
 * `length` is the longer side on the board (the diameter of a can or disc, the axis of a tube),
 * `width` the shorter (thickness of a box or disc, diameter of a tube), `height` is above the board.
 */
export interface PartSpec {
  form: FormId;
  length: number;
  width: number;
  height: number;
  /** Between the leads, mm; a usual one for the form where it is not said. */
  pitch?: number | undefined;
  /** Across the wire or pin, mm; 0.6 where it is not said. */
  leadWire?: number | undefined;
  /** Lines as printed. May come from a visitor. */
  marking?: readonly string[] | undefined;
  /** Of the body. An empty colour, here and below, is one that is not known: it is left open. */
  colour?: ColourId | undefined;
  finish?: Finish | undefined;
  /** In the order in which they are read. */
  bands?: readonly ColourId[] | undefined;
  /** In the order in which they are read: from left to right, row by row. */
  dots?: readonly ColourId[] | undefined;
  /** Colour of the top of a disc or plate, or of one end. */
  tip?: ColourId | undefined;
  /** Colour of the other end of a rod. */
  otherTip?: ColourId | undefined;
  polarity?: PolarityMark | undefined;
  /** Where the notch of a dual in-line package points, as the board lies; left unless said. */
  notch?: 'left' | 'right' | 'up' | 'down' | undefined;
  /** Pins or lugs in all, where a form may have more or fewer. */
  pins?: number | undefined;
}
