import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceReading } from '../../../src/catalogue/slices/slice-reading.ts';
import { waysPrinted, type PartToPrint } from '../../../src/engine/printed/index.ts';

/** The page prints from what a browser fetches, which leaves words out: nothing of the ways may be among them. */

const catalogue = loadCatalogue();
const slice = { ...catalogue, ...sliceReading(catalogue) };
const tenPercent = { minus: 0.1, plus: 0.1, unit: 'fraction' } as const;

const parts: readonly PartToPrint[] = [
  { capacitance: 4.7e-8, tolerance: tenPercent, ratedVoltage: 400 },
  { capacitance: 4.7e-9, temperatureCharacteristic: 'X7R' },
  { capacitance: 1e-10, temperatureCharacteristic: 'N750', tolerance: tenPercent },
  { capacitance: 1e-5, ratedVoltage: 16, type: 'ta-mno2-solid' },
  { capacitance: 1e-7, ratedVoltage: 275, voltageKind: 'ac' },
  { capacitance: 2.5e-10 },
  ...['al-electrolytic-wet', 'film-x2', 'ceramic-y-safety', 'ps-film-foil'].map((type) => ({
    ...{ capacitance: 1e-7, ratedVoltage: 250, type },
    voltageKind: 'ac' as const,
  })),
  { resistance: 4700, tolerance: tenPercent },
  { resistance: 4.75e4 },
  { resistance: 1e5, taper: 'logarithmic' },
];

test.each(parts)('of $capacitance $resistance it prints the same', (part) => {
  const whole = waysPrinted(catalogue, part);
  expect(whole.length).toBeGreaterThan(3);
  expect(waysPrinted(slice, part)).toEqual(whole);
});

test('and notes are among what is printed', () => {
  const notes = parts.flatMap((part) => waysPrinted(slice, part).flatMap((way) => way.notes));
  expect(notes.length).toBeGreaterThan(20);
});
