import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dataFolder } from '../../src/catalogue/data-folder.ts';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceJob } from '../../src/catalogue/slices/slice-job.ts';
import { slicePosition } from '../../src/catalogue/slices/slice-position.ts';
import type { Catalogue } from '../../src/engine/index.ts';
import {
  demoJob,
  orderOf,
  planJob,
  recordOf,
  sheetOf,
  understandWith,
} from '../../src/job/index.ts';
import { guessColumns } from '../../src/job/list/columns.ts';
import { readDelimited } from '../../src/job/list/delimited.ts';
import { linesFromRows } from '../../src/job/list/lines-in.ts';
import { demoIds } from '../../src/job/model/demo.ts';
import { jobSchema, type Line } from '../../src/job/model/job.ts';

const catalogue = loadCatalogue();
const slices = new Map<string, Catalogue>();
/** As a browser has it: one slice a position. */
const catalogueAt = (position: string): Catalogue => {
  const slice = slices.get(position) ?? slicePosition(catalogue, position);
  slices.set(position, slice);
  return slice;
};
const common = sliceJob(catalogue);

const planned = (id: string) => {
  const job = demoJob(catalogue.job, id, new Date(0));
  return { job, plan: planJob(job, { catalogueAt }) };
};
const boards = Object.fromEntries(demoIds(catalogue.job).map((id) => [id, planned(id)]));
const board = (id: string) => {
  const found = boards[id];
  if (found === undefined) throw new Error(`no demonstration ${id}`);
  return found;
};
const lineAt = (id: string, designators: string) => {
  const found = board(id).plan.lines.find(({ line }) => line.designators === designators);
  if (found === undefined) throw new Error(`no line ${designators}`);
  return found;
};

describe.each(demoIds(catalogue.job))('the invented board %s', (id) => {
  test('is a job, says that it is invented, and every row of its tables is used', () => {
    const { job } = board(id);
    expect(() => jobSchema.parse(job)).not.toThrow();
    expect(job.invented).toContain('invented');
    const lines = new Set(job.lines.map(({ designators }) => designators));
    const { demoFound, demoPresets, demoConditions } = catalogue.job;
    for (const row of [...demoFound, ...demoPresets, ...demoConditions]) {
      if (row.job === id && row.designators !== '') expect(lines).toContain(row.designators);
    }
  });

  test('has all its numbers understood', () => {
    for (const { line, rejected } of board(id).plan.lines) {
      expect(rejected, line.designators).toEqual({});
    }
  });

  test('comes out of slices as out of the whole catalogue', () => {
    const { job, plan } = board(id);
    const whole = planJob(job, { catalogueAt: () => catalogue });
    const said = ({ lines }: typeof plan) =>
      lines.map(({ decision, standIn }) => [decision, standIn?.candidate, standIn?.verdict]);
    expect(said(plan)).toEqual(said(whole));
  });

  test('has every designator on its record', () => {
    const { job, plan } = board(id);
    const recorded = recordOf(job, plan, common, catalogueAt).entries.map((one) => one.designator);
    expect(recorded).toEqual(plan.lines.flatMap(({ part }) => [...part.designators]));
  });
});

test('the record says its verdicts in the words of the page', () => {
  const whole = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
  const { job } = board('mixer-card');
  const { entries } = recordOf(job, planJob(job, whole), catalogue, whole.catalogueAt);
  const words = entries.map(({ verdict }) => verdict.split(':')[0] ?? '');
  const known = ['', 'fits', 'fits if …', 'stopgap', 'keep out', 'not assessed'];
  expect(words.filter((word) => !known.includes(word))).toEqual([]);
  expect(words).toContain('fits if …');
});

test('the parts lists are tables that our own import reads', () => {
  const read = readDelimited(readFileSync(join(dataFolder(), 'demo/parts.csv'), 'utf8'));
  if (!read.ok) throw new Error(read.message);
  const made = linesFromRows(read.rows, guessColumns(read.rows, catalogue.job.columnWords));
  expect(made.badRows).toEqual([]);
  const typed = ({
    designators,
    kind,
    marking,
    type,
    value,
    tolerance,
    volts,
    position,
    note,
  }: Line) => [designators, kind, marking, type, value, tolerance, volts, position, note];
  const built = demoIds(catalogue.job).flatMap((id) => board(id).job.lines);
  expect(made.lines.map(typed)).toEqual(built.map(typed));
});

