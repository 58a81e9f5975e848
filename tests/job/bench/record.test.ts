import { describe, expect, test } from 'vitest';
import { recordCsv } from '../../../src/job/bench/record-csv.ts';
import { recordOf } from '../../../src/job/index.ts';
import { emptyFitted, emptyLine } from '../../../src/job/model/job.ts';
import { catalogue, catalogueAt, film, jobOf, line, planned } from '../boards.ts';

describe('the record', () => {
  test('tells what was done and why, safe in a spreadsheet', () => {
    const job = jobOf(
      line('C1', {
        ...film,
        decision: 'leave',
        decisionReason: '=reads well',
        fitted: { C1: { ...emptyFitted(), done: true, before: '1', after: '2' } },
      }),
    );
    job.badRows = [{ row: 4, cells: ['x', 'y'], reason: 'no part in it' }];
    const record = recordOf(job, planned(job), catalogue, catalogueAt);
    expect(record.entries[0]).toMatchObject({ why: '=reads well', decidedBy: 'visitor' });
    const csv = recordCsv(record);
    expect(csv).toContain("'=reads well");
    expect(csv).toContain('no part in it');
    expect(csv).toContain('Look over every joint');
  });

  test.each([
    ['age', '45', 'age 45 years'],
    ['age', '45 years', 'age 45 years'],
    ['idle', '1,5', 'without power for 1,5 years'],
    ['loss1khz', '2', 'loss at 1 kHz 2 %'],
    ['capacitance', '61,5 µF', 'capacitance 61,5 µF'],
  ])('says of %s %s the unit that it was read in', (key, text, expected) => {
    const found = { ...emptyLine('a').found, [key]: text };
    const job = jobOf(line('C1', { ...film, found }));
    expect(recordOf(job, planned(job), catalogue, catalogueAt).entries[0]?.found).toBe(expected);
  });

  test('keeps what was written under a designator that is no more', () => {
    const fitted = { C7: { ...emptyFitted(), done: true, after: '9 µF' } };
    const job = jobOf(line('C1', { ...film, fitted }));
    const { entries } = recordOf(job, planned(job), catalogue, catalogueAt);
    expect(entries.map(({ designator }) => designator)).toEqual(['C1', 'C7']);
  });
});
