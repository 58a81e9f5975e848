import { href } from '../components/links.ts';
import { asked, pagePath, thisAddress } from './address/address.ts';
import { noteLookUp } from './kept/recent.ts';

/**
 * What every page does: Ctrl+K or ⌘K leads to the box, paper says when and where it was printed, and
 * what was looked up is noted on leaving.
 */

const BOX = 'box';

addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
  if (event.key.toLowerCase() !== 'k') return;
  event.preventDefault();
  const box = document.getElementById(BOX);
  if (box instanceof HTMLInputElement) {
    box.focus();
    box.select();
  } else location.assign(href(`/#${BOX}`));
});

addEventListener('beforeprint', () => {
  document
    .getElementById('printed-from')
    ?.replaceChildren(`Printed ${new Date().toUTCString()} from ${thisAddress()}`);
});

/** Numbers and words of a query are said after the heading of the page, so many characters at most. */
const SAID = 60;
/** A part in its place, of any kind. */
const PAIR = /^\/.+\/in\//;

addEventListener('pagehide', () => {
  const path = pagePath();
  const query = asked();
  if (query === '' && !PAIR.test(path)) return;
  // Nobody wants to go back to what came to nothing.
  if (document.body.hasAttribute('data-unanswered')) return;
  const said = [...new URLSearchParams(query).values()].join(', ').slice(0, SAID);
  const heading = document.querySelector('h1')?.textContent.trim() ?? '';
  const title = path === '/' ? said : [heading, said].filter(Boolean).join(': ');
  noteLookUp({ path, query, title });
});
