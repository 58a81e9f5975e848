/** The pictures of the mark that are drawn at build, by the names of their files. */
export interface MarkPicture {
  name: string;
  width: number;
  height: number;
  /** Share of the smaller side that the mark's square takes. */
  share: number;
}

/** Devices may cut away all but the middle four fifths of a picture that they shape themselves. */
const WITHIN_MASK = 0.7;

const square = (name: string, side: number, share = 1): MarkPicture => ({
  name,
  width: side,
  height: side,
  share,
});

export const icons = {
  small: square('mark-192', 192),
  large: square('mark-512', 512),
  masked: square('masked-512', 512, WITHIN_MASK),
  touch: square('touch-180', 180, WITHIN_MASK),
} as const;

/** What stands beside a shared link, in the shape that is asked for there. */
export const card: MarkPicture = { name: 'card', width: 1200, height: 630, share: 0.6 };

export const pictures: readonly MarkPicture[] = [...Object.values(icons), card];
