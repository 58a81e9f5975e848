import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font, type Glyph } from 'fontkitten';
import { inkOf, type Point } from './coverage.ts';
import { lay, type Picture } from './picture.ts';

/**
 * Letters in pictures. Pages are set in what a reader's machine has; a picture must bring its own, from
 * a face under an open licence, so that it looks alike wherever it is built.
 */

const FOLDER = '@fontsource/source-sans-3/files/source-sans-3';
const SCRIPTS = ['latin', 'greek', 'cyrillic'];
/** Straight pieces that a curve is drawn with. */
const PIECES = 6;
const UNKNOWN = '?';

export type Weight = 400 | 600;

const require = createRequire(import.meta.url);

const load = (weight: Weight): Font[] =>
  SCRIPTS.map((script) => {
    const font = create(
      readFileSync(require.resolve(`${FOLDER}-${script}-${weight}-normal.woff2`)),
    );
    if (font.isCollection) throw new Error(`the face for ${script} is a collection`);
    return font;
  });

const faces: Readonly<Record<Weight, readonly Font[]>> = { 400: load(400), 600: load(600) };

const faceOf = (letter: string, weight: Weight): Font | undefined =>
  faces[weight].find((face) => face.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0));

/**
 * The outline of a letter, or of a question mark where no face has it, in units of its face, and how
 * far the next one is.
 */
const outlineOf = (letter: string, weight: Weight): { font: Font; glyph: Glyph } => {
  const font = faceOf(letter, weight);
  if (font !== undefined)
    return { font, glyph: font.glyphForCodePoint(letter.codePointAt(0) ?? 0) };
  if (letter === UNKNOWN) throw new Error('the face has no question mark');
  return outlineOf(UNKNOWN, weight);
};

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

/** A point of a curve by repeated division of the lines between its points (de Casteljau). */
const onCurve = (points: readonly Point[], share: number): Point => {
  const [first = [0, 0]] = points;
  if (points.length < 2) return first;
  const nearer = points.slice(1).map((to, at): Point => {
    const from = points[at] ?? to;
    return [between(from[0], to[0], share), between(from[1], to[1], share)];
  });
  return onCurve(nearer, share);
};

/** Closed outlines as straight pieces. */
const flattened = ({ path }: Glyph, place: (x: number, y: number) => Point): Point[][] => {
  const outlines: Point[][] = [];
  for (const { command, args } of path.commands) {
    if (command === 'closePath') continue;
    const points = Array.from({ length: args.length / 2 }, (_, at) =>
      place(args[at * 2] ?? 0, args[at * 2 + 1] ?? 0),
    );
    if (command === 'moveTo') outlines.push(points);
    else {
      const outline = outlines.at(-1);
      const from = outline?.at(-1);
      if (outline === undefined || from === undefined) continue;
      const pieces = points.length === 1 ? 1 : PIECES;
      for (let piece = 1; piece <= pieces; piece += 1)
        outline.push(onCurve([from, ...points], piece / pieces));
    }
  }
  return outlines;
};

interface Letter {
  picture: Picture;
  /** Pixels to the next letter. */
  advance: number;
}

const drawn = new Map<string, Letter>();

/** Pixels that are left free round a letter, for what reaches beyond its width. */
const MARGIN = 4;

const draw = (letter: string, size: number, weight: Weight): Letter => {
  const key = `${letter}${size} ${weight}`;
  const known = drawn.get(key);
  if (known !== undefined) return known;
  const { font, glyph } = outlineOf(letter, weight);
  const scale = size / font.unitsPerEm;
  const advance = glyph.advanceWidth * scale;
  const outlines = flattened(glyph, (x, y) => [MARGIN + x * scale, (font.ascent - y) * scale]);
  const height = Math.ceil((font.ascent - font.descent) * scale);
  const made = { advance, picture: inkOf(outlines, Math.ceil(advance) + 2 * MARGIN, height) };
  drawn.set(key, made);
  return made;
};

/** Width of a text, px. */
export const widthOf = (text: string, size: number, weight: Weight): number =>
  [...text].reduce((sum, letter) => sum + draw(letter, size, weight).advance, 0);

/** Writes a line into a picture. @param top of the line, px */
export const write = (
  text: string,
  onto: Picture,
  at: { left: number; top: number; size: number; weight: Weight },
): void => {
  let { left } = at;
  for (const letter of text) {
    const { picture, advance } = draw(letter, at.size, at.weight);
    lay(picture, onto, Math.round(left) - MARGIN, at.top);
    left += advance;
  }
};
