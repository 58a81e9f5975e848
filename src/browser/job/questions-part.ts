import type { Catalogue } from '../../engine/index.ts';
import { questionsMarkup } from '../../job-view/questions-view.ts';
import {
  questionsOf,
  type Ask,
  type AskChoice,
  type PlannedLine,
  type Question,
} from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { countOf } from '../../text/words.ts';
import { byId } from '../page/by-id.ts';
import { changeLines } from './state.ts';

/** The questions below the parts list. */

const place = byId('questions', HTMLElement);
/** Leads over a long list to its questions. */
const ahead = byId('questions-ahead', HTMLElement);
let questions: readonly Question[] = [];
/** What is chosen from the lists: drawn anew, they stand where they stood. */
const chosen = new Map<string, string>();
/** Whether an answer was just given, so that the next question gets the focus. */
let goesOn = false;
/** Whether the plan sent its reader here. */
let isSentHere = false;

/** The answer that a button gives: its own, or the one that is chosen beside it. */
export const answerOf = (button: HTMLButtonElement, { choices }: Ask): AskChoice | undefined => {
  const { answer } = button.dataset;
  if (answer === undefined) return undefined;
  const list = button.parentElement?.querySelector<HTMLSelectElement>('[data-answers]');
  return choices[Number(answer === 'chosen' ? list?.value : answer)];
};

const questionAt = (item: HTMLElement | null): Question | undefined =>
  questions[Number(item?.dataset['question'] ?? 'none')];

/** Has a link say how many questions it leads to; there is none where all is answered. */
export const tellHowMany = (place: HTMLElement, count: number, where: string): void => {
  place.hidden = count === 0;
  const link = place.querySelector('a');
  if (link !== null) link.textContent = `${countOf(count, 'question')} ${where}`;
};

/** Shows what is asked of the lines of a plan. */
export const showQuestions = (lines: readonly PlannedLine[], common: Catalogue): void => {
  const focused = document.activeElement;
  // Rows that are being ticked, or an answer that is being looked for, stay as they are.
  if (!goesOn && focused !== null && focused !== document.body && place.contains(focused)) return;
  questions = questionsOf(common, lines);
  place.replaceChildren(...questionsMarkup(questions, chosen).map((one) => toDom(one)));
  tellHowMany(ahead, questions.length, 'below the list');
  if (isSentHere) {
    isSentHere = false;
    document.getElementById('questions-title')?.focus();
  }
  if (!goesOn) return;
  goesOn = false;
  const next = place.querySelector<HTMLElement>('[data-answer], [data-answers]');
  (next ?? byId('add-row', HTMLElement)).focus();
};

/** What answers put into lines, by the id of the line. */
type Given = ReadonlyMap<string, AskChoice['set']>;

/** What an answer puts into the rows of its question that are ticked. */
const givenTo = (item: HTMLElement, asked: Question, { set }: AskChoice): Given => {
  const left = [...item.querySelectorAll<HTMLInputElement>('[data-for]')]
    .filter(({ checked }) => !checked)
    .map(({ value }) => value);
  return new Map(asked.lines.flatMap(({ id }) => (left.includes(id) ? [] : [[id, set] as const])));
};

/** What is chosen from the lists of one section. */
const chosenIn = (section: HTMLElement): Given =>
  new Map(
    [...section.querySelectorAll<HTMLElement>('[data-question]')].flatMap((item) => {
      const asked = questionAt(item);
      const value = item.querySelector<HTMLSelectElement>('[data-answers]')?.value ?? '';
      const choice = value === '' ? undefined : asked?.choices[Number(value)];
      return asked === undefined || choice === undefined ? [] : [...givenTo(item, asked, choice)];
    }),
  );

const answered = (button: HTMLButtonElement): Given => {
  const section = button.dataset['takeChosen'] === undefined ? null : button.closest('section');
  if (section !== null) return chosenIn(section);
  const item = button.closest<HTMLElement>('[data-question]');
  const asked = questionAt(item);
  const choice = asked === undefined ? undefined : answerOf(button, asked);
  return item === null || asked === undefined || choice === undefined
    ? new Map()
    : givenTo(item, asked, choice);
};

/** Makes the questions work. */
export const startQuestions = (): void => {
  byId('plan-asks', HTMLElement).addEventListener('click', () => {
    isSentHere = true;
  });
  place.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    const given = answered(target);
    if (given.size === 0) return;
    goesOn = true;
    changeLines(new Set(given.keys()), (line) => ({ ...line, ...given.get(line.id) }));
  });
  place.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLSelectElement)) return;
    const asked = questionAt(target.closest<HTMLElement>('[data-question]'));
    if (asked === undefined) return;
    const { value } = target;
    chosen.set(asked.key, (value === '' ? undefined : asked.choices[Number(value)])?.label ?? '');
  });
};
