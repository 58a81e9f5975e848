import type { Element, Markup } from './node.ts';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A text as it stands between tags and in attributes of HTML and XML. */
export const escaped = (text: string): string =>
  /[&<>"]/.test(text)
    ? text.replaceAll(/[&<>"]/g, (character) => ENTITIES[character] ?? character)
    : text;

/** Elements of HTML that have no content and no end tag. */
const VOID = new Set(['br', 'hr', 'img', 'input', 'link', 'meta', 'wbr', 'col', 'source']);

/** Strokes of a drawing, which within it may close themselves. */
const DRAWN = new Set(['path', 'rect', 'circle', 'line', 'ellipse', 'polygon', 'polyline']);

const startOf = ({ tag, attributes }: Element): string => {
  let start = `<${tag}`;
  for (const name of Object.keys(attributes)) {
    const value = attributes[name] ?? '';
    start += value === '' ? ` ${name}` : ` ${name}="${escaped(value)}"`;
  }
  return `${start}>`;
};

/** The text of a piece of a page, with everything that came from data or people escaped. */
export const toHtml = (markup: Markup): string => {
  if (typeof markup === 'string') return escaped(markup);
  let html = startOf(markup);
  if (VOID.has(markup.tag)) return html;
  if (DRAWN.has(markup.tag) && markup.children.length === 0) return `${html.slice(0, -1)}/>`;
  for (const child of markup.children) html += toHtml(child);
  return `${html}</${markup.tag}>`;
};
