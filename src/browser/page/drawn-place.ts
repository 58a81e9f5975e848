import type { Markup } from '../../markup/node.ts';
import { redraw } from '../../markup/redraw.ts';
import { toDom } from '../../markup/to-dom.ts';

/**
 * What draws pieces in a place: the first time in the place of what was built, later only where they
 * differ from what it drew before.
 */
export const drawerIn = (place: Element): ((pieces: readonly Markup[]) => void) => {
  let drawn: readonly Markup[] | undefined;
  return (pieces) => {
    if (drawn === undefined) place.replaceChildren(...pieces.map((piece) => toDom(piece)));
    else redraw(place, drawn, pieces);
    drawn = pieces;
  };
};
