/**
 * Where a page was left, kept with its entry in the history. The file is loaded anew for each page, and
 * a browser left to itself would open the next one as far down as the one before stood.
 */

/** Until no more is scrolled, ms. */
const AT_REST = 150;

/** Whether the history stands at another page already, which is yet to be loaded. */
let isLeft = false;

const keepLeft = (): void => {
  if (!isLeft) history.replaceState({ left: scrollY }, '');
};

/** Loads the page that the history stands at. */
export const loadAnew = (): void => {
  isLeft = true;
  location.reload();
};

/** Keeps how far down the page stands, from now on. */
export const rememberLeft = (): void => {
  history.scrollRestoration = 'manual';
  let waiting: ReturnType<typeof setTimeout> | undefined;
  addEventListener('scroll', () => {
    clearTimeout(waiting);
    waiting = setTimeout(keepLeft, AT_REST);
  });
  // A link may be followed before that.
  addEventListener('click', keepLeft, { capture: true });
};

/** How far down the page was left that one goes back to; nothing for one that is opened afresh. */
export const leftAt = (): number | undefined => {
  const state: unknown = history.state;
  const isKept = typeof state === 'object' && state !== null && 'left' in state;
  return isKept && typeof state.left === 'number' ? state.left : undefined;
};
