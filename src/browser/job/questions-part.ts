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
import { byId } from '../page/by-id.ts';
import { changeLines } from './state.ts';

/** The questions below the parts list. */

const place = byId('questions', HTMLElement);
let questions: readonly Question[] = [];
/** Whether an answer was just given, so that the next question gets the focus. */
let goesOn = false;

/** The answer that a button gives: its own, or the one that is chosen beside it. */
export const answerOf = (button: HTMLButtonElement, { choices }: Ask): AskChoice | undefined => {
  const { answer } = button.dataset;
  if (answer === undefined) return undefined;
  const list = button.parentElement?.querySelector<HTMLSelectElement>('[data-answers]');
  return choices[Number(answer === 'chosen' ? list?.value : answer)];
};

/** Shows what is asked of the lines of a plan. */
export const showQuestions = (lines: readonly PlannedLine[], common: Catalogue): void => {
  const focused = document.activeElement;
  // Rows that are being ticked, or an answer that is being looked for, stay as they are.
  if (!goesOn && focused !== null && focused !== document.body && place.contains(focused)) return;
  questions = questionsOf(common, lines);
  place.replaceChildren(...questionsMarkup(questions).map((one) => toDom(one)));
  if (!goesOn) return;
  goesOn = false;
  const next = place.querySelector<HTMLElement>('[data-answer], [data-answers]');
  (next ?? byId('add-row', HTMLElement)).focus();
};

/** Makes the questions work. */
export const startQuestions = (): void => {
  place.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    const item = target.closest<HTMLElement>('[data-question]');
    const asked = questions[Number(item?.dataset['question'] ?? 'none')];
    const choice = asked === undefined ? undefined : answerOf(target, asked);
    if (item === null || asked === undefined || choice === undefined) return;
    const left = [...item.querySelectorAll<HTMLInputElement>('[data-for]')]
      .filter(({ checked }) => !checked)
      .map(({ value }) => value);
    const ids = asked.lines.map(({ id }) => id).filter((id) => !left.includes(id));
    if (ids.length === 0) return;
    goesOn = true;
    item.remove();
    changeLines(new Set(ids), (line) => ({ ...line, ...choice.set }));
  });
};
