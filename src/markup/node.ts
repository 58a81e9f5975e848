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

/** Written without lists in between: a build makes millions of elements. */
const writtenOut = (attributes: Readonly<Record<string, Attribute>>): Record<string, string> => {
  const written: Record<string, string> = {};
  for (const name of Object.keys(attributes)) {
    const value = attributes[name];
    if (value !== undefined && value !== false) written[name] = value === true ? '' : String(value);
  }
  return written;
};

/**
 * An element. Attributes that are `undefined` or `false` are left out, `true` stands bare; children
 * may be nested lists, and what is `undefined` or `false` among them is left out.
 */
export const h = (
  tag: string,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: Child[]
): Element => {
  const all: Markup[] = [];
  for (const child of children) addTo(all, child);
  return { tag, attributes: writtenOut(attributes), children: all };
};
