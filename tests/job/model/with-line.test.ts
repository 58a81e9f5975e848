import { expect, test } from 'vitest';
import { emptyJob, emptyLine, MOST_LINES, type Line } from '../../../src/job/model/job.ts';
import { withLine } from '../../../src/job/model/with-line.ts';

const line = (id: string, said: Partial<Line> = {}): Line => ({ ...emptyLine(id), ...said });
const typed = line('typed', { value: '10 nF' });
const added = line('added', { value: '22 nF' });

test.each<[string, readonly Line[], readonly string[]]>([
  ['an empty job', [], ['added']],
  ['a job whose only row is empty', [line('blank')], ['added']],
  ['a job with rows', [typed], ['typed', 'added']],
  ['rows with an empty one at the end', [typed, line('blank')], ['typed', 'added']],
  ['an empty row before others, which stays', [line('blank'), typed], ['blank', 'typed', 'added']],
])('a line more in %s', (_what, lines, ids) => {
  const job = { ...emptyJob('a', new Date(0)), lines: [...lines] };
  expect(withLine(job, added)?.lines.map(({ id }) => id)).toEqual(ids);
});

test('a full job takes no more', () => {
  const lines = Array.from({ length: MOST_LINES }, () => typed);
  expect(withLine({ ...emptyJob('a', new Date(0)), lines }, added)).toBeUndefined();
});
