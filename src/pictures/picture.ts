/** A picture of ink on paper, a byte a pixel (0 paper, 255 ink), row by row from the top. */
export interface Picture {
  width: number;
  height: number;
  ink: Uint8Array;
}

/** Share of a pixel that is inked, as it stands in a picture. */
export const FULL = 255;

/** A picture without any ink, its sides in px. */
export const blank = (width: number, height: number): Picture => ({
  width,
  height,
  ink: new Uint8Array(width * height),
});

/**
 * Lays one picture over another. Where both have ink a pixel gets that of both, whole at most; what
 * reaches beyond the edge is cut off.
 * @param left of the one laid over, whole pixels
 * @param top of the one laid over, whole pixels
 */
export const lay = (over: Picture, onto: Picture, left: number, top: number): void => {
  const from = Math.max(0, -left);
  const to = Math.min(over.width, onto.width - left);
  for (let y = Math.max(0, -top); y < Math.min(over.height, onto.height - top); y += 1) {
    for (let x = from; x < to; x += 1) {
      const ink = over.ink[y * over.width + x] ?? 0;
      const at = (y + top) * onto.width + x + left;
      if (ink > 0) onto.ink[at] = Math.min(FULL, (onto.ink[at] ?? 0) + ink);
    }
  }
};
