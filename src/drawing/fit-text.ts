/** Width of a character of the fixed face, as a share of its size. */
export const CHARACTER = 0.61;
/** From one line to the next, as a share of the size. */
export const LINE = 1.16;

/** Words in lines, all of one size, px. */
export interface Fitted {
  lines: readonly string[];
  size: number;
}

/**
 * Lines broken at spaces so that none is longer than so many characters; words stay whole, and so does what
 * a no-break space joins.
 */
export const wrapped = (lines: readonly string[], most: number): string[] =>
  lines.flatMap((given) =>
    given
      .trim()
      .split(/ +/)
      .reduce<string[]>((made, word) => {
        const last = made.at(-1);
        if (last === undefined || last.length + 1 + word.length > most) return [...made, word];
        return [...made.slice(0, -1), `${last} ${word}`];
      }, []),
  );

const fits = (lines: readonly string[], size: number, width: number, height: number): boolean =>
  lines.length * size * LINE <= height &&
  Math.max(...lines.map((text) => text.length)) * size * CHARACTER <= width;

/** Sizes from the largest down, in half steps. */
const sizesBetween = (most: number, least: number): number[] =>
  Array.from({ length: Math.floor((most - least) * 2) + 1 }, (_, i) => most - i / 2);

/** Down to this size (px) lines are kept as they were given rather than broken to be larger. */
const COMFORTABLE = 9.5;

/**
 * Lines as large as fit a room of so many px, as given or broken at spaces; nothing where even the
 * smallest legible size does not fit.
 */
export const fitted = (
  lines: readonly string[],
  width: number,
  height: number,
  { least, most }: { least: number; most: number },
): Fitted | undefined => {
  const sizes = sizesBetween(most, least);
  const whole = sizes.find((size) => fits(lines, size, width, height));
  if (whole !== undefined && whole >= COMFORTABLE) return { lines, size: whole };
  for (const size of sizes) {
    const broken = wrapped(lines, Math.floor(width / (size * CHARACTER)));
    if (fits(broken, size, width, height)) return { lines: broken, size };
  }
  return undefined;
};
