import type { Element as Piece, Markup } from './node.ts';
import { toDom } from './to-dom.ts';

/** Whether a node may be kept for another piece: both are text, or share tag, classes and id. */
const isLike = (one: Markup, other: Markup): boolean =>
  typeof one === 'string' || typeof other === 'string'
    ? typeof one === typeof other
    : one.tag === other.tag &&
      one.attributes['class'] === other.attributes['class'] &&
      one.attributes['id'] === other.attributes['id'];

const redrawAttributes = (element: Element, before: Piece, after: Piece): void => {
  const [old, wanted] = [before.attributes, after.attributes];
  for (const name in wanted)
    if (old[name] !== wanted[name]) element.setAttribute(name, wanted[name] ?? '');
  for (const name in old) if (!Object.hasOwn(wanted, name)) element.removeAttribute(name);
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
  const removeTo = (end: number): void => {
    for (; next < end; next += 1) {
      const passed = node;
      node = node?.nextSibling ?? null;
      passed?.remove();
    }
  };
  // Written as loops: an edit brings thousands of pieces through here, and makes nothing on the way.
  for (const piece of after) {
    let match = next;
    while (match < before.length && !isLike(before[match] ?? '', piece)) match += 1;
    if (match === before.length) {
      place.insertBefore(toDom(piece, namespace), node);
      continue;
    }
    removeTo(match);
    const kept = node;
    node = node?.nextSibling ?? null;
    next += 1;
    if (kept !== null) redrawNode(kept, before[match] ?? '', piece);
  }
  removeTo(before.length);
};
