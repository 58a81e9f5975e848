/** A piece of a page, made once and turned into text at build or into elements in the browser. */
export type Markup = string | Element;

export interface Element {
  tag: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly Markup[];
}

type Attribute = string | number | boolean | undefined;
type Child = Markup | readonly Child[] | undefined | false;

const addTo = (all: Markup[], child: Child): void => {
  if (child === undefined || child === false) return;
  if (typeof child === 'string' || 'tag' in child) all.push(child);
  else for (const one of child) addTo(all, one);
};

/**
 * An element. Attributes that are `undefined` or `false` are left out, `true` stands bare; children
 * may be nested lists, and what is `undefined` or `false` among them is left out. Made without lists
 * in between: a build makes millions of elements.
 */
export const h = (
  tag: string,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: Child[]
): Element => {
  const written: Record<string, string> = {};
  for (const name in attributes) {
    const value = attributes[name] ?? false;
    if (value !== false) written[name] = value === true ? '' : String(value);
  }
  const all: Markup[] = [];
  addTo(all, children);
  return { tag, attributes: written, children: all };
};
