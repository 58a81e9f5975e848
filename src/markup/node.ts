/** A piece of a page, made once and turned into text at build or into elements in the browser. */
export type Markup = string | Element;

export interface Element {
  tag: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly Markup[];
}

type Attribute = string | number | boolean | undefined;
export type Child = Markup | readonly Child[] | undefined | false;

/** Attributes as they are given; `undefined` and `false` are left out. */
export type Attributes = Readonly<Record<string, Attribute>>;

const isPiece = (child: Child): child is Markup =>
  typeof child === 'string' || (typeof child === 'object' && 'tag' in child);

const addTo = (all: Markup[], child: Child): void => {
  if (child === undefined || child === false) return;
  if (isPiece(child)) all.push(child);
  else for (const one of child) addTo(all, one);
};

const flat = (children: readonly Child[]): readonly Markup[] => {
  if (children.every(isPiece)) return children;
  const all: Markup[] = [];
  addTo(all, children);
  return all;
};

const areTexts = (attributes: Attributes): attributes is Readonly<Record<string, string>> => {
  for (const name in attributes) if (typeof attributes[name] !== 'string') return false;
  return true;
};

const written = (attributes: Attributes): Readonly<Record<string, string>> => {
  const texts: Record<string, string> = {};
  for (const name in attributes) {
    const value = attributes[name] ?? false;
    if (value !== false) texts[name] = value === true ? '' : String(value);
  }
  return texts;
};

const NONE: Attributes = {};

/**
 * An element. Attributes that are `undefined` or `false` are left out, `true` stands bare; children
 * may be nested lists, and what is `undefined` or `false` among them is left out. What is given as it
 * will stand is kept and not copied: a build makes millions of elements, an edit thousands.
 */
export const h = (tag: string, attributes: Attributes = NONE, ...children: Child[]): Element => ({
  tag,
  attributes: areTexts(attributes) ? attributes : written(attributes),
  children: flat(children),
});
