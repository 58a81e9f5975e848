import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openJob, writeJob } from '../../../src/job/keeping/file.ts';
import { migrated } from '../../../src/job/keeping/migrate.ts';
import {
  emptyJob,
  emptyLine,
  LARGEST_FILE,
  MOST_LINES,
  type Job,
} from '../../../src/job/model/job.ts';
import { anyJob } from '../any-job.ts';

const job: Job = {
  ...emptyJob('a', new Date(0)),
  title: 'Board',
  lines: ['x', 'y', 'z'].map((id) => ({ ...emptyLine(id), note: `note of ${id}` })),
};

const opened = (text: string) => {
  const read = openJob(text);
  if (!read.ok) throw new Error(read.message);
  return read;
};

test('there and back', () => {
  fc.assert(
    fc.property(anyJob, (any) => {
      expect(openJob(writeJob(any))).toEqual({ ok: true, job: any, said: [] });
    }),
  );
});

describe('a hostile or foreign file', () => {
  test.each([
    ['nothing', '', /not JSON/],
    ['a list', '[]', /no job/],
    ['another format', '{"format":"other"}', /no job/],
    ['nesting', '['.repeat(1_000_000), /deeper/],
    ['no version', '{"format":"understudy-job"}', /version/],
    ['version as text', '{"format":"understudy-job","version":"1"}', /version/],
    ['an old version that never was', '{"format":"understudy-job","version":0}', /never/],
    ['a newer version', writeJob(job).replace('"version": 4', '"version": 5'), /newer edition/],
    ['50 MB', ' '.repeat(LARGEST_FILE + 1), /50 MB/],
  ])('%s is refused with a sentence', (_, text, message) => {
    const read = openJob(text);
    expect(read.ok ? '' : read.message).toMatch(message);
  });

  test('prototype keys do nothing', () => {
    const text = writeJob(job).replace('"title"', '"__proto__": {"lines": "bad"},\n "title"');
    expect(opened(text).job).toEqual(job);
    expect(({} as Record<string, unknown>)['lines']).toBeUndefined();
  });

  test('a million lines are cut and said', () => {
    const text = `{"format":"understudy-job","version":3,"lines":[${'{},'.repeat(999_999)}{}]}`;
    const { job: read, said } = opened(text);
    expect(read.lines).toHaveLength(MOST_LINES);
    expect(new Set(read.lines.map(({ id }) => id)).size).toBe(MOST_LINES);
    expect(said.join(' ')).toContain('980000 more');
  });
});

describe('what is sound is kept', () => {
  test('of a line of the wrong type', () => {
    const text = JSON.stringify({ ...job, lines: [job.lines[0], { note: 3 }, job.lines[2]] });
    const { job: read, said } = opened(text);
    expect(read.lines).toEqual([job.lines[0], job.lines[2]]);
    expect(read.title).toBe('Board');
    expect(said).toEqual(['Line 2 is broken and left out.']);
  });

  test('of a part of the job that is broken', () => {
    const { job: read, said } = opened(JSON.stringify({ ...job, checks: [1] }));
    expect(read).toEqual(job);
    expect(said).toEqual(['“checks” of the job is missing or broken and is left empty.']);
  });

  test('of a file that breaks off in the third line', () => {
    const text = writeJob(job);
    const { job: read, said } = opened(text.slice(0, text.indexOf('note of z')));
    expect(read.lines).toEqual(job.lines.slice(0, 2));
    expect(said[0]).toMatch(/breaks off/);
  });

  test('wherever it breaks off, nothing throws', () => {
    const text = writeJob(job);
    for (let end = 0; end < text.length; end += 7) {
      const read = openJob(text.slice(0, end));
      if (read.ok) expect(read.job.lines.length).toBeLessThanOrEqual(3);
    }
  });

  test('of two lines with one id', () => {
    const { job: read } = opened(
      writeJob({ ...job, lines: [emptyLine('1'), emptyLine('1'), emptyLine('2')] }),
    );
    expect(new Set(read.lines.map(({ id }) => id)).size).toBe(3);
  });
});

test('goes up step by step', () => {
  const table = new Map([
    [1, (old: Readonly<Record<string, unknown>>) => ({ ...old, name: old['title'] })],
    [2, (old: Readonly<Record<string, unknown>>) => ({ ...old, name: `${String(old['name'])}!` })],
  ]);
  expect(migrated({ version: 1, title: 'a' }, table, 3)).toEqual({
    job: { version: 3, title: 'a', name: 'a!' },
  });
});

test('a job of version 1 keeps its readings and the setting of its trimmers', () => {
  const old = {
    ...job,
    version: 1,
    adjustments: undefined,
    lines: [
      {
        ...emptyLine('t'),
        designators: 'RV1, RV2',
        fitted: { RV2: { done: true, before: '7 k', after: '', note: 'stiff', at: '' } },
        preset: {
          from: '1',
          to: 'wiper',
          old: '7.21 k',
          supplied: '5 k',
          total: '10 k',
          turns: '',
        },
      },
    ],
  };
  const { job: read, said } = opened(JSON.stringify(old));
  expect(said).toEqual([]);
  const [line] = read.lines;
  expect(line?.fitted['RV1']?.preset).toMatchObject({ old: '7.21 k', use: 'rheostat' });
  expect(line?.fitted['RV2']).toMatchObject({ done: true, before: '7 k', note: 'stiff' });
  expect(line?.fitted['RV2']?.preset?.to).toBe('wiper');
});
