import { expect, test } from 'vitest';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { discharge } from '../../../src/engine/sums/mains/discharge.ts';
import { holdDroop } from '../../../src/engine/sums/hold/hold-droop.ts';
import type { Sum } from '../../../src/engine/sums/sum.ts';

/** A capacitance without its unit counts in picofarads, save where the field is one of microfarads. */

const read = (sum: Sum, c: string) => readInputs(sum, undefined, { c });

// Usual are 100 µF on the way down from a high voltage, and 10 nF of a hold capacitor.
test.each(['100', '47', '+47', '100 ±20 %', '100 +80/-20 %', '80..120', '47 to 100'])(
  '“%s” of a reservoir is asked for its unit',
  (text) => {
    const { given, faults } = read(discharge, text);
    expect(faults['c']).toMatch(/^The unit is missing: is that [\d.–]+\u00a0µF\? Write it behind/u);
    expect(given['c']).toMatchObject({ typ: 100e-6 });
  },
);

test('a broken number of one is asked for some unit', () => {
  expect(read(discharge, '4,7').faults['c']).toMatch(/^The unit is missing; write pF, nF or µF/u);
});

test.each<[Sum, string, number]>([
  [discharge, '100u', 100e-6],
  [discharge, '.47', 0.47e-6],
  [holdDroop, '1000', 1e-9],
  [holdDroop, '4700', 4.7e-9],
  [holdDroop, '4700 ±5 %', 4.7e-9],
  [discharge, '4.7e-5', 47e-6],
  [holdDroop, '0.01', 10e-9],
])('as it stands: %#', (sum, text, farad) => {
  const { given, faults } = read(sum, text);
  expect(faults).toEqual({});
  expect(given['c']).toMatchObject({ typ: expect.closeTo(farad, 15) as number });
});
