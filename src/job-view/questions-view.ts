import type { Ask, Question } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { countOf, typeset } from '../text/words.ts';
import { answersMarkup } from './answers-view.ts';

/** Questions of one list that stand on the page at a time; more follow as these are answered. */
const MOST_QUESTIONS = 50;
/** Rows of one question that can be chosen one by one. */
const MOST_ROWS = 100;
/** Rows that are named before the rest is counted, and how much of each. */
const MOST_NAMES = 5;
const LONGEST_NAME = 60;

/** Answers that were chosen from lists and are not taken yet: labels by the key of their question. */
export type Chosen = ReadonlyMap<string, string>;

/** Questions whose answers are chosen from lists, one below the other, and taken together. */
const LISTED: readonly { about: Ask['about']; title: string; hint: string }[] = [
  {
    about: 'kind',
    title: 'Kinds of part',
    hint: 'What the letters usually stand for is chosen: look them over, then take them all.',
  },
  {
    about: 'type',
    title: 'Types',
    hint: 'The likeliest is chosen: look them over, then take them all.',
  },
  {
    about: 'position',
    title: 'Places and uses',
    hint: 'Choose what you know, then take it; the others stay open.',
  },
];

const isListed = ({ about }: Ask): boolean => LISTED.some((one) => one.about === about);

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

/** The first of some texts, each once and cut, and how many are left. */
const firstOf = (texts: readonly string[], more: (count: number) => string): string => {
  const once = [...new Set(texts)].filter((text) => text !== '');
  const names = once.slice(0, MOST_NAMES).map((text) => text.slice(0, LONGEST_NAME));
  const left = once.length - names.length;
  return names.join(', ') + (left > 0 ? more(left) : '');
};

const askedOf = ({ lines, question }: Question): (Element | string)[] => [
  h(
    'strong',
    {},
    firstOf(
      lines.map(({ name }) => name),
      (left) => ` and ${countOf(left, 'row')} more`,
    ),
  ),
  ' ',
  h(
    'span',
    { class: 'quiet' },
    firstOf(
      lines.map(({ marked }) => typeset(marked)),
      () => ' …',
    ),
  ),
  ' ',
  question,
];

const blockMarkup = (asked: Question, at: number): Element =>
  h(
    'li',
    { class: 'question', 'data-question': at },
    h('p', {}, askedOf(asked)),
    answersMarkup(asked),
    asked.lines.length > 1 && rowsMarkup(asked.lines),
  );

/** The answer that a list stands at: the one chosen, else the likeliest or the only one. */
const standsAt = ({ isFirstLikely, choices, key }: Question, chosen: Chosen): number => {
  const before = chosen.get(key);
  if (before !== undefined) return choices.findIndex(({ label }) => label === before);
  return isFirstLikely === true || choices.length === 1 ? 0 : -1;
};

const listMarkup = (asked: Question, at: number, chosen: Chosen): Element => {
  const stands = standsAt(asked, chosen);
  return h(
    'li',
    { class: 'question', 'data-question': at },
    h(
      'label',
      { class: 'question-row' },
      h('span', {}, askedOf(asked)),
      h(
        'select',
        { 'data-answers': true },
        h('option', { value: '', selected: stands === -1 }, 'leave open'),
        asked.choices.map(({ label }, index) =>
          h('option', { value: index, selected: stands === index }, typeset(label)),
        ),
      ),
    ),
    asked.lines.length > 1 && rowsMarkup(asked.lines),
  );
};

type Numbered = readonly (readonly [Question, number])[];

/** What is said below questions of which not all are shown. */
const moreMarkup = ({ length }: Numbered): Element[] =>
  length <= MOST_QUESTIONS
    ? []
    : [
        h(
          'p',
          { class: 'small' },
          `${String(length - MOST_QUESTIONS)} more follow once these are answered.`,
        ),
      ];

const listsMarkup = (
  { about, title, hint }: (typeof LISTED)[number],
  questions: Numbered,
  chosen: Chosen,
): Element[] => {
  const own = questions.filter(([asked]) => asked.about === about);
  const id = `questions-${about}`;
  return own.length === 0
    ? []
    : [
        h(
          'section',
          { 'aria-labelledby': id },
          h('h4', { id }, title),
          h('p', { class: 'small quiet' }, hint),
          h(
            'ul',
            { class: 'questions' },
            own.slice(0, MOST_QUESTIONS).map(([asked, at]) => listMarkup(asked, at, chosen)),
          ),
          ...moreMarkup(own),
          h(
            'p',
            { class: 'actions' },
            h('button', { type: 'button', 'data-take-chosen': true }, 'Take what is chosen'),
          ),
        ),
      ];
};

/**
 * What only the visitor can tell of the lines; nothing where all are understood.
 * @param chosen what was chosen from the lists when they were drawn before
 */
export const questionsMarkup = (questions: readonly Question[], chosen: Chosen): Element[] => {
  if (questions.length === 0) return [];
  const numbered: Numbered = questions.map((asked, at) => [asked, at]);
  const blocks = numbered.filter(([asked]) => !isListed(asked));
  return [
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
    ...(blocks.length === 0
      ? []
      : [
          h(
            'ul',
            { class: 'questions' },
            blocks.slice(0, MOST_QUESTIONS).map(([asked, at]) => blockMarkup(asked, at)),
          ),
          ...moreMarkup(blocks),
        ]),
    ...LISTED.flatMap((one) => listsMarkup(one, numbered, chosen)),
  ];
};
