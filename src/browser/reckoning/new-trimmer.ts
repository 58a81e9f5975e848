import { given, keepGiven } from '../address/address-bar.ts';

/** The form on a trimmer's page that asks what is measured on the new one; other pages have none. */

const form = document.getElementById('new-trimmer');

/** Keeps what is measured in the address, and has the page reckon again. */
export const listenForNewTrimmer = (update: () => void): void => {
  for (const input of form?.querySelectorAll('input') ?? [])
    input.value = given.get(input.name) ?? '';
  form?.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    keepGiven(target.name, target.value);
    update();
  });
  form?.addEventListener('submit', (event) => {
    event.preventDefault();
  });
};
