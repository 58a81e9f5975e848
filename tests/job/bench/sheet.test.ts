import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../../src/job/index.ts';
import type { Line } from '../../../src/job/model/job.ts';
import { can, catalogue, catalogueAt, film, jobOf, line, other, planned } from '../boards.ts';

describe('the sheet', () => {
  const job = jobOf(
    line('C1', can),
    line('C2', film),
    line('R1', other),
    line('C3', { ...film, type: 'ps-film-foil', value: '1 nF', decision: 'test' }),
    line('C4', { ...film, decision: 'leave' }),
    line('XU1', { kind: 'socket', value: '8 pins' }),
  );

  test('tests first, then low parts before tall ones, and skips what is left', () => {
    const { steps } = sheetOf(job, planned(job), { catalogueAt, common: catalogue });
    expect(steps.map(({ designator }) => designator)).toEqual(['C3', 'R1', 'XU1', 'C2', 'C1']);
    const marks = Object.fromEntries(steps.map((step) => [step.designator, step.marks]));
    expect(marks).toEqual({ C3: ['heat'], R1: [], XU1: ['pin-1'], C2: [], C1: ['polarity'] });
  });

  test('closes with the checks that the board needs', () => {
    const ids = (lines: Line[]) => {
      const board = jobOf(...lines);
      return sheetOf(board, planned(board), { catalogueAt, common: catalogue }).checks.map(
        ({ row }) => row.id,
      );
    };
    expect(ids([line('C1', can)])).toContain('ripple');
    expect(ids([line('C1', can)])).not.toContain('mains-insulation');
    const x = { type: 'film-x2', value: '100 nF', volts: '275 V', position: 'mains-x' };
    expect(ids([line('C1', { ...x, decision: 'leave' })])).toContain('mains-insulation');
    expect(ids([line('XU1', { kind: 'socket' })])).toContain('chips-in');
  });
});
