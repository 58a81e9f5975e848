import { coloursOf, partDrawing, specOfRow, USUAL_SCALE } from '../drawing/index.ts';
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
  const choice = place === 'choice';
  return partDrawing(choice ? { ...spec, marking: [] } : spec, {
    colours: coloursOf(catalogue),
    pxPerMm: scaleFor(longest, place === 'page' ? 2 * ROOM : ROOM),
    rule: !choice,
    views: place === 'page' ? 'all' : 'first',
    decorative: choice,
  });
};
