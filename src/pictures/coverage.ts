import { blank, FULL, type Picture } from './picture.ts';

/** A point, right and down, in pixels. */
export type Point = readonly [x: number, y: number];

/** Lines that are looked at in each row of pixels. */
const LINES = 5;

interface Crossing {
  x: number;
  /** One up or one down: what lies right of it is inside as long as these do not cancel out. */
  turn: number;
}

/** Where a level line meets closed outlines, left to right. */
const crossings = (outlines: readonly (readonly Point[])[], y: number): Crossing[] => {
  const found: Crossing[] = [];
  for (const outline of outlines) {
    let from = outline.at(-1);
    for (const to of outline) {
      if (from !== undefined && from[1] <= y !== to[1] <= y) {
        const share = (y - from[1]) / (to[1] - from[1]);
        found.push({ x: from[0] + share * (to[0] - from[0]), turn: to[1] > from[1] ? 1 : -1 });
      }
      from = to;
    }
  }
  return found.toSorted((a, b) => a.x - b.x);
};

/** Inks a stretch of one row, parts of pixels by their part. */
const inkStretch = (row: Float64Array, from: number, to: number, amount: number): void => {
  for (let x = Math.max(0, Math.floor(from)); x < Math.min(row.length, Math.ceil(to)); x += 1) {
    row[x] = (row[x] ?? 0) + amount * (Math.min(to, x + 1) - Math.max(from, x));
  }
};

/** What closed outlines enclose (by the non-zero rule), as ink. */
export const inkOf = (
  outlines: readonly (readonly Point[])[],
  width: number,
  height: number,
): Picture => {
  const picture = blank(width, height);
  for (let y = 0; y < height; y += 1) {
    const row = new Float64Array(width);
    for (let line = 0; line < LINES; line += 1) {
      let inside = 0;
      let begun = 0;
      for (const { x, turn } of crossings(outlines, y + (line + 0.5) / LINES)) {
        if (inside === 0) begun = x;
        inside += turn;
        if (inside === 0) inkStretch(row, begun, x, 1 / LINES);
      }
    }
    for (const [x, ink] of row.entries())
      picture.ink[y * width + x] = Math.round(Math.min(1, ink) * FULL);
  }
  return picture;
};
