import { coloursOf, drawingOfReading, partDrawing, scaleFor } from '../drawing/index.ts';
import type { Catalogue, Reading } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital } from '../text/words.ts';

/** A reading as a part that one may hold against one's own, with the marking as it was written. */
export const drawnReading = (
  catalogue: Catalogue,
  reading: Reading,
  marking: string,
  body: string,
): Markup | undefined => {
  const drawn = drawingOfReading(catalogue, reading, marking, body);
  if (drawn === undefined) return undefined;
  const { spec, look } = drawn;
  const name = catalogue.types[look.type]?.short_name ?? look.type;
  return h(
    'figure',
    { class: 'drawn-reading' },
    partDrawing(spec, { colours: coloursOf(catalogue), pageScale: scaleFor([{ spec }]) }),
    h(
      'figcaption',
      { class: 'small quiet' },
      `${capital(name)}, ${look.style}, of a usual size. Does yours look like it?`,
    ),
  );
};
