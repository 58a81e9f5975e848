/** A page that the file holds as it was built, as a template that nothing runs in. */
export interface HeldPage {
  path: `/${string}`;
  title: string;
  template: HTMLTemplateElement;
}

/** Every page that the file holds. */
export const heldPages = (): HeldPage[] =>
  [...document.querySelectorAll<HTMLTemplateElement>('template[data-path]')].map((template) => ({
    path: (template.dataset['path'] ?? '/') as `/${string}`,
    title: template.dataset['title'] ?? '',
    template,
  }));

/** The page of a path, if the file holds it. */
export const heldPage = (path: string): HeldPage | undefined =>
  heldPages().find((page) => page.path === path);
