import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { readAsked } from '../../src/reading/printed/asked.ts';
import { printedMarkup } from '../../src/reading/printed/view.ts';

const catalogue = loadCatalogue();
const tenPercent = { minus: 0.1, plus: 0.1, unit: 'fraction' };

describe('what people write', () => {
  test.each([
    [{ c: '47n' }, { capacitance: 4.7e-8 }],
    [
      { c: '0,047 µF', tol: '10', v: '100' },
      { capacitance: 4.7e-8, tolerance: tenPercent, ratedVoltage: 100 },
    ],
    [
      { c: '0.1 MFD', v: '1 kV' },
      { capacitance: 1e-7, ratedVoltage: 1000 },
    ],
    [
      { c: '220n', v: '275 V AC' },
      { capacitance: 2.2e-7, ratedVoltage: 275, voltageKind: 'ac' },
    ],
    [
      { c: '220n', v: '400 VDC' },
      { capacitance: 2.2e-7, ratedVoltage: 400 },
    ],
    [
      { c: '4.7p', tol: '±0.5 pF' },
      { capacitance: 4.7e-12, tolerance: { minus: 5e-13, plus: 5e-13, unit: 'F' } },
    ],
    [
      { c: '10n', t: 'z5u' },
      { capacitance: 1e-8, temperatureCharacteristic: 'Z5U' },
    ],
    [{ kind: 'resistor', c: '4k7', v: '100' }, { resistance: 4700 }],
    [
      { kind: 'resistor', c: '50k', taper: 'linear' },
      { resistance: 50e3, taper: 'linear' },
    ],
    [{ kind: 'resistor', c: '50k', taper: 'winding' }, { resistance: 50e3 }],
    [{ c: '47n', taper: 'linear' }, { capacitance: 4.7e-8 }],
  ])('%o', (texts, part) => {
    expect(readAsked(catalogue, texts)).toEqual({ part, faults: {} });
  });

  test.each([
    [{ c: 'banana' }, 'c'],
    [{ c: '47 V' }, 'c'],
    [{ c: '47n', tol: 'much' }, 'tol'],
    [{ c: '47n', tol: '-3' }, 'tol'],
    [{ c: '47n', tol: '+20 %' }, 'tol'],
    [{ c: '47n', v: '-' }, 'v'],
    [{ c: '47n', t: 'Q9Q' }, 't'],
    [{ c: 'nonsense', v: 'nonsense' }, 'v'],
  ])('%o gets a sentence beside the field', (texts, key) => {
    const { faults } = readAsked(catalogue, texts);
    expect(faults[key as 'c']).toMatch(/.{10,}\.$/);
  });
});

test('a unit at the start of a sentence keeps its case', () => {
  const text = printedMarkup(catalogue, { capacitance: 4.7e-8 }).map(toHtml).join('');
  expect(text).toContain('. µF as it stands.');
  expect(text).toContain('. n for nF.');
  expect(text).not.toMatch(/PF as|MF as|ΜF|N for nF/);
});
