import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';

/**
 * What a resistance at 100 kHz tells of a kind of part is held against what the sizes and
 * resistances of the same data say of new ones; both were once written down apart.
 */

const { look, seriesResistance } = loadCatalogue();

const asked = look.ranges.filter(
  ({ question, unit, kind }) =>
    question === 'esr' &&
    unit === 'ohm*uF' &&
    seriesResistance.some(({ type, frequency_hz }) => type === kind && frequency_hz === 1e5),
);

/** Ohms times microfarads. */
const products = (kind: string, which: 'esr_min' | 'esr_typ') =>
  seriesResistance
    .filter(({ type, frequency_hz }) => type === kind && frequency_hz === 1e5)
    .flatMap((row) => {
      const ohms = row[which];
      return ohms === undefined ? [] : [ohms * row.capacitance * 1e6];
    });

test('there are several kinds whose resistance is known both ways', () => {
  expect(asked.length).toBeGreaterThan(5);
});

test.each(asked.map((row) => [row.kind, row] as const))(
  'a new %s of the tables lies within what the key of looks takes for one',
  (kind, { low, high }) => {
    // A last digit of rounding is no contradiction.
    expect(low).toBeLessThanOrEqual(Math.min(...products(kind, 'esr_min')) * 1.001);
    if (high !== undefined)
      expect(high * 1.001).toBeGreaterThanOrEqual(Math.max(...products(kind, 'esr_typ')));
  },
);
