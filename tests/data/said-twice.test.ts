import { describe, expect, test } from 'vitest';
import { catalogue } from '../engine/assessment/setting.ts';

/** What two tables say of one thing must agree: a reader acts on whichever is met first. */
describe('a value larger than the old one', () => {
  const notes = catalogue.positionNotes.filter(
    ({ kind, unit, max }) => kind === 'larger-value' && unit === 'x' && max !== undefined,
  );

  test('has notes with a figure', () => {
    expect(notes.length).toBeGreaterThan(0);
  });

  test.each(notes.map(({ position, title, max }) => ({ position, title, max })))(
    '$position: “$title” lets in no more than the position does',
    ({ position, max }) => {
      const most = catalogue.positions[position]?.value_high;
      expect(max).toBeLessThanOrEqual(most ?? 0);
    },
  );
});

describe('the value that a position lets in', () => {
  const hard = catalogue.demands.filter(
    ({ finding, weight }) => finding === 'value' && weight === 'hard',
  );

  test.each(hard.map(({ position, limit, limit_high }) => ({ position, limit, limit_high })))(
    '$position: as its demand asks',
    ({ position, limit, limit_high }) => {
      const { value_low, value_high } = catalogue.positions[position] ?? {};
      expect([value_low, value_high]).toEqual([limit, limit_high]);
    },
  );

  test('is asked of every position', () => {
    expect(hard.map(({ position }) => position).toSorted()).toEqual(
      Object.keys(catalogue.positions).toSorted(),
    );
  });
});

describe('an old part with little loss', () => {
  /**
   * Largest loss (%) that a sheet of general-purpose radial parts allows a new one of a rating (V)
   * at 120 Hz, up to 1000 µF; source `lelon-rga`.
   */
  const allowed: [volt: number, loss: number][] = [
    [6.3, 23],
    [10, 20],
    [16, 16],
    [25, 14],
    [35, 12],
    [50, 10],
    [63, 9],
    [100, 8],
    [160, 12],
    [200, 14],
    [250, 17],
    [350, 20],
    [400, 25],
    [450, 25],
  ];

  test.each(allowed)('of %f V is cleared by no more than the %f %% of a new one', (volt, loss) => {
    const clearing = catalogue.triage.filter(
      (row) =>
        row.reading === 'loss-120hz' &&
        row.advice === 'leave' &&
        row.types.includes('al-electrolytic-wet') &&
        volt >= (row.v_from ?? 0) &&
        volt < (row.v_to ?? Infinity),
    );
    expect(clearing.map(({ limit }) => Number(limit) <= loss)).toEqual([true]);
  });
});
