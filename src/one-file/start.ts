import '../browser/older-browsers.ts';
import { byId } from '../browser/page/by-id.ts';
import { h } from '../markup/node.ts';
import { toDom } from '../markup/to-dom.ts';
import { wholeCatalogue } from './data.ts';
import { elementsOf, heldPage } from './held.ts';
import { leftAt, loadAnew, rememberLeft } from './left-at.ts';
import { addressWith, goWithin, here, readPlace } from './place.ts';
import { scriptOf } from './scripts.ts';
import { viewOf } from './views.ts';

/**
 * Opens pages in the one file. Every page is a fresh start, as on the site, so that its script finds
 * what it was written for: going to another one loads the file anew.
 */

const opened = here();
const content = byId('content', HTMLElement);
const name = document.title;

const notHeld = (path: string): Node[] =>
  [
    h('h1', {}, 'Not in this file'),
    h(
      'p',
      { class: 'lead' },
      `The page ${path} is not in this file; the site has it, if there is such a page.`,
    ),
    h('p', {}, h('a', { href: '#/' }, 'Start')),
  ].map((piece) => toDom(piece));

/** Puts the page into the file's frame; whether there is one. */
const mount = (path: string): boolean => {
  const held = heldPage(path);
  if (held !== undefined) {
    document.title = path === '/' ? held.title : `${held.title} · ${name}`;
    const page = elementsOf(held);
    const crumbs = page.querySelector('nav.crumbs');
    if (crumbs !== null) content.before(crumbs);
    content.replaceChildren(page);
    return true;
  }
  const view = viewOf(wholeCatalogue(), path);
  if (view !== undefined) document.title = `${view.title} · ${name}`;
  content.replaceChildren(
    ...(view === undefined ? notHeld(path) : view.main.map((piece) => toDom(piece))),
  );
  return view !== undefined;
};

const markHere = (path: string): void => {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('.site-nav a')) {
    const to = readPlace(link.hash).path;
    if (path.startsWith(to)) link.setAttribute('aria-current', 'true');
    else link.removeAttribute('aria-current');
  }
};

const goTo = (fragment: string): void => {
  const target = document.getElementById(fragment);
  if (target === null) return;
  const around = target.closest('details');
  if (around !== null) around.open = true;
  target.scrollIntoView();
};

/** Goes to where the page was left, or to the place that it was opened at. */
const goToPlace = (fragment: string): void => {
  const left = leftAt();
  if (left !== undefined) scrollTo(0, left);
  else if (fragment !== '') goTo(fragment);
};

// A link to a place in the page would otherwise put that place where the page stands.
document.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('a') : null;
  const written = link?.getAttribute('href') ?? '';
  if (event.defaultPrevented || !/^#(?!\/)/.test(written)) return;
  event.preventDefault();
  const fragment = written.slice(1);
  history.pushState(null, '', addressWith({ fragment }));
  goWithin(fragment);
  goTo(fragment);
  if (fragment === content.id) content.focus();
});

addEventListener('hashchange', () => {
  const { path, query, fragment } = readPlace(location.hash);
  if (path !== here().path || query !== here().query) loadAnew();
  else {
    goWithin(fragment);
    goToPlace(fragment);
  }
});

const isThere = mount(opened.path);
markHere(opened.path);
await import('../browser/theme-choice.ts');
await import('../browser/habit-choice.ts');
await import('../browser/every-page.ts');
if (isThere) await scriptOf(opened.path)?.();
goToPlace(opened.fragment);
rememberLeft();
content.dataset['ready'] = '';
