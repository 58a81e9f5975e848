import { describe, expect, test } from 'vitest';
import {
  fieldsOfLine,
  openJob,
  planJob,
  recordOf,
  sheetOf,
  understandWith,
  writeJob,
} from '../../../src/job/index.ts';
import { emptyFitted, emptyLine, type Job, type Line } from '../../../src/job/model/job.ts';
import { catalogue, catalogueAt, jobOf } from '../boards.ts';

/** A resistor or control that was read at the bench, in plan, sheet, record and file. */

const planned = (job: Job) => planJob(job, { catalogueAt, understand: understandWith(catalogue) });

const composition = (designators: string, said: Partial<Line> = {}): Line => ({
  ...emptyLine(designators),
  designators,
  kind: 'resistor',
  type: 'carbon-composition',
  value: '100 kΩ',
  tolerance: '10 %',
  volts: '0.5 W',
  position: 'plate-load',
  ...said,
});

const readAt = (designator: string, resistance: string): Line['fitted'] => ({
  [designator]: { ...emptyFitted(), found: { resistance } },
});

describe('a reading at the bench of a line with one designator', () => {
  test.each([
    ['128 k', 'replace', /126\.5/u],
    ['104k', 'leave', /Within its tolerance/u],
    ['0,072 M', 'test', /lift one lead/u],
    ['OL', 'replace', /Open/u],
    ['> 200 M', 'replace', /Open/u],
    ['-', 'test', /drifts upwards/u],
    ['', 'test', /drifts upwards/u],
  ])('of %j: %s', (text, decision, why) => {
    const [line] = planned(jobOf(composition('R1', { fitted: readAt('R1', text) }))).lines;
    expect(line?.decision).toBe(decision);
    const [reason] = line?.worked?.judgement.reasons ?? [];
    expect(`${reason?.why ?? ''} ${reason?.working ?? ''}`).toMatch(why);
    expect(line?.rejected).toEqual({});
  });
});

test('one of several is judged by itself on the sheet, and its line is not', () => {
  const job = jobOf(composition('R1-R3', { fitted: readAt('R2', '128k') }));
  const plan = planned(job);
  expect(plan.lines[0]?.decision).toBe('test');
  const { steps } = sheetOf(job, plan, { catalogueAt, common: catalogue });
  expect(steps.map(({ designator, judgement }) => [designator, judgement?.advice])).toEqual([
    ['R1', undefined],
    ['R2', 'replace'],
    ['R3', undefined],
  ]);
});

test('what was found of a line stands in its fields and in the record', () => {
  const line = composition('R1', {
    found: { ...emptyLine('x').found, resistance: '128 k' },
  });
  const job = jobOf(line);
  const plan = planned(job);
  const [one] = plan.lines;
  if (one === undefined) throw new Error('no line');
  const fields = fieldsOfLine(catalogue, { line, part: one.part, whole: job.whole });
  expect(fields?.fields.find(({ key }) => key === 'found resistance')?.text).toBe('128 k');
  expect(one.decision).toBe('replace');
  expect(recordOf(job, plan, catalogue, catalogueAt).entries[0]?.found).toContain(
    'resistance 128 k',
  );
});

test('of a value that nobody gave nothing is judged', () => {
  const job = jobOf(composition('R1', { value: '', fitted: readAt('R1', '128k') }));
  expect(planned(job).lines[0]?.worked?.judgement.reasons[0]?.working).toBe('');
});

test('a reading that is no resistance is told', () => {
  const job = jobOf(composition('R1', { found: { ...emptyLine('x').found, resistance: '3 V' } }));
  expect(planned(job).lines[0]?.rejected['resistance']).toMatch(/./u);
});

test('a control is read from end to end', () => {
  const pot: Line = {
    ...emptyLine('VR1'),
    designators: 'VR1',
    kind: 'pot',
    type: 'carbon-pot',
    value: '470 kΩ',
    position: 'volume-control',
    fitted: { VR1: { ...emptyFitted(), found: { total: 'OL' } } },
  };
  expect(planned(jobOf(pot)).lines[0]?.decision).toBe('replace');
});

test('a job of version 3 is brought up', () => {
  const { resistance, ...found } = emptyLine('R1').found;
  const job = jobOf(composition('R1'));
  const old = { ...job, version: 3, lines: job.lines.map((line) => ({ ...line, found })) };
  expect(openJob(JSON.stringify(old))).toEqual({ ok: true, job, said: [] });
  expect(openJob(writeJob(job))).toEqual({ ok: true, job, said: [] });
  expect(resistance).toBe('');
});
