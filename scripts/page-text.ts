/** What built pages of our own say in the parts that the layout writes once, in one form. */

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#39': "'",
};

const find = (html: string, pattern: RegExp): string =>
  (pattern.exec(html)?.[1] ?? '').replaceAll(
    /&(amp|lt|gt|quot|#39);/g,
    (_, name: string) => ENTITIES[name] ?? '',
  );

/** What stands at the head of a page. */
export const headingOf = (html: string): string => find(html, /<h1[^>]*>([^<]*)<\/h1>/);

/** What search engines are told of it. */
export const descriptionOf = (html: string): string =>
  find(html, /<meta name="description" content="([^"]*)"/);

/** Address of the picture beside a link to the page. */
export const pictureOf = (html: string): string =>
  find(html, /<meta property="og:image" content="([^"]*)"/);

/** Heading that the page is shared under. */
export const sharedTitleOf = (html: string): string =>
  find(html, /<meta property="og:title" content="([^"]*)"/);

/** Address that a page names as its own; pages that are to be left out name none. */
export const canonicalOf = (html: string): string =>
  find(html, /<link rel="canonical" href="([^"]*)"/);
