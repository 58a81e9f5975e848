/** Brings what is reckoned on a shown step up to date, and leaves alone what is typed in. */
export const refreshLive = (shown: Element, fresh: Element): void => {
  shown.className = fresh.className;
  const action = fresh.getAttribute('data-action');
  if (action !== null) shown.setAttribute('data-action', action);
  const parts = [...shown.querySelectorAll<HTMLElement>('[data-live]')];
  for (const part of fresh.querySelectorAll<HTMLElement>('[data-live]')) {
    const old = parts.find(({ dataset }) => dataset['live'] === part.dataset['live']);
    old?.replaceWith(part);
  }
};
