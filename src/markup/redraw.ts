import type { Element as Piece, Markup } from './node.ts';
import { toDom } from './to-dom.ts';

/** What a piece has to share with another for its node to be kept: its tag, its classes and its id. */
const kindOf = (piece: Markup): string =>
  typeof piece === 'string'
    ? ''
    : `${piece.tag} ${piece.attributes['class'] ?? ''} ${piece.attributes['id'] ?? ''}`;

const redrawAttributes = (element: Element, before: Piece, after: Piece): void => {
  for (const [name, value] of Object.entries(after.attributes)) {
    if (before.attributes[name] !== value) element.setAttribute(name, value);
  }
  for (const name of Object.keys(before.attributes)) {
    if (!Object.hasOwn(after.attributes, name)) element.removeAttribute(name);
  }
};

const redrawNode = (node: ChildNode, before: Markup, after: Markup): void => {
  if (typeof before === 'string' || typeof after === 'string') {
    if (before !== after && typeof after === 'string') node.textContent = after;
    return;
  }
  if (!(node instanceof Element)) return;
  redrawAttributes(node, before, after);
  redraw(node, before.children, after.children);
};

/**
 * Brings a place that `toDom` filled with some pieces to what others say. Only what differs is
 * touched, so that what stands open stays open, the keyboard stays where it was, and an edit costs
 * little.
 * @param before what the place shows
 */
export const redraw = (
  place: Element,
  before: readonly Markup[],
  after: readonly Markup[],
): void => {
  const namespace = place.namespaceURI ?? undefined;
  let node = place.firstChild;
  let next = 0;
  const skip = (): ChildNode | undefined => {
    const passed = node ?? undefined;
    node = node?.nextSibling ?? null;
    next += 1;
    return passed;
  };
  for (const piece of after) {
    const kind = kindOf(piece);
    const match = before.findIndex((one, index) => index >= next && kindOf(one) === kind);
    if (match < 0) {
      place.insertBefore(toDom(piece, namespace), node);
      continue;
    }
    while (next < match) skip()?.remove();
    const was = before[next] ?? '';
    const kept = skip();
    if (kept !== undefined) redrawNode(kept, was, piece);
  }
  while (next < before.length) skip()?.remove();
};
