import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Catalogue } from '../../../src/engine/index.ts';
import { adjustmentsOf } from '../../../src/job/bench/adjustments.ts';
import { presetSteps } from '../../../src/job/bench/preset.ts';
import { recordCsv } from '../../../src/job/bench/record-csv.ts';
import {
  emptyFitted,
  moved,
  openJob,
  planJob,
  recordOf,
  sheetOf,
  splitLine,
  understandWith,
  writeJob,
} from '../../../src/job/index.ts';
import { emptyLine, emptyPreset, type Fitted, type Job } from '../../../src/job/model/job.ts';
import { jobOf } from '../boards.ts';

/** What is written down at the bench, and what it does to plan and record. */

const catalogue = loadCatalogue();
const catalogueAt = () => catalogue;
const planned = (job: Job) => planJob(job, { catalogueAt });
const sheet = (job: Job) => sheetOf(job, planned(job), { catalogueAt, common: catalogue });
const record = (job: Job) => recordOf(job, planned(job), catalogue, catalogueAt);

const can = (designators: string, fitted: Record<string, Partial<Fitted>> = {}) => ({
  ...emptyLine(designators),
  designators,
  kind: 'capacitor',
  type: 'al-electrolytic-wet',
  value: '100 µF',
  volts: '25 V',
  position: 'emitter-bypass',
  fitted: Object.fromEntries(
    Object.entries(fitted).map(([key, one]) => [key, { ...emptyFitted(), ...one }]),
  ),
});

const dry = { found: { capacitance: '41 µF', esr: '12 Ω' } };

describe('readings at the bench', () => {
  test.each([
    ['9,1 µF', '9.1\u00A0µF', ''],
    ['9.1u', '9.1\u00A0µF', ''],
    ['', '', ''],
    ['=1+1', '', /./u],
    ['-3 µF', '', /zero/u],
    ['12 V', '', /./u],
    ['9,1047 µF', '9.1047\u00A0µF', ''],
    ['OL', 'over range', ''],
    ['∞', 'over range', ''],
    ['-', 'no reading', ''],
    ['> 20 µF', 'more than 20\u00A0µF', ''],
    ['1 000 µF', '1000\u00A0µF', ''],
    ['1 000', '', /pF, nF or µF/u],
    ['96', '', /pF, nF or µF/u],
    ['1e99', '', /10.F/u],
    ['1e99 F', '', /10.F/u],
  ])('of capacitance, typed as %s', (text, read, fault) => {
    const { steps } = sheet(jobOf(can('C1', { C1: { found: { capacitance: text } } })));
    const field = steps[0]?.fields.find(
      ({ row, time }) => row.id === 'capacitance' && time === 'before',
    );
    expect(field?.text).toBe(text);
    expect(field?.read).toBe(read);
    expect(field?.fault).toMatch(fault);
  });

  test.each(['OL', '0.L MΩ', '∞', '-'])('of %s are kept, and judge nothing', (text) => {
    const job = jobOf(can('C1', { C1: { found: { esr: text } } }));
    const [line] = planned(job).lines;
    expect(line?.decision).toBe('test');
    expect(line?.rejected).toEqual({});
    expect(record(job).entries[0]?.found).toMatch(
      text === '-' ? /- \(no reading\)/u : /\(over range\)/u,
    );
    expect(record(job).entries[0]?.found).toContain(text);
  });

  test('that cannot be understood judge nothing either', () => {
    for (const text of ['1 000', '1e99 F']) {
      const [line] = planned(jobOf(can('C1', { C1: { found: { capacitance: text } } }))).lines;
      expect(line?.decision, text).toBe('test');
      expect(Object.keys(line?.rejected ?? {}), text).toEqual(['reads']);
    }
  });

  test('of a negative rail are read', () => {
    const regulator = { ...emptyLine('x'), designators: 'U2', kind: 'regulator', value: '7915' };
    const fitted = { U2: { ...emptyFitted(), measured: { 'output-voltage': '-15.02' } } };
    const [step] = sheet(jobOf({ ...regulator, fitted, decision: 'replace' })).steps;
    const after = step?.fields.find(
      (one) => one.row.id === 'output-voltage' && one.time === 'after',
    );
    expect(after).toMatchObject({ read: '−15.02\u00A0V', fault: '' });
  });

  test('judge a part that has its line to itself', () => {
    const before = planned(jobOf(can('C1'))).lines[0];
    const after = planned(jobOf(can('C1', { C1: dry }))).lines[0];
    expect(before?.decision).toBe('test');
    expect(after?.decision).toBe('replace');
    expect(after?.worked?.judgement?.reasons.map(({ working }) => working).join()).toContain('41');
  });

  test('say of one of several what they come to, and make it a line of its own', () => {
    const job = jobOf(can('C1-C4', { C3: dry }));
    const plan = planned(job);
    expect(plan.lines[0]?.decision).toBe('test');
    const { steps } = sheetOf(job, plan, { catalogueAt, common: catalogue });
    const advice = steps.map(({ designator, judgement }) => [designator, judgement?.advice]);
    expect(advice).toEqual([
      ['C1', undefined],
      ['C2', undefined],
      ['C3', 'replace'],
      ['C4', undefined],
    ]);
    const lines = splitLine(job.lines, 'C1-C4', 'C3', 'new');
    expect(lines.map(({ designators }) => designators)).toEqual(['C1, C2, C4', 'C3']);
    const split = planned({ ...job, lines });
    expect(split.lines.map(({ decision }) => decision)).toEqual(['test', 'replace']);
    expect(splitLine(lines, 'new', 'C3', 'x')).toEqual(lines);
  });

  test('a part that was tested is not replaced yet', () => {
    const ticked = { ...dry, done: true, did: 'test', at: '2026-01-01T00:00:00.000Z' };
    const { steps } = sheet(jobOf(can('C1', { C1: ticked })));
    expect(steps[0]).toMatchObject({ action: 'replace', isDone: false });
    const again = sheet(jobOf(can('C1', { C1: { ...ticked, did: 'replace' } })));
    expect(again.steps[0]?.isDone).toBe(true);
  });

  test('stay on the sheet and on record once the part is left alone', () => {
    const job = jobOf({
      ...can('C1, C2', { C1: { found: { capacitance: '104 µF' }, measured: { esr: '0,4' } } }),
      decision: 'leave',
      decisionReason: 'reads well',
    });
    expect(sheet(job).steps.map(({ designator }) => designator)).toEqual(['C1']);
    const [entry] = record(job).entries;
    expect(entry).toMatchObject({ decision: 'leave', why: 'reads well' });
    expect(entry?.found).toContain('Capacitance 104\u00A0µF');
    expect(entry?.measured).toContain('0.4\u00A0Ω');
  });
});

