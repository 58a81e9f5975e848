/** A piece of a page, made once and turned into text at build or into elements in the browser. */
export type Markup = string | Element;

export interface Element {
  tag: string;
  attributes: Readonly<Record<string, string>>;
  children: readonly Markup[];
}

type Attribute = string | number | boolean | undefined;
type Child = Markup | readonly Child[] | undefined | false;

const flatten = (child: Child): Markup[] => {
  if (child === undefined || child === false) return [];
  if (typeof child === 'string' || 'tag' in child) return [child];
  return child.flatMap(flatten);
};

/**
 * An element. Attributes that are `undefined` or `false` are left out, `true` stands bare; children
 * may be nested lists, and what is `undefined` or `false` among them is left out.
 */
export const h = (
  tag: string,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: Child[]
): Element => ({
  tag,
  attributes: Object.fromEntries(
    Object.entries(attributes).flatMap(([name, value]) =>
      value === undefined || value === false ? [] : [[name, value === true ? '' : String(value)]],
    ),
  ),
  children: children.flatMap(flatten),
});
