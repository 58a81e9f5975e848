import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readUnkept, writeUnkept } from '../../../src/job/keeping/unkept.ts';
import { emptyJob } from '../../../src/job/model/job.ts';
import { anyJob } from '../any-job.ts';

const job = emptyJob('a', new Date(0));

test('a job that was set aside is read back exactly', () => {
  fc.assert(
    fc.property(anyJob, fc.nat(), (any, revision) => {
      expect(readUnkept(writeUnkept({ job: any, revision }))).toEqual({ job: any, revision });
    }),
  );
});

describe('what is no job that was set aside', () => {
  test.each([
    ['nothing', ''],
    ['no JSON', '{"revision":1,'],
    ['a list', '[]'],
    ['a revision below nought', writeUnkept({ job, revision: -1 })],
    ['a broken revision', writeUnkept({ job, revision: 1.5 })],
    ['another file', JSON.stringify({ revision: 0, text: '{"format":"other"}' })],
    ['no text', '{"revision":0}'],
  ])('%s', (_, text) => {
    expect(readUnkept(text)).toBeUndefined();
  });
});
