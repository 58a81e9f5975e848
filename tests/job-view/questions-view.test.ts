import { expect, test } from 'vitest';
import type { Question } from '../../src/job/index.ts';
import { questionsMarkup } from '../../src/job-view/questions-view.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const question = (about: Question['about'], more: Partial<Question> = {}): Question => ({
  about,
  question: `Which ${about}?`,
  key: about,
  choices: ['first', 'second'].map((label) => ({ label, set: { note: label } })),
  lines: [{ id: '1', name: 'C1', marked: '22n' }],
  ...more,
});

const htmlOf = (questions: readonly Question[], chosen: Record<string, string> = {}): string =>
  questionsMarkup(questions, new Map(Object.entries(chosen)))
    .map(toHtml)
    .join('');

const standingAt = (html: string): string =>
  /<option[^>]* selected[^>]*>([^<]*)</u.exec(html)?.[1] ?? 'none';

test('nothing is shown where nothing is asked', () => {
  expect(htmlOf([])).toBe('');
});

test.each<[string, Question, Record<string, string>, string]>([
  ['a likely answer', question('type', { isFirstLikely: true }), {}, 'first'],
  ['a place', question('position'), {}, 'leave open'],
  ['the only use', question('position', { choices: [{ label: 'only', set: {} }] }), {}, 'only'],
  ['what was chosen', question('position'), { position: 'second' }, 'second'],
  ['what was left open', question('type', { isFirstLikely: true }), { type: '' }, 'leave open'],
])('a list stands at %s', (_, asked, chosen, at) => {
  expect(standingAt(htmlOf([asked], chosen))).toBe(at);
});

test.each<[Question['about'], number, number]>([
  ['kind', 1, 0],
  ['type', 1, 0],
  ['position', 1, 0],
  ['marking', 0, 2],
  ['value', 0, 2],
])('%s is asked by %d lists and %d buttons of answers', (about, lists, buttons) => {
  const html = htmlOf([question(about)]);
  expect(html.split('<select').length - 1).toBe(lists);
  expect(html.split('data-answer="').length - 1).toBe(buttons);
});

test('questions keep their number whatever stands before them', () => {
  const html = htmlOf([question('position'), question('marking'), question('type')]);
  const numbers = [...html.matchAll(/data-question="(\d)"/gu)].map(([, at]) => at);
  expect(numbers).toEqual(['1', '2', '0']);
});

test('rows are named with what is printed on them, each once', () => {
  const lines = ['C1', 'C2', 'C3'].map((name, at) => ({
    id: name,
    name,
    marked: at === 1 ? '47n' : '22n',
  }));
  const text = htmlOf([question('type', { lines })]).replaceAll(/<[^>]+>/gu, '');
  expect(text).toContain('C1, C2, C3 22n, 47n Which type?');
});

test('many questions of one list hide none of another', () => {
  const places = Array.from({ length: 70 }, () => question('position'));
  const html = htmlOf([...places, question('type'), question('marking')]);
  expect(html.match(/data-question="/gu)).toHaveLength(52);
  expect(html.match(/20 more follow/gu)).toHaveLength(1);
  expect(html).toContain('Which type?');
  expect(html).toContain('Which marking?');
});
