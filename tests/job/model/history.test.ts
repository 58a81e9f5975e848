import { expect, test } from 'vitest';
import { changed, historyOf, MOST_STEPS, redone, undone } from '../../../src/job/model/history.ts';
import { emptyJob, emptyLine, type Job } from '../../../src/job/model/job.ts';

const job = emptyJob('a', new Date(0));
const titled = (title: string): Job => ({ ...job, title });

test('goes back and forth', () => {
  const history = changed(changed(historyOf(job), titled('1')), titled('2'));
  const back = undone(undone(history));
  expect(back.now).toBe(job);
  expect(undone(back)).toBe(back);
  expect(redone(redone(back)).now.title).toBe('2');
  expect(redone(history)).toBe(history);
});

test('a change after going back forgets what was taken back', () => {
  const history = changed(undone(changed(historyOf(job), titled('1'))), titled('2'));
  expect(history.future).toEqual([]);
  expect(undone(history).now).toBe(job);
});

test('letters typed into one field are one step', () => {
  const typed = ['a', 'ab', 'abc'].reduce(
    (history, title) => changed(history, titled(title), 'title'),
    historyOf(job),
  );
  expect(typed.now.title).toBe('abc');
  expect(undone(typed).now).toBe(job);
});

test('2,000 lines and many steps: old ones are forgotten, lines that stayed are shared', () => {
  const lines = Array.from({ length: 2000 }, (_, at) => emptyLine(String(at)));
  let history = historyOf({ ...job, lines });
  for (let step = 0; step < MOST_STEPS + 50; step++) {
    const next = history.now.lines.with(step, { ...emptyLine(String(step)), note: 'seen' });
    history = changed(history, { ...history.now, lines: next });
  }
  expect(history.past).toHaveLength(MOST_STEPS);
  const made = new Set([...history.past, history.now].flatMap((each) => each.lines));
  // One new line object for each step that is kept, no copy of any other.
  expect(made.size).toBe(2000 + MOST_STEPS);
});
