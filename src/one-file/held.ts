/**
 * The pages that the file holds as they were built. They stand in it as text, which a browser passes
 * over: made into elements, all of them would take it seconds and some hundred megabytes each time.
 */

/** Type of the elements that hold pages; none that a browser would run. */
export const HELD_TYPE = 'text/html';

/** A page that the file holds, as the text of its HTML. */
export interface HeldPage {
  path: `/${string}`;
  title: string;
  html: string;
}

/** Every page that the file holds. */
export const heldPages = (): HeldPage[] =>
  [...document.querySelectorAll<HTMLElement>(`script[type="${HELD_TYPE}"][data-path]`)].map(
    ({ dataset, textContent }) => ({
      path: (dataset['path'] ?? '/') as `/${string}`,
      title: dataset['title'] ?? '',
      html: textContent,
    }),
  );

/** The page of a path, if the file holds it. */
export const heldPage = (path: string): HeldPage | undefined =>
  heldPages().find((page) => page.path === path);

interface HtmlPolicy {
  createHTML: (path: string) => string;
}

const rules: HtmlPolicy = { createHTML: (path) => heldPage(path)?.html ?? '' };

/** The one policy of the file: what is made into a page is what the file holds, whatever is asked for. */
const policy =
  (
    globalThis as {
      trustedTypes?: { createPolicy: (name: string, rules: HtmlPolicy) => HtmlPolicy };
    }
  ).trustedTypes?.createPolicy('held', rules) ?? rules;

/** The elements of a held page; nothing runs in them. */
export const elementsOf = ({ path }: HeldPage): DocumentFragment => {
  const template = document.createElement('template');
  // The policy answers with what the build wrote, and with nothing for any other path.
  // eslint-disable-next-line no-restricted-syntax -- HTML that the file holds, not a visitor's text
  template.innerHTML = policy.createHTML(path);
  return template.content;
};
