import type { Ask, Question } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { countOf, typeset } from '../text/words.ts';

/** Up to so many answers are buttons; more are a list to choose from. */
const MOST_BUTTONS = 4;
/** Questions that stand on the page at a time; more follow as these are answered. */
const MOST_QUESTIONS = 30;
/** Rows of one question that can be chosen one by one. */
const MOST_ROWS = 100;
/** Rows that are named before the rest is counted, and how much of each. */
const MOST_NAMES = 5;
const LONGEST_NAME = 60;

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

const rowsMarkup = (lines: Question['lines']): Element =>
  h(
    'details',
    {},
    h('summary', {}, `For all ${countOf(lines.length, 'row')}, or only for some`),
    h(
      'p',
      { class: 'job-bar' },
      lines
        .slice(0, MOST_ROWS)
        .map(({ id, name }) =>
          h(
            'label',
            { class: 'tick' },
            h('input', { type: 'checkbox', value: id, checked: true, 'data-for': true }),
            ` ${name}`,
          ),
        ),
    ),
  );

const rowNames = (lines: Question['lines']): string => {
  const names = lines.slice(0, MOST_NAMES).map(({ name }) => name.slice(0, LONGEST_NAME));
  const more = lines.length - names.length;
  return names.join(', ') + (more > 0 ? ` and ${countOf(more, 'row')} more` : '');
};

const questionMarkup = (asked: Question, at: number): Element => {
  return h(
    'li',
    { class: 'question', 'data-question': at },
    h('p', {}, h('strong', {}, rowNames(asked.lines)), ' ', asked.question),
    answersMarkup(asked),
    asked.lines.length > 1 && rowsMarkup(asked.lines),
  );
};

/** What only the visitor can tell of the lines; nothing where all are understood. */
export const questionsMarkup = (questions: readonly Question[]): Element[] =>
  questions.length === 0
    ? []
    : [
        h(
          'h3',
          { id: 'questions-title', tabindex: -1 },
          `${countOf(questions.length, 'question')} about these rows`,
        ),
        h(
          'p',
          { class: 'small' },
          'An answer is written into the rows and can be undone. If none of them is right, write into the row what is.',
        ),
        h('ul', { class: 'questions' }, questions.slice(0, MOST_QUESTIONS).map(questionMarkup)),
        ...(questions.length > MOST_QUESTIONS
          ? [
              h(
                'p',
                { class: 'small' },
                `${String(questions.length - MOST_QUESTIONS)} more follow once these are answered.`,
              ),
            ]
          : []),
      ];
