import type { Markup } from './node.ts';

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

const escape = (text: string): string =>
  text.replaceAll(/[&<>"]/g, (character) => ENTITIES[character] ?? character);

/** Elements of HTML that have no content and no end tag. */
const VOID = new Set(['br', 'hr', 'img', 'input', 'link', 'meta', 'wbr', 'col', 'source']);

/** The text of a piece of a page, with everything that came from data or people escaped. */
export const toHtml = (markup: Markup): string => {
  if (typeof markup === 'string') return escape(markup);
  const { tag, attributes, children } = markup;
  const written = Object.entries(attributes)
    .map(([name, value]) => (value === '' ? ` ${name}` : ` ${name}="${escape(value)}"`))
    .join('');
  return VOID.has(tag)
    ? `<${tag}${written}>`
    : `<${tag}${written}>${children.map(toHtml).join('')}</${tag}>`;
};
