import { coloursOf, partDrawing, specOfRow, USUAL_SCALE } from '../drawing/index.ts';
import { toTenth } from '../drawing/to-tenth.ts';
import type { Catalogue, StyleId } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';

/** Room for a drawing in a list, px; what is larger is drawn at a smaller scale, and says so. */
const ROOM = 190;
/** Parts smaller than this, mm, are drawn larger. */
const SMALL = 9;
const LARGER = 1.5;

/** Scales that drawings take, px to the millimetre, so that most of them compare. */
const SCALES = [USUAL_SCALE, USUAL_SCALE / 2, USUAL_SCALE / 4];

const scaleFor = (millimetres: number, room: number): number => {
  if (millimetres < SMALL) return USUAL_SCALE * LARGER;
  return SCALES.find((scale) => millimetres * scale <= room) ?? USUAL_SCALE / 4;
};

/** What a drawing is for: a list of styles, the style's own page, a choice among answers. */
type Place = 'list' | 'page' | 'choice';

/**
 * A choice has a small drawing: its body is so long, px, or as large as small parts are drawn, so that
 * lines are not thin in it, and half a px is as fine as is seen.
 */
const CHOICE = { length: 40, fine: 2 } as const;
const scaleOfChoice = (millimetres: number): number =>
  Math.min(USUAL_SCALE * LARGER, toTenth(CHOICE.length / millimetres));

/**
 * A style drawn to scale beside a millimetre rule, with an invented marking; nothing where the data
 * have no drawing of it.
 */
export const styleDrawing = (
  catalogue: Catalogue,
  style: StyleId,
  place: Place,
): Markup | undefined => {
  const row = catalogue.look.drawings.find((drawing) => drawing.style === style);
  const spec = row && specOfRow(row);
  if (row === undefined || spec === undefined) return undefined;
  const longest = Math.max(row.length_mm, row.height_mm);
  const colours = coloursOf(catalogue);
  if (place === 'choice') {
    const { fine } = CHOICE;
    const small = { rule: false, notes: false, decorative: true, views: 'first', fine } as const;
    const unmarked = { ...spec, marking: [] };
    return partDrawing(unmarked, { colours, pxPerMm: scaleOfChoice(longest), ...small });
  }
  return place === 'page'
    ? partDrawing(spec, { colours, pxPerMm: scaleFor(longest, 2 * ROOM), views: 'all' })
    : partDrawing(spec, { colours, pxPerMm: scaleFor(longest, ROOM), views: 'first' });
};
