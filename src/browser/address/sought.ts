import { fragment, listenForFragment } from './address.ts';

/** The place in the page that a link leads to, until it is there to be shown. */
let sought = '';

/** Shows what a link leads to, once it is there. */
export const showSought = (): boolean => {
  const target = document.getElementById(sought);
  if (target === null) return false;
  const around = target.closest('details');
  if (around) {
    around.open = true;
    target.scrollIntoView();
  }
  sought = '';
  return true;
};

/** Shows what links lead to, which must be open for that; a finding is drawn first. */
export const listenForSought = (update: () => void): void => {
  const openTarget = (): void => {
    sought = fragment();
    if (sought === '' || showSought()) return;
    const [part = ''] = sought.split('--');
    const details = document.getElementById(part)?.querySelector('details');
    if (!details) return;
    details.open = true;
    update();
  };
  listenForFragment(openTarget);
  openTarget();
};
