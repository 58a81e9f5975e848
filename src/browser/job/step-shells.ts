/**
 * Parts of a long list that are drawn when one scrolls towards them, and taken off the page when they
 * are far away again; until then their title stands where they will be.
 */

/** So far above and below the screen they are drawn, in heights of the screen. */
const AROUND = '100% 0px';

/** Draws what belongs in a shell. */
export type Fill = (shell: HTMLElement) => HTMLElement | undefined;

export interface Shells {
  /** A place for a part, with its title. */
  make: (id: string, title: string) => HTMLElement;
  isShell: (element: HTMLElement) => boolean;
}

/** Keeps shells filled around the screen. */
export const shellsFor = (fill: Fill): Shells => {
  const titles = new WeakMap<Element, string>();
  const empty = (shell: HTMLElement): void => {
    const head = document.createElement('h3');
    head.textContent = titles.get(shell) ?? '';
    shell.className = 'bench-step bench-shell';
    shell.replaceChildren(head);
  };
  const isShell = (element: HTMLElement): boolean => element.classList.contains('bench-shell');
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (!(target instanceof HTMLElement)) continue;
        if (!target.isConnected) observer.unobserve(target);
        else if (isIntersecting && isShell(target)) {
          const drawn = fill(target);
          if (drawn === undefined) continue;
          // The place itself stays: what is drawn in turns counts on it.
          target.className = drawn.className;
          Object.assign(target.dataset, drawn.dataset);
          target.replaceChildren(...drawn.childNodes);
        } else if (!isIntersecting && !isShell(target)) {
          // What is worked in stays, however far one scrolls.
          if (!target.contains(document.activeElement)) empty(target);
        }
      }
    },
    { rootMargin: AROUND },
  );
  return {
    make: (id, title) => {
      const shell = document.createElement('article');
      shell.dataset['item'] = id;
      titles.set(shell, title);
      empty(shell);
      observer.observe(shell);
      return shell;
    },
    isShell,
  };
};
