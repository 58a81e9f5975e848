import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LONGEST_FRAGMENT, openShared, shareJob } from '../../../src/job/keeping/share.ts';
import { emptyJob, emptyLine } from '../../../src/job/model/job.ts';
import { anyJob } from '../any-job.ts';

test('there and back', async () => {
  await fc.assert(
    fc.asyncProperty(anyJob, async (job) => {
      const shared = await shareJob(job);
      if (!shared.ok) throw new Error(shared.message);
      expect(shared.fragment).toMatch(/^[\w-]+$/u);
      expect(shared.length).toBe(shared.fragment.length);
      expect(await openShared(shared.fragment)).toEqual({ ok: true, job, said: [] });
    }),
    { numRuns: 40 },
  );
});

test('a long job is refused and the file offered', async () => {
  const note = () => Array.from({ length: 40 }, () => Math.random().toString(36)).join('');
  const lines = Array.from({ length: 100 }, (_, at) => ({
    ...emptyLine(String(at)),
    note: note(),
  }));
  const shared = await shareJob({ ...emptyJob('a', new Date(0)), lines });
  expect(shared.ok ? '' : shared.message).toMatch(/file/);
  expect(shared.length).toBeGreaterThan(LONGEST_FRAGMENT);
});

test('what unpacks to very much is given up', async () => {
  const bomb = deflateRawSync(Buffer.alloc(10_000_000, ' ')).toString('base64url');
  expect(bomb.length).toBeLessThan(LONGEST_FRAGMENT);
  const read = await openShared(bomb);
  expect(read.ok ? '' : read.message).toMatch(/more than any job/);
});

test.each(['', 'AAAA', 'not base64 !', 'x'.repeat(LONGEST_FRAGMENT + 1)])(
  'a fragment that is none is refused: %#',
  async (fragment) => {
    expect((await openShared(fragment)).ok).toBe(false);
  },
);

test('one that was cut is refused or opened in part, never thrown', async () => {
  const shared = await shareJob(emptyJob('a', new Date(0)));
  const fragment = shared.ok ? shared.fragment : '';
  for (let end = 0; end < fragment.length; end += 3) {
    expect((await openShared(fragment.slice(0, end))).ok).toBe(false);
  }
});