describe('the traps', () => {
  test.each([
    ['a bead the wrong way round', 'C1, C2', 'test', 'reverse-voltage'],
    ['a bead on a hard rail', 'C9', 'replace', 'rated-voltage'],
    ['a disc in the audio path', 'C3, C4', 'leave', 'distortion'],
    ['10K is 10 nF', 'C5, C6', 'leave', undefined],
    ['a polystyrene part near a heat sink', 'C17, C18', 'replace', undefined],
  ])('%s', (_, designators, decision, misfit) => {
    const found = lineAt('mixer-card', designators);
    expect(found.decision).toBe(decision);
    expect(found.worked?.misfit()?.finding).toBe(misfit);
  });

  test.each([
    ['mixer-card', 'C1, C2', 'pet-metallized', 'fits'],
    ['mixer-card', 'C3, C4', 'ceramic-c0g', 'fits'],
    ['mixer-card', 'C7, C8', 'al-electrolytic-bipolar', 'fits'],
    // As close as the old one of 1 %.
    ['mixer-card', 'C17, C18', 'ceramic-c0g', 'fits'],
    ['mixer-card', 'C20, C21', 'al-electrolytic-wet', 'fits'],
    ['mains-card', 'C1', 'film-x2', 'fits'],
    ['mains-card', 'C2, C3', 'ceramic-y-safety', 'fits'],
  ])('%s %s: %s %s', (id, designators, type, verdict) => {
    const { standIn } = lineAt(id, designators);
    expect([standIn?.candidate.type, standIn?.verdict]).toEqual([type, verdict]);
  });

  test('a mark that cannot be read is tested and asks for its type', () => {
    expect(lineAt('mixer-card', 'C19')).toMatchObject({
      state: 'open',
      decision: 'test',
      missing: ['type'],
    });
  });
});

describe('the papers of the boards', () => {
  test('the order has what is replaced, resistors and sockets included', () => {
    const { job, plan } = board('mixer-card');
    const { groups, unsettled } = orderOf(plan, job.whole, common);
    expect(unsettled).toEqual([]);
    const needed = groups.reduce((sum, group) => sum + group.needed, 0);
    const replaced = plan.lines.filter(({ decision }) => decision === 'replace');
    expect(needed).toBe(replaced.reduce((sum, { part }) => sum + part.designators.length, 0));
    const resistors = groups.find(({ value }) => value === '47 kΩ');
    expect(resistors).toMatchObject({ needed: 6, spares: 1, total: 7 });
  });

  test('the sheet sets trimmers, marks polarity and closes with rails and chips', () => {
    const { job, plan } = board('mixer-card');
    const { steps, checks } = sheetOf(job, plan, { catalogueAt, common });
    const trimmer = steps.find(({ designator }) => designator === 'RV2');
    // (7.21 - 5.05) of 10 kilohm is 0.216 of 0.78 turns.
    expect(trimmer?.preset?.turns?.typ).toBeCloseTo(0.168);
    const bead = steps.find(({ designator }) => designator === 'C9');
    expect(bead?.marks).toContain('polarity');
    const tested = steps.find(({ designator }) => designator === 'C1');
    expect(tested?.cautions.map(({ row }) => row.id)).toContain('tantalum-fire');
    const ids = checks.map(({ row }) => row.id);
    expect(ids).toEqual(expect.arrayContaining(['limiter', 'rails', 'chips-in', 'adjust']));
  });

  test('only cautions of this board come up, each in full once', () => {
    const seen = (id: string): string[] => {
      const { job, plan } = board(id);
      const { cautions, steps, checks } = sheetOf(job, plan, { catalogueAt, common });
      const all = [cautions, ...[...steps, ...checks].map((one) => one.cautions)].flat();
      const first = all.filter(({ isFirst }) => isFirst).map(({ row }) => row.id);
      expect(first).toHaveLength(new Set(first).size);
      expect(new Set(all.map(({ row }) => row.id))).toEqual(new Set(first));
      return first;
    };
    const low = seen('mixer-card');
    const never = ['flyback-value', 'picture-tube', 'mains', 'mains-class', 'series-dropper'];
    for (const id of [...never, 'valve-coupling-leak', 'charge-returns', 'reform-old-stock'])
      expect(low, id).not.toContain(id);
    expect(low).toEqual(expect.arrayContaining(['electrolytic-vent', 'esd', 'readings-first']));
    const mains = seen('mains-card');
    for (const id of ['flyback-value', 'picture-tube', 'motor-capacitors', 'death-capacitor'])
      expect(mains, id).not.toContain(id);
    expect(mains[0]).toBe('mains');
  });

  test('the mains card brings up what can kill', () => {
    const { job, plan } = board('mains-card');
    const { steps, checks } = sheetOf(job, plan, { catalogueAt, common });
    const paper = steps.find(({ designator }) => designator === 'C1');
    const own = paper?.cautions.map(({ row }) => row.id);
    expect(own).toEqual(expect.arrayContaining(['mains', 'mains-class', 'old-paper-mains']));
    expect(checks.map(({ row }) => row.id)).toContain('mains-insulation');
  });
});