describe('a socket', () => {
  test('has a step of its own with notch, pin 1 and decoupling', () => {
    const socket = { ...emptyLine('x'), designators: 'XU1', kind: 'socket', value: '8 pins' };
    const { steps } = sheet(jobOf({ ...socket, decision: 'replace' }));
    const ids = steps[0]?.fields.map(({ row }) => row.id);
    expect(ids).toEqual(['notch', 'pin-one', 'decoupling']);
    expect(steps[0]?.marks).toContain('pin-1');
  });
});

describe('what is written down of a part before it comes out, and what it is marked for', () => {
  test.each<[string, string, string[], string[]]>([
    ['resistor', '', ['resistance', 'resistance'], []],
    ['pot', '', ['total', 'total', 'middle', 'middle', 'lugs'], []],
    ['diode', 'diode-clamp', ['band', 'drop', 'drop'], ['polarity']],
    ['transistor', '', ['leads', 'leads', 'drop', 'drop'], ['pin-1', 'static']],
    ['regulator', '', ['leads', 'leads', 'output-voltage', 'output-voltage'], ['pin-1', 'static']],
    ['ic', '', ['supply-current', 'supply-current', 'notch', 'pin-one'], ['pin-1', 'static']],
    ['connector', '', ['through', 'through', 'key', 'pin-one'], ['pin-1']],
  ])('%s', (kind, position, fields, marks) => {
    const line = { ...emptyLine('x'), designators: 'X1', kind, value: 'something', position };
    const [step] = sheet(jobOf({ ...line, decision: 'replace' })).steps;
    expect(step?.fields.map(({ row }) => row.id)).toEqual(fields);
    expect(step?.marks).toEqual(marks);
    expect(step?.row?.kinds).toContain(kind);
  });

  test('a new pot that reads outside its tolerance is said so', () => {
    const pot = { type: 'carbon-pot', value: '100k', position: 'volume-control' };
    const read = { RV9: { ...emptyFitted(), measured: { total: '62k' } } };
    const line = { ...emptyLine('x'), designators: 'RV9', kind: 'pot', ...pot, fitted: read };
    const job = jobOf({ ...line, decision: 'replace' });
    const tools = { catalogueAt, understand: understandWith(catalogue) };
    const plan = planJob(job, tools);
    const [step] = sheetOf(job, plan, { catalogueAt, common: catalogue }).steps;
    const after = step?.fields.find(({ row, time }) => row.id === 'total' && time === 'after');
    expect(after?.outside).toMatch(/outside its tolerance/u);
    const open = { RV9: { ...emptyFitted(), measured: { total: 'OL' } } };
    const opened = jobOf({ ...line, fitted: open, decision: 'replace' });
    const said = recordOf(opened, planJob(opened, tools), catalogue, catalogueAt).entries[0]
      ?.measured;
    expect(said).toMatch(/End to end OL \(over range\), outside its tolerance: .* over range/u);
  });
});

