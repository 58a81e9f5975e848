import type { Ask } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { typeset } from '../text/words.ts';

/** Up to so many answers are buttons; more are a list to choose from. */
const MOST_BUTTONS = 4;

/** The answers that are offered to a question, none of them taken beforehand. */
export const answersMarkup = ({ choices, question }: Ask): Element =>
  choices.length <= MOST_BUTTONS
    ? h(
        'p',
        { class: 'actions' },
        choices.map(({ label }, at) =>
          h('button', { type: 'button', 'data-answer': at }, typeset(label)),
        ),
      )
    : h(
        'p',
        { class: 'actions' },
        h(
          'select',
          { 'aria-label': question, 'data-answers': true },
          choices.map(({ label }, at) => h('option', { value: at }, typeset(label))),
        ),
        h('button', { type: 'button', 'data-answer': 'chosen' }, 'Take this'),
      );
