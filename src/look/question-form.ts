import type { Catalogue } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { AnswerRow, QuestionRow } from '../schemas/look.ts';
import { sentence, typeset } from '../text/words.ts';
import { styleDrawing } from './style-drawing.ts';

/** What a question takes, by its effort from the least on. */
const EFFORTS = ['a look', 'a meter', 'a bench test'];

/** What it takes to answer a question, in words. */
const effortWord = ({ effort }: QuestionRow): string =>
  EFFORTS[Math.min(EFFORTS.length, Math.round(effort)) - 1] ?? '';

const choice = (
  catalogue: Catalogue,
  { question, id, name, meaning, drawn }: AnswerRow,
): Markup => {
  const drawing = drawn === '' ? undefined : styleDrawing(catalogue, drawn, 'choice');
  return h(
    'label',
    { class: drawing === undefined ? 'choice' : 'choice drawn' },
    h('input', { type: 'checkbox', name: question, value: id }),
    drawing,
    h(
      'span',
      {},
      typeset(name),
      meaning !== '' && [' ', h('small', { class: 'quiet' }, typeset(meaning))],
    ),
  );
};

const choices = (catalogue: Catalogue, question: QuestionRow): Markup =>
  h(
    'div',
    { class: 'choices' },
    catalogue.look.answers
      .filter((answer) => answer.question === question.id)
      .map((answer) => choice(catalogue, answer)),
  );

const field = ({ id, text, hint }: QuestionRow): Markup =>
  h(
    'p',
    { class: 'field' },
    h('label', { for: `look-${id}` }, text),
    h('input', {
      id: `look-${id}`,
      name: id,
      autocapitalize: 'off',
      spellcheck: 'false',
      'aria-describedby': `look-${id}-note`,
    }),
    h(
      'small',
      { id: `look-${id}-note`, class: 'hint', 'aria-live': 'polite', 'data-hint': typeset(hint) },
      typeset(hint),
    ),
  );

const body = (catalogue: Catalogue, question: QuestionRow): Markup[] => {
  const how = question.how !== '' && h('p', { class: 'small' }, sentence(question.how));
  if (question.kind === 'range') return [field(question), ...(how ? [how] : [])];
  const hint = question.hint !== '' && h('p', { class: 'small quiet' }, typeset(question.hint));
  return [
    h('fieldset', {}, h('legend', {}, question.text), hint, how, choices(catalogue, question)),
  ];
};

/** One question: a line that says what was answered, and opens to the answers. */
const questionMarkup = (catalogue: Catalogue, question: QuestionRow, open: boolean): Markup =>
  h(
    'details',
    { class: 'question', id: `question-${question.id}`, 'data-question': question.id, open },
    h(
      'summary',
      {},
      h('span', { class: 'question-name' }, question.name),
      ' ',
      h('span', { class: 'given' }),
      ' ',
      h('small', { class: 'quiet effort' }, effortWord(question)),
    ),
    ...body(catalogue, question),
  );

/** All questions, in the given order, the first one open. */
export const questionsMarkup = (
  catalogue: Catalogue,
  order: readonly QuestionRow['id'][],
): Markup[] =>
  order.flatMap((id, i) => {
    const question = catalogue.look.questions.find((one) => one.id === id);
    return question === undefined ? [] : [questionMarkup(catalogue, question, i === 0)];
  });
