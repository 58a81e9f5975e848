import type { Element as Piece } from '../../markup/node.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from './by-id.ts';

/** Puts what needs a script below all else of a page; pages do not bring it, since it is the same on each. */
export const atTheFoot = (piece: Piece): Element => {
  const drawn = toDom(piece);
  if (!(drawn instanceof Element)) throw new Error('a piece is drawn as an element');
  byId('foot', HTMLElement).append(drawn);
  return drawn;
};
