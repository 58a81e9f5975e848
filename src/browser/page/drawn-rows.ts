import type { Markup } from '../../markup/node.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { Steps } from './turns.ts';

/** Rows that are drawn in one step: some ten milliseconds of a slow machine's work. */
const BLOCK = 50;

/** What a table's rows stand in, from the outside in. */
const AROUND_ROWS = ['div', 'table', 'tbody'];

/** Adds pieces to a place as `toDom` makes them, the rows of a table some at a time. */
export function* drawInSteps(place: Element, pieces: readonly Markup[]): Steps {
  for (const [index, piece] of pieces.entries()) {
    const shell =
      typeof piece === 'string' || !AROUND_ROWS.includes(piece.tag)
        ? undefined
        : { piece, element: toDom({ ...piece, children: [] }) };
    if (shell?.element instanceof Element) {
      place.append(shell.element);
      yield* drawInSteps(shell.element, shell.piece.children);
    } else place.append(toDom(piece));
    if (index % BLOCK === BLOCK - 1) yield;
  }
}
