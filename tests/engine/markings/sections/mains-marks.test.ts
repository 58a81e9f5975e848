import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../../src/catalogue/index.ts';
import { readMarking } from '../../../../src/engine/index.ts';

const catalogue = loadCatalogue();

/** A frequency beside the volts of a mains or motor part, which is no voltage and no value. */
const marked = [
  ['8 µF 450V~ 50/60 Hz', 8e-6, 450],
  ['8 µF 450V~ 50/60Hz', 8e-6, 450],
  ['25uF 450V~ 50/60Hz S0', 25e-6, 450],
  ['25 µF 450 V AC 50/60Hz', 25e-6, 450],
  ['8 µF 400V~ 50 Hz', 8e-6, 400],
  ['8 µF 400V~ 50Hz', 8e-6, 400],
  ['4 µF 250 VAC 50-60 Hz', 4e-6, 250],
  ['0,1 µF 115 V~ 400 Hz', 0.1e-6, 115],
] as const;

describe('marks of the mains frequency', () => {
  test.each(marked)('%s', (text, farad, volt) => {
    const [first] = readMarking(catalogue, text);
    expect(first?.capacitance?.typ).toBeCloseTo(farad, 12);
    expect(first?.ratedVoltage?.typ).toBe(volt);
    expect(first?.voltageKind).toBe('ac');
    expect(first?.acVoltage).toBeUndefined();
  });

  test.each([
    ['35+5 MFD 370 VAC', 'ac'],
    ['35/5 MFD 440VAC', 'ac'],
    ['2x4 µF 400 V~', 'ac'],
    ['0,1+2x2500p 250V~', 'ac'],
    ['32+32 µF 350 V', undefined],
    ['32+32 µF 350 V-', undefined],
    // 275 V are usual on cans too.
    ['100+100/275', undefined],
  ])('%s: two parts in one body for alternating volts: %s', (text, kind) => {
    const [first] = readMarking(catalogue, text);
    expect(first?.sections?.length).toBeGreaterThan(1);
    expect(first?.voltageKind).toBe(kind);
  });

  test('volts and a frequency alone are no small capacitor', () => {
    for (const text of ['450V~ 50/60 Hz', '450V~ 50 Hz', '250 V~ 60Hz']) {
      const readings = readMarking(catalogue, text);
      expect(readings[0]?.capacitance, text).toBeUndefined();
      expect(readings.filter(({ ratedVoltage }) => (ratedVoltage?.typ ?? 0) < 100)).toEqual([]);
    }
  });

  test.each([
    ['n24 Y 63', undefined],
    ['7n5 Y 110-', undefined],
    ['2n2 Y2 250~ 1000-', 'Y'],
    ['X2 0.1 275~ 630V-', 'X'],
    ['47n X 50V', undefined],
    ['4n7 Y 250~', 'Y'],
    ['n24 Y', 'Y'],
    ['4n7 Y 400V', 'Y'],
  ])('%s: a letter is no class of mains duty beside a lower voltage', (text, mark) => {
    const [first] = readMarking(catalogue, text);
    expect(first?.safetyClass?.charAt(0)).toBe(mark);
  });

  test('a rating for direct voltage stands beside one for alternating voltage', () => {
    const [first] = readMarking(catalogue, '0.1 µF 630V- 250V~');
    expect(first?.ratedVoltage?.typ).toBe(630);
    expect(first?.acVoltage?.typ).toBe(250);
  });
});