describe('a trimmer', () => {
  const said = { ...emptyPreset(), old: '2,5k', total: '20k', supplied: '10k', turns: '20' };

  test.each([
    ['rheostat', '', 2500, -7.5],
    ['rheostat', '10k', 2500, -7.5],
    // The ratio is a quarter, so the new one is set to a quarter of 20 kilohms.
    ['divider', '10k', 5000, -5],
    // Without the old total the ratio is not known.
    ['divider', '', 2500, -7.5],
  ] as const)('used as %s of %s', (use, oldTotal, set, turns) => {
    const steps = presetSteps(catalogue, { ...said, use, oldTotal });
    expect(steps.set?.typ).toBeCloseTo(set);
    expect(steps.turns?.typ).toBeCloseTo(turns);
  });

  test.each([
    ['OL', /no number/u],
    ['∞', /no number/u],
    ['1e99', /1.GΩ/u],
    ['-3 k', /below zero/u],
  ])('that reads %s is set by no number, and says so', (old, why) => {
    const steps = presetSteps(catalogue, { ...said, old });
    expect(steps.set).toBeUndefined();
    expect(steps.rejected['old']).toMatch(why);
  });

  test('each of a line is set by its own reading, and that is recorded', () => {
    const fitted = {
      RV1: { ...emptyFitted(), preset: { ...said, from: '1', to: '2' } },
      RV2: { ...emptyFitted(), preset: { ...said, old: '12k' } },
    };
    const job = jobOf({ ...emptyLine('t'), designators: 'RV1, RV2', kind: 'trimmer', fitted });
    expect(sheet(job).steps.map(({ preset }) => preset?.turns?.typ)).toEqual([-7.5, 2]);
    const adjusted = record(job).entries.map((entry) => entry.adjusted);
    expect(adjusted[0]).toContain('1 to 2: old 2,5k');
    expect(adjusted[0]).toContain('7.5 turns towards less resistance');
    expect(adjusted[1]).toContain('12\u00A0kΩ');
  });
});

describe('adjustments', () => {
  const trimmer = { ...emptyLine('t'), designators: 'RV1, RV2', kind: 'trimmer', note: 'rail' };
  const job = jobOf(trimmer);
  const all = adjustmentsOf(job, planned(job).lines, catalogue.kinds);

  test('begin with the trimmers of the board and keep the order they are given', () => {
    expect(all.map(({ what }) => what)).toEqual(['RV1: rail', 'RV2: rail']);
    const turned = moved(all, 'RV2', -1);
    expect(turned.map(({ id }) => id)).toEqual(['RV2', 'RV1']);
    expect(moved(turned, 'RV2', -1)).toEqual(turned);
    expect(moved(turned, 'none', 1)).toEqual(turned);
    const kept = { ...job, adjustments: turned.slice(0, 1) };
    const again = adjustmentsOf(kept, planned(kept).lines, catalogue.kinds);
    expect(again.map(({ id }) => id)).toEqual(['RV2', 'RV1']);
  });

  /** The tables with what they say of the wiper of a trimmer changed. */
  const said = (wiper: 'preset' | 'panel' | ''): Catalogue => {
    const kind = catalogue.kinds['trimmer'];
    if (kind === undefined) throw new Error('no kind to begin with');
    return { ...catalogue, kinds: { ...catalogue.kinds, trimmer: { ...kind, wiper } } };
  };

  test.each([
    ['preset', true],
    ['panel', false],
    ['', false],
  ] as const)('are those of a kind whose wiper is %j: %s', (wiper, adjusted) => {
    const [common, plan] = [said(wiper), planned(job)];
    const own = sheetOf(job, plan, { catalogueAt, common });
    expect(own.adjustments).toHaveLength(adjusted ? 2 : 0);
    expect(own.steps.map(({ preset }) => preset !== undefined)).toEqual([adjusted, adjusted]);
    expect(recordOf(job, plan, common, catalogueAt).adjustments).toEqual(own.adjustments);
  });
});

test('a line of which nothing was said is no work', () => {
  const job = jobOf({ ...emptyLine('b'), kind: 'capacitor' }, can('C1'));
  expect(sheet(job).steps).toHaveLength(1);
  expect(record(job).entries).toHaveLength(1);
});

describe('the record', () => {
  const job: Job = {
    ...jobOf(
      can('C1-C3', { C2: { ...dry, measured: { capacitance: '98 µF' }, note: '=SUM(A1)' } }),
      { ...can('C9'), decision: 'leave', decisionReason: '@reads well' },
      { ...emptyLine('t'), designators: 'RV1', kind: 'trimmer' },
    ),
    checks: { rails: { done: true, reading: '+15.02, −14.98', note: '', at: '' } },
    adjustments: [{ id: 'RV1', what: 'RV1', before: '14.8', after: '15.0', done: true, at: '' }],
  };

  test('of a job that is opened again from its file is the same', () => {
    const read = openJob(writeJob(job));
    if (!read.ok) throw new Error(read.message);
    expect(record(read.job)).toEqual(record(job));
    expect(recordCsv(record(read.job))).toBe(recordCsv(record(job)));
  });

  test('holds readings, adjustments and checks, and no cell that a spreadsheet would run', () => {
    const csv = recordCsv(record(job));
    for (const text of ['41', '98', '+15.02, −14.98', 'adjustment 1', '15.0', "'=SUM", "'@reads"])
      expect(csv).toContain(text);
    for (const row of csv.split('\r\n'))
      for (const cell of row.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/u))
        expect(cell).not.toMatch(/^"?[=+\-@]/u);
  });
});
