import './older-browsers.ts';
import {
  lookKey,
  type Catalogue,
  type LookAnswers,
  type LookResult,
  type QuestionId,
} from '../engine/index.ts';
import { readLook, writeTicked, type Looked } from '../look/address.ts';
import { isAnswered } from '../look/is-answered.ts';
import { answerNames, numberText } from '../look/phrases.ts';
import { toDom } from '../markup/to-dom.ts';
import type { QuestionRow } from '../schemas/look.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { dropGiven, given, keepGiven } from './address/address-bar.ts';
import { cataloguePart } from './fetched/catalogue-part.ts';
import { fetchedOnce } from './fetched/fetched-once.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { writeNote } from './page/note.ts';

/** The key that names a part by its look: all that was answered lives in the address. */

const form = byId('look', HTMLFormElement);
const list = byId('questions', HTMLElement);
const answer = byId('answer', HTMLElement);
const found = byId('found', HTMLElement);
const next = byId('next-question', HTMLButtonElement);

const questions = [...list.querySelectorAll('details')];
const questionOf = (id: QuestionId | undefined): HTMLDetailsElement | undefined =>
  questions.find(({ dataset }) => dataset['question'] === id);

const inputsOf = (id: QuestionId): HTMLInputElement[] => {
  const named = form.elements.namedItem(id);
  const all = named instanceof RadioNodeList ? [...named] : [named];
  return all.filter((one) => one instanceof HTMLInputElement);
};

const looked = (catalogue: Catalogue): Looked =>
  readLook(catalogue, new URLSearchParams([...given]));

/** Puts what the address says into the form. */
const fillForm = (): void => {
  for (const [id, text] of given) {
    for (const input of inputsOf(id)) {
      if (input.type === 'checkbox') input.checked = text.split('.').includes(input.value);
      else input.value = text;
    }
  }
};

/** An answer in words; nothing where there is none that was understood. */
const saidTo = (catalogue: Catalogue, question: QuestionRow, { answers }: Looked): string => {
  const ticked = answers.chosen?.[question.id];
  if (ticked !== undefined) {
    return answerNames(catalogue, question.id, ticked, question.kind === 'any' ? 'and' : 'or');
  }
  const number = answers.numbers?.[question.id];
  return number === undefined ? '' : numberText(catalogue, question, number);
};

/** The line under the field of a number: how it was read, or what is wrong with it. */
const showNote = (id: QuestionId, said: string, fault: string | undefined): void => {
  const hint = document.getElementById(`look-${id}-note`)?.dataset['hint'] ?? '';
  const text = fault ?? (said === '' ? hint : `Read as ${said}.`);
  writeNote(`look-${id}`, text, fault !== undefined, inputsOf(id)[0]);
};

/** What was answered, in the line of each question, and what could not be understood. */
const showGiven = (catalogue: Catalogue, now: Looked): void => {
  for (const question of catalogue.look.questions) {
    const fault = now.rejected[question.id];
    const said = saidTo(catalogue, question, now);
    const line = questionOf(question.id)?.querySelector('.given');
    if (line) line.textContent = fault === undefined ? said : 'not understood';
    showNote(question.id, said, fault);
  }
};

/** Styles whose grounds stand open, and those that were closed; the first is open at first. */
const groundsShown = (): Map<string, boolean> =>
  new Map(
    [...found.querySelectorAll<HTMLElement>('[data-style]')].map((item) => [
      item.dataset['style'] ?? '',
      item.querySelector('details')?.open ?? false,
    ]),
  );

let order: QuestionId[] = [];

const showNext = (catalogue: Catalogue, result: LookResult): void => {
  order = result.next.map(({ question }) => question);
  const first = catalogue.look.questions.find(({ id }) => id === order[0]);
  next.hidden = first === undefined;
  next.textContent = first === undefined ? '' : `Ask next: ${midSentence(first.name)}`;
};

/** Open questions first, the most useful one at the top; those that were answered below. */
const arrange = (): void => {
  const open = order.flatMap((id) => questionOf(id) ?? []);
  const rest = questions.filter((one) => !open.includes(one));
  list.replaceChildren(...open, ...rest);
};

/** What words and draws the results is fetched with the first answer. */
const results = fetchedOnce(() => import('../look/results.ts'));

const NOTHING_YET = 'Nothing is answered yet. Tick what you see; leave out what you cannot tell.';
let latest: LookResult | undefined;

const showFound = async (catalogue: Catalogue, answers: LookAnswers, result: LookResult) => {
  const { answerText, resultsMarkup } = await results();
  // Something else was answered meanwhile.
  if (latest !== result) return;
  const known = groundsShown();
  const parts = { catalogue, answers, result };
  answer.textContent = answerText(parts);
  const isOpen = (style: string) => known.get(style) ?? style === result.styles[0]?.id;
  found.replaceChildren(...resultsMarkup(parts, isOpen).map((piece) => toDom(piece)));
};

const notFetched = (): void => {
  answer.textContent =
    'What the key needs could not be fetched; please try again. The list of styles below needs none of it.';
};

const show = (catalogue: Catalogue): void => {
  const now = looked(catalogue);
  const result = lookKey(catalogue, now.answers);
  latest = result;
  showGiven(catalogue, now);
  showNext(catalogue, result);
  if (isAnswered(now.answers)) {
    showFound(catalogue, now.answers, result).catch(notFetched);
  } else {
    answer.textContent = NOTHING_YET;
    found.replaceChildren();
  }
};

const withData = (then: (catalogue: Catalogue) => void): void => {
  cataloguePart('look').then(then, notFetched);
};

const keep = (input: HTMLInputElement): void => {
  const ticked = inputsOf(input.name)
    .filter(({ checked }) => checked)
    .map(({ value }) => value);
  keepGiven(input.name, input.type === 'checkbox' ? writeTicked(ticked) : input.value);
};

form.addEventListener('input', ({ target }) => {
  if (!(target instanceof HTMLInputElement)) return;
  keep(target);
  withData(show);
});

form.addEventListener('submit', (event) => {
  event.preventDefault();
});

form.addEventListener('reset', () => {
  dropGiven([...given.keys()]);
  setTimeout(() => {
    withData((catalogue) => {
      show(catalogue);
      arrange();
    });
  });
});

const openQuestion = (details: HTMLDetailsElement): void => {
  for (const other of questions) other.open = other === details;
  details.querySelector('input')?.focus({ preventScroll: true });
  details.scrollIntoView({ block: 'start' });
};

next.addEventListener('click', () => {
  arrange();
  const first = questionOf(order[0]);
  if (first !== undefined) openQuestion(first);
});

// A link to a question opens it.
found.addEventListener('click', (event) => {
  const link = event.target instanceof Element ? event.target.closest('a') : null;
  const details = link && questionOf(/#question-(.+)$/.exec(link.href)?.[1]);
  if (!details) return;
  event.preventDefault();
  openQuestion(details);
});

copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
fillForm();
withData((catalogue) => {
  show(catalogue);
  arrange();
  const first = questionOf(order[0]);
  for (const details of questions) details.open = details === first;
});
