import type { Markup } from './node.ts';

const HTML = 'http://www.w3.org/1999/xhtml';

/** Elements that begin another kind of drawing than HTML, with the namespace of what is in them. */
const NAMESPACES: Readonly<Record<string, string>> = {
  svg: 'http://www.w3.org/2000/svg',
  math: 'http://www.w3.org/1998/Math/MathML',
};

/** The elements of a piece of a page; text stays text, whatever is written in it. */
export const toDom = (markup: Markup, namespace = HTML): Node => {
  if (typeof markup === 'string') return document.createTextNode(markup);
  const own = NAMESPACES[markup.tag] ?? namespace;
  const element = document.createElementNS(own, markup.tag);
  for (const [name, value] of Object.entries(markup.attributes)) element.setAttribute(name, value);
  element.append(...markup.children.map((child) => toDom(child, own)));
  return element;
};
