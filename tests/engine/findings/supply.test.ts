import { describe, expect, test } from 'vitest';
import { assess, type Assessment } from '../../../src/engine/index.ts';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from '../assessment/setting.ts';

const findingOf = ({ findings }: Assessment, id: string): Finding => {
  const found = findings.find(({ finding }) => finding === id);
  if (found === undefined) throw new Error(`no finding ${id}`);
  return found;
};

/** The working with plain spaces between numbers and units. */
const workingOf = (assessment: Assessment, id: string): string =>
  findingOf(assessment, id).working.replaceAll(/\s/gu, ' ');

/** A reservoir of 1000 µF 25 V on a small rectifier and a stiff transformer, replaced. */
const reservoir = (capacitance: number): Assessment =>
  assess(
    catalogue,
    {
      original: {
        type: 'al-electrolytic-wet',
        capacitance: exactly(1000e-6),
        ratedVoltage: exactly(25),
        tolerance: { minus: 0.2, plus: 0.2 },
      },
      position: 'reservoir',
      conditions: given({ 'v-surge': 22, 'source-resistance': 0.2, 'surge-current': 20 }),
    },
    { type: 'al-electrolytic-wet', capacitance },
  );

describe('surge at switch-on', () => {
  test('the same value fits, ten times the value does not', () => {
    expect(findingOf(reservoir(1000e-6), 'inrush').verdict).toBe('fits');
    expect(findingOf(reservoir(10_000e-6), 'inrush').verdict).toBe('stopgap');
  });

  test('what the old part drew is allowed where it is more than the rating', () => {
    const { limit, original } = findingOf(reservoir(1000e-6), 'inrush');
    expect(limit?.high).toBe(Math.max(20, original?.max ?? 0));
  });

  test('the working carries the numbers', () => {
    expect(workingOf(reservoir(2200e-6), 'inrush')).toBe(
      '22 V / (200 mΩ + 72.3 mΩ) = 80.8 A at the first instant; as hot as a half sine of ' +
        '14.8–23.8 A; charge 2.2 × that of the old part, energy 532 mJ',
    );
  });
});
