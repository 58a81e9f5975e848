import type { Extent } from '../../drawing/path.ts';
import { toTenth } from '../../drawing/to-tenth.ts';
import { h, type Element } from '../../markup/node.ts';
import { ABOVE, BELOW, WIDTH, type Page, type Side } from './entry-sheet.ts';
import type { PlaceBox } from './places.ts';

/** A fingertip, px. */
const FINGER = 46;

const middle = (a: number, b: number): number => (a + b) / 2;

/** A box made at least as large as a fingertip. */
const padded = ({ x, y, left, right, top, bottom }: PlaceBox): Extent => ({
  left: Math.min(left, x - FINGER / 2),
  right: Math.max(right, x + FINGER / 2),
  top: Math.min(top, y - FINGER / 2),
  bottom: Math.max(bottom, y + FINGER / 2),
});

/** Where a finger may come down for a place: halfway to its neighbours. */
const areaOf = (page: Page, { places, arrangement }: Side, n: number): Extent => {
  const { at, box } = places[n] as Side['places'][number];
  const whole = {
    left: -WIDTH / 2,
    right: WIDTH / 2,
    top: page.top - ABOVE,
    bottom: page.bottom + BELOW,
  };
  const { painted } = page.state.layout;
  if (painted[at] === 'colour') return whole;
  if (arrangement === 'grid' || painted.includes('colour')) return padded(box);
  const [before, after] = [places[n - 1]?.box, places[n + 1]?.box];
  return arrangement === 'row'
    ? {
        ...whole,
        left: before === undefined ? whole.left : middle(before.x, box.x),
        right: after === undefined ? whole.right : middle(box.x, after.x),
      }
    : {
        ...whole,
        top: before === undefined ? whole.top : middle(before.bottom, box.top),
        bottom: after === undefined ? whole.bottom : middle(box.bottom, after.top),
      };
};

/** A place that can be pressed; `data-mark` holds its number. */
export const target = (page: Page, side: Side, n: number): Element => {
  const { left, right, top, bottom } = areaOf(page, side, n);
  return h('rect', {
    class: 'target',
    'data-mark': side.places[n]?.at,
    x: toTenth(left),
    y: toTenth(top),
    width: toTenth(right - left),
    height: toTenth(bottom - top),
  });
};
