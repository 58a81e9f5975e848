import type { Path, Point } from './path.ts';
import type { ColourId, PartSpec } from './spec.ts';

/**
 * What a surface is painted with: a colour by name, or a material; `print` is whatever is seen
 * against the body.
 */
export type Fill = { colour: ColourId } | 'body' | 'metal' | 'dark' | 'paper' | 'print';

/** One outline of a view. */
export interface Shape {
  path: Path;
  /** Nothing for a bare line. */
  fill?: Fill | undefined;
  /**
   * `ink`: an outline; `inner`: a line on the body, which must be seen against its colour; `none`:
   * the fill alone, as of a printed band.
   */
  line: 'ink' | 'inner' | 'none';
  /** Which coloured place of the part it is: `bands-0`, `dots-2`, `tip`, `colour`. */
  place?: string;
}

/** Room on a body for what is printed on it, mm, and what it is printed on. */
export interface Print {
  at: Point;
  width: number;
  height: number;
  /** Read from below to above, as on a slim can. */
  upright?: boolean;
}

/** A word in ink beside the body: a sign of polarity, the number of a pin. */
export interface Note {
  text: string;
  at: Point;
  /** Where of that place it stands. */
  side: 'above' | 'above-left' | 'above-right' | 'below' | 'left' | 'right';
}

/** One side of a part. */
export interface View {
  name: 'front' | 'side' | 'above' | 'below';
  /** From the back to the front. */
  shapes: readonly Shape[];
  /** Where the rule begins: the left edge of the body, mm. */
  from: number;
  print?: Print;
  notes?: readonly Note[];
}

/** An outline of a solid. */
export const solid = (path: Path, fill: Fill): Shape => ({ path, fill, line: 'ink' });

/** A line on the body. */
export const inner = (path: Path): Shape => ({ path, line: 'inner' });

/**
 * A coloured place of the part. Where its colour is not known it is an empty outline; where the
 * body has the same colour its edges are drawn as well.
 */
export const coloured = (
  path: Path,
  colour: ColourId | undefined,
  place: string,
  line: Shape['line'] = 'none',
): Shape => ({ path, fill: { colour: colour ?? UNKNOWN }, line, place });

/** Stands for a colour that is not known yet. */
export const UNKNOWN = '';

/** A band among several, by its number from the first. */
export const band = (path: Path, { bands, colour }: PartSpec, i: number): Shape => {
  const own = bands?.[i];
  return coloured(path, own, `bands-${String(i)}`, own === colour || !own ? 'inner' : 'none');
};

/** Paint without an outline of its own. */
export const paint = (path: Path, fill: Fill): Shape => ({ path, fill, line: 'none' });
