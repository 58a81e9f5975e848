import './older-browsers.ts';
import { link } from '../components/link.ts';
import { h, type Markup } from '../markup/node.ts';
import { toDom } from '../markup/to-dom.ts';
import type { Answered } from '../search/answer.ts';
import { askedMark } from '../search/asked-mark.ts';
import { given, keepGiven } from './address/address-bar.ts';
import { fragment } from './address/address.ts';
import { cataloguePart } from './fetched/catalogue-part.ts';
import { fetchedOnce } from './fetched/fetched-once.ts';
import { forgetLookUps, lookUps } from './kept/recent.ts';
import { drawerIn } from './page/drawn-place.ts';
import { drawingInTurns, pause, type Steps } from './page/turns.ts';
import { findPages } from './reading/found-pages.ts';

/** The box on the first page: answers while someone types, and keeps the text in the address. */

const box = document.querySelector<HTMLInputElement>('#box');
const atOnce = document.querySelector<HTMLElement>('#at-once');
const pages = document.querySelector<HTMLElement>('#pages');

const KEY = 'q';

/** What answers at once and its data: fetched when the box is first used. */
const fetched = fetchedOnce(() =>
  Promise.all([import('./reading/at-once.ts'), cataloguePart('reading')]),
);

const draw = atOnce === null ? undefined : drawerIn(atOnce);

/** Draws what differs, and leaves the keyboard on the link that it was on where that is still there. */
const redraw = (place: HTMLElement, pieces: readonly Markup[]): void => {
  const focused = document.activeElement;
  const held = place.contains(focused) ? focused?.getAttribute('href') : null;
  draw?.(pieces);
  if (held === null || held === undefined || document.activeElement?.getAttribute('href') === held)
    return;
  [...place.querySelectorAll('a')].find((link) => link.getAttribute('href') === held)?.focus();
};

const inTurns = atOnce === null ? undefined : drawingInTurns(atOnce);

/** Where else the last text led to: it stays until the same is known of the next one. */
let shownRest: readonly Markup[] = [];

/** Shows what a text is, and in a turn of its own where else it leads to. */
function* answerSteps(place: HTMLElement, { first, rest }: Answered): Steps {
  if (first.length > 0) {
    redraw(place, [...first, ...shownRest]);
    yield;
  }
  shownRest = rest();
  redraw(place, [...first, ...shownRest]);
}

/** What came of a text besides pages: whether anything, whether that is sure, and whether it is all. */
interface Said {
  any: boolean;
  sure: boolean;
  whole: boolean;
}
/** It is no longer asked, or what is to be said stands there. */
const NOTHING_TO_SAY: Said = { any: true, sure: false, whole: false };

/** Shows what the text says at once. */
const answerAtOnce = (text: string, place: HTMLElement): Promise<Said> =>
  fetched().then(
    async ([{ answerPieces }, catalogue]) => {
      const pieces = await answerPieces(catalogue, text);
      // Typing may have gone on while the data came.
      if (box?.value !== text) return NOTHING_TO_SAY;
      await inTurns?.(answerSteps(place, pieces));
      const any = box.value !== text || pieces.first.length + shownRest.length > 0;
      return { any, sure: pieces.sure, whole: pieces.whole };
    },
    () => {
      redraw(place, ['The data could not be fetched; please try again.']);
      return NOTHING_TO_SAY;
    },
  );

const SHORTEST_SEARCH = 2;

/** Shows the pages that hold the words; whether there are any. */
const showPages = (text: string, place: HTMLElement, said: Promise<Said>): Promise<boolean> => {
  if (text.trim().length < SHORTEST_SEARCH) {
    place.replaceChildren();
    return Promise.resolve(false);
  }
  let isWhole = false;
  void said.then(({ whole }) => {
    isWhole = whole;
    if (whole && box?.value === text) place.replaceChildren();
  });
  return findPages(place, askedMark(text), {
    isAsked: () => box?.value === text && !isWhole,
    isAnswered: said.then(({ sure }) => sure),
  });
};

/** Says that nothing answers, and what may be meant instead. */
const sayNothingAnswers = async (text: string, place: HTMLElement): Promise<void> => {
  const [{ meantText }, catalogue] = await fetched();
  const meant = meantText(catalogue, text);
  redraw(place, [
    `Nothing here answers to “${text}”. `,
    ...(meant === undefined
      ? [
          'Try what is printed on the part, a type such as “wax paper”, or a place such as “reservoir”.',
        ]
      : [
          'Do you mean ',
          link(`/?${new URLSearchParams({ [KEY]: meant }).toString()}`, meant),
          '?',
        ]),
  ]);
};

const answer = (text: string, answerPlace: HTMLElement, pagePlace: HTMLElement): void => {
  const said = answerAtOnce(text, answerPlace);
  // The search of words prepares itself at once, and would have the answer wait for it.
  const pages = pause().then(() => box?.value !== text || showPages(text, pagePlace, said));
  void Promise.all([said, pages]).then(([{ any }, anyPages]) => {
    if (any || anyPages || text.trim() === '' || box?.value !== text) return;
    document.body.toggleAttribute('data-unanswered', true);
    void sayNothingAnswers(text.trim(), answerPlace);
  });
};

/** Lists what was looked up last, until it is to be forgotten. */
const showRecent = (): void => {
  const section = document.querySelector<HTMLElement>('#recent');
  const all = lookUps();
  if (section === null || all.length === 0) return;
  const items = all.map(({ path, query, title }) => h('li', {}, link(`${path}${query}`, title)));
  section.querySelector('ul')?.replaceChildren(...items.map((item) => toDom(item)));
  section.querySelector('button')?.addEventListener('click', () => {
    forgetLookUps();
    section.hidden = true;
  });
  section.hidden = false;
};

if (box !== null && atOnce !== null && pages !== null) {
  const update = (): void => {
    document.body.toggleAttribute('data-asked', box.value.trim() !== '');
    document.body.toggleAttribute('data-unanswered', false);
    answer(box.value, atOnce, pages);
  };
  box.addEventListener('input', () => {
    keepGiven(KEY, box.value);
    update();
  });
  box.form?.addEventListener('submit', (event) => {
    event.preventDefault();
    update();
  });
  box.addEventListener('focus', () => void fetched().catch(() => undefined), {
    once: true,
  });
  box.value = given.get(KEY) ?? box.value;
  if (box.value !== '') update();
  if (fragment() === box.id) box.focus();
}
showRecent();
