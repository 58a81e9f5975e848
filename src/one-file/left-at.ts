/**
 * Where a page was left, kept with its entry in the history. The file is loaded anew for each page, and
 * a browser left to itself would open the next one as far down as the one before stood.
 */

/** Until no more is scrolled, ms. */
const AT_REST = 150;

const keepLeft = (): void => {
  history.replaceState({ left: scrollY }, '');
};

/** Keeps how far down the page stands, from now on. */
export const rememberLeft = (): void => {
  history.scrollRestoration = 'manual';
  let waiting: ReturnType<typeof setTimeout> | undefined;
  addEventListener('scroll', () => {
    clearTimeout(waiting);
    waiting = setTimeout(keepLeft, AT_REST);
  });
  // A link may be followed before that; a page that is being left for another keeps no more.
  addEventListener('click', keepLeft, { capture: true });
  addEventListener('hashchange', () => {
    clearTimeout(waiting);
  });
};

/** How far down the page was left that one goes back to; nothing for one that is opened afresh. */
export const leftAt = (): number | undefined => {
  const state: unknown = history.state;
  const isKept = typeof state === 'object' && state !== null && 'left' in state;
  return isKept && typeof state.left === 'number' ? state.left : undefined;
};
