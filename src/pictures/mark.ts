import { blank, FULL, type Picture } from './picture.ts';

/** A bar of the mark, in the units of its square of 32 by 32. */
interface Bar {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The mark of the site, as in `public/icon.svg`: a part with one plate of today beside an aged one. */
const BARS: readonly Bar[] = [
  { left: 2, top: 15, right: 12, bottom: 17 },
  { left: 20, top: 15, right: 30, bottom: 17 },
  { left: 11, top: 5, right: 15, bottom: 27 },
  { left: 17, top: 5, right: 21, bottom: 9 },
  { left: 17, top: 12.33, right: 21, bottom: 16.33 },
  { left: 17, top: 19.66, right: 21, bottom: 23.66 },
];
const SIDE = 32;

/** The length that two stretches have in common. */
const common = (from: number, to: number, otherFrom: number, otherTo: number): number =>
  Math.max(0, Math.min(to, otherTo) - Math.max(from, otherFrom));

/**
 * Draws the mark in the middle of a picture.
 * @param share of the smaller side of the picture that the mark's square takes
 */
export const drawMark = (width: number, height: number, share: number): Picture => {
  const scale = (Math.min(width, height) * share) / SIDE;
  const left = (width - SIDE * scale) / 2;
  const top = (height - SIDE * scale) / 2;
  const bars = BARS.map((bar) => ({
    left: left + bar.left * scale,
    right: left + bar.right * scale,
    top: top + bar.top * scale,
    bottom: top + bar.bottom * scale,
  }));
  const picture = blank(width, height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      // Bars stand on their edges alone, so that what a pixel has of each is an area without slants;
      // where two meet, a pixel is not inked more than whole.
      const inked = Math.min(
        1,
        bars.reduce(
          (sum, bar) =>
            sum + common(x, x + 1, bar.left, bar.right) * common(y, y + 1, bar.top, bar.bottom),
          0,
        ),
      );
      picture.ink[y * width + x] = Math.round(inked * FULL);
    }
  }
  return picture;
};
