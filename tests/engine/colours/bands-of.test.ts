import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { bandsOf, readColours } from '../../../src/engine/index.ts';
import { valuesBetween } from '../../../src/engine/values/series.ts';

const catalogue = loadCatalogue();
const { markings } = catalogue;

// Worked from the code of IEC 60062 by hand.
test.each([
  [47e3, 0.1, 'yellow violet orange silver'],
  [1e3, 0.05, 'brown black red gold'],
  [1e3, 0.2, 'brown black red'],
  [47e3, 0.01, 'yellow violet black red brown'],
  [4.7, 0.05, 'yellow violet gold gold'],
  [0.47, 0.05, 'yellow violet silver gold'],
  [1e6, 0.05, 'brown black green gold'],
  [127e3, 0.01, 'brown red violet orange brown'],
  [10e6, 0.1, 'brown black blue silver'],
])('%s ohm within %s has the bands %s', (value, tolerance, expected) => {
  expect(bandsOf(markings, { value, tolerance })?.join(' ')).toBe(expected);
});

test.each([
  ['more figures than bands', 12_345, 0.01],
  ['a tolerance without a colour', 1000, 0.07],
  ['no resistance', 0, 0.05],
  ['nothing at all', NaN, 0.05],
])('%s has none', (_what, value, tolerance) => {
  expect(bandsOf(markings, { value, tolerance })).toBeUndefined();
});

test('the schemes and tolerances that are drawn go by their rows', () => {
  const drawnFrom = (percent: Readonly<Record<string, number>>) => ({
    ...markings,
    colourSchemes: markings.colourSchemes.map((row) => ({
      ...row,
      drawn_from_percent: percent[row.id],
    })),
  });
  const part = { value: 47e3, tolerance: 0.02 };
  const bands = (percent: Readonly<Record<string, number>>) =>
    bandsOf(drawnFrom(percent), part)?.join(' ');
  expect(bands({ 'resistor-5': 0 })).toBe('yellow violet black red red');
  expect(bands({ 'resistor-4': 2, 'resistor-5': 0 })).toBe('yellow violet orange red');
  expect(bands({ 'resistor-4': 5, 'resistor-5': 0 })).toBe('yellow violet black red red');
  expect(bands({})).toBeUndefined();
});

test('whatever is drawn is read back as what it was drawn for', () => {
  const values = [
    ...valuesBetween('E24', 0.1, 10e6).map((value) => ({ value, tolerances: [0.2, 0.1, 0.05] })),
    ...valuesBetween('E96', 10, 1e6).map((value) => ({ value, tolerances: [0.02, 0.01] })),
  ];
  const part = fc
    .constantFrom(...values)
    .chain(({ value, tolerances }) =>
      fc.record({ value: fc.constant(value), tolerance: fc.constantFrom(...tolerances) }),
    );
  fc.assert(
    fc.property(part, ({ value, tolerance }) => {
      const colours = bandsOf(markings, { value, tolerance });
      const readings = readColours(catalogue, { form: 'resistor', colours: colours ?? [] });
      const isRead = readings.some(
        ({ resistance, tolerance: read }) =>
          resistance !== undefined &&
          Math.abs(resistance.typ / value - 1) < 1e-6 &&
          read !== undefined &&
          Math.abs(read.plus - tolerance) < 1e-6,
      );
      expect(isRead, `${String(value)} ohm: ${String(colours)}`).toBe(true);
    }),
    { numRuns: 150 },
  );
});
