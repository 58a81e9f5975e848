import { h, type Markup } from '../../markup/node.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { Found, Hit } from '../../search/word-index.ts';
import { searchWords } from '../fetched/word-search.ts';

/** The pages that hold words, below the box on the first page. */

const OTHERS = 'pairs, parts in one use, codes and sources';
/** Where the first index finds fewer, and nothing else surely answers, the further one is searched unasked. */
const FEW = 3;

/** Whether the further index is searched as well: once somebody wanted it, for the rest of the visit. */
let wide = false;

const listOf = (title: string, hits: readonly Hit[]): Markup =>
  h(
    'section',
    { class: 'answer-part' },
    h('h2', {}, title),
    h(
      'ul',
      { class: 'plain-list' },
      ...hits.map(({ url, title: name, excerpt }) =>
        h('li', {}, h('a', { href: url }, name), ' ', h('small', { class: 'quiet' }, excerpt)),
      ),
    ),
  );

const show = (place: HTMLElement, { hits, further = [] }: Found): void => {
  place.replaceChildren(
    ...(hits.length > 0 ? [toDom(listOf('Pages', hits))] : []),
    ...(further.length > 0 ? [toDom(listOf(`Single ${OTHERS}`, further))] : []),
  );
};

/** Searches as widely as is wanted, or in the first index alone where the further one is out of reach. */
const search = async (text: string): Promise<Found | undefined> => {
  if (!wide) return searchWords(text, false);
  try {
    return await searchWords(text, true);
  } catch {
    wide = false;
    return searchWords(text, false);
  }
};

/** Shows what the further index has too, and leads the keyboard there. */
const goOn = async (place: HTMLElement, text: string, isAsked: () => boolean): Promise<void> => {
  const found = await searchWords(text, true);
  wide = true;
  if (found === undefined || !isAsked()) return;
  show(place, found);
  const none = toDom(
    h('p', { tabindex: -1 }, 'No page about a single pair, part, code or source has these words.'),
  );
  if (found.further?.length === 0) place.append(none);
  (place.querySelectorAll('a')[found.hits.length] ?? (none as HTMLElement)).focus();
};

/** Puts a button below the pages that searches on. */
const offerMore = (place: HTMLElement, text: string, isAsked: () => boolean): void => {
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = `Search single ${OTHERS} too`;
  button.addEventListener('click', () => {
    goOn(place, text, isAsked).catch(() => {
      button.textContent = 'They could not be fetched; try again';
    });
  });
  place.append(button);
};

const numberOf = ({ hits, further = [] }: Found): number => hits.length + further.length;

/** A text that is looked for in pages, as it stands now. */
export interface Sought {
  /** Whether the text still is what is asked for. */
  isAsked: () => boolean;
  /** Whether something besides pages surely answers to it. */
  isAnswered: Promise<boolean>;
}

/**
 * Shows the pages that hold the words of a text.
 * @returns whether there are any, or it is no longer asked
 */
export const findPages = async (
  place: HTMLElement,
  text: string,
  { isAsked, isAnswered }: Sought,
): Promise<boolean> => {
  let found: Found | undefined;
  try {
    found = await search(text);
    if (found === undefined || !isAsked()) return true;
    show(place, found);
    if (found.further !== undefined) return numberOf(found) > 0;
    if (found.hits.length < FEW && !(await isAnswered)) {
      found = await searchWords(text, true);
      wide = true;
      if (found === undefined || !isAsked()) return true;
      show(place, found);
      return numberOf(found) > 0;
    }
    if (!isAsked()) return true;
  } catch {
    if (isAsked() && (found?.hits.length ?? 0) === 0)
      place.textContent = 'The index of pages could not be fetched.';
    return true;
  }
  offerMore(place, text, isAsked);
  return true;
};
