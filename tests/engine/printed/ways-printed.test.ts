import { describe, expect, test } from 'vitest';
import { waysPrinted, type PartToPrint, type Way } from '../../../src/engine/printed/index.ts';
import { catalogue, markings } from '../markings/tables.ts';

const ways = (part: PartToPrint): Way[] => waysPrinted(catalogue, part);

const tenPercent = { minus: 0.1, plus: 0.1, unit: 'fraction' } as const;

/** Marks that are met, with what they are printed for; each is one that a person would look for. */
const met: readonly { part: PartToPrint; text: string; use: Way['use']; body?: string }[] = [
  { part: { capacitance: 4.7e-8 }, text: '473', use: 'usual', body: 'film' },
  { part: { capacitance: 4.7e-8, tolerance: tenPercent }, text: '473K', use: 'usual' },
  {
    part: {
      capacitance: 4.7e-7,
      tolerance: { ...tenPercent, minus: 0.05, plus: 0.05 },
      ratedVoltage: 100,
    },
    text: '2A474J',
    use: 'usual',
    body: 'film',
  },
  { part: { capacitance: 1e-7 }, text: '0.1 µF', use: 'usual', body: 'paper' },
  { part: { capacitance: 1e-7 }, text: '.1 MFD', use: 'usual', body: 'paper' },
  { part: { capacitance: 1e-7 }, text: '100n', use: 'usual', body: 'film' },
  { part: { capacitance: 1e-7 }, text: 'u1', use: 'usual', body: 'film' },
  { part: { capacitance: 1e-7 }, text: 'u10', use: 'other', body: 'film' },
  { part: { capacitance: 1e-10 }, text: 'n10', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-7 }, text: '100 000 pF', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-7 }, text: '0,1 µF', use: 'usual', body: 'paper' },
  { part: { capacitance: 4.7e-9 }, text: '4n70', use: 'other', body: 'film' },
  { part: { capacitance: 4.75e-9 }, text: '4751', use: 'other', body: 'mica' },
  { part: { capacitance: 4.7e-8 }, text: 'S4', use: 'usual', body: 'ceramic-chip' },
  { part: { capacitance: 4.7e-12 }, text: '4R7', use: 'usual', body: 'ceramic' },
  { part: { capacitance: 4.7e-12 }, text: '479', use: 'other', body: 'ceramic' },
  { part: { capacitance: 1e-8 }, text: '10K', use: 'other', body: 'ceramic' },
  { part: { capacitance: 4.7e-10 }, text: '470', use: 'other', body: 'mica' },
  { part: { capacitance: 2.5e-10 }, text: '250 MMFD', use: 'other', body: 'mica' },
  { part: { capacitance: 1e-5, ratedVoltage: 6.3 }, text: 'J106', use: 'usual', body: 'tantalum' },
  {
    part: { capacitance: 4.7e-5, ratedVoltage: 16 },
    text: '47/16',
    use: 'other',
    body: 'aluminium',
  },
  {
    part: { capacitance: 1e-8, ratedVoltage: 500 },
    text: '103 no underline',
    use: 'other',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 1e-8,
      tolerance: { minus: 0.2, plus: 0.2, unit: 'fraction' },
      ratedVoltage: 1000,
      temperatureCharacteristic: 'Z5U',
    },
    text: '103M 1kV Z5U',
    use: 'usual',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 4.7e-10,
      tolerance: { minus: 0.05, plus: 0.05, unit: 'fraction' },
      temperatureCharacteristic: 'N750',
    },
    text: '470JN',
    use: 'other',
    body: 'ceramic',
  },
  {
    part: {
      capacitance: 2.2e-7,
      tolerance: { minus: 0.2, plus: 0.2, unit: 'fraction' },
      ratedVoltage: 275,
      voltageKind: 'ac',
    },
    text: 'u22M 275V~',
    use: 'usual',
    body: 'film',
  },
  {
    part: { capacitance: 4.7e-8, tolerance: tenPercent, ratedVoltage: 100, type: 'pet-metallized' },
    text: 'MKT 47nK 100V',
    use: 'other',
    body: 'film',
  },
  { part: { capacitance: 1.5e-7 }, text: 'М15', use: 'usual', body: 'film' },
  { part: { resistance: 4700 }, text: '4K7', use: 'usual' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'B50K', use: 'usual', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'A50K', use: 'other', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'logarithmic' }, text: 'A50K', use: 'usual' },
  { part: { resistance: 50e3, taper: 'linear' }, text: 'B503', use: 'usual', body: 'trimmer' },
  { part: { resistance: 50e3, taper: 'linear' }, text: '50KB', use: 'other', body: 'trimmer' },
  { part: { resistance: 1e6, taper: 'logarithmic' }, text: 'A1M', use: 'usual' },
  { part: { resistance: 1e6, taper: 'logarithmic' }, text: '1 MΩ LOG', use: 'usual' },
  { part: { resistance: 10e3, taper: 'reverse logarithmic' }, text: 'C10K', use: 'other' },
  { part: { resistance: 4700 }, text: '472', use: 'usual', body: 'resistor-chip' },
  { part: { resistance: 49.9 }, text: '68X', use: 'usual', body: 'resistor-chip' },
  { part: { resistance: 4700, tolerance: tenPercent }, text: '4.7 kΩ 10%', use: 'usual' },
];

describe('what is met on parts', () => {
  test.each(met)('$text', ({ part, text, use, body }) => {
    const way = ways(part).find((one) => one.text === text);
    expect(way).toMatchObject({ text, use });
    if (body !== undefined) expect(way?.bodies).toContain(body);
  });

  test.each<[string, PartToPrint]>([
    ['434V', { capacitance: 4.3e-7, tolerance: { minus: 0.1, plus: 1, unit: 'fraction' } }],
    ['47nF', { capacitance: 4.7e-8, tolerance: { minus: 0.01, plus: 0.01, unit: 'fraction' } }],
    ['470K', { capacitance: 4.7e-7 }],
    ['47нK', { capacitance: 4.7e-8, tolerance: tenPercent }],
    ['103', { capacitance: 1e-8, type: 'al-electrolytic-wet' }],
    ['2A104', { capacitance: 1e-7, ratedVoltage: 90 }],
    ['0.1 µF 250VAC', { capacitance: 1e-7, ratedVoltage: 250 }],
    ['B50K', { resistance: 50e3 }],
    ['C50K', { resistance: 50e3, taper: 'linear' }],
    ['4K7B', { resistance: 4700, taper: 'linear' }],
    ['AK5', { resistance: 500, taper: 'logarithmic' }],
    ['103K', { resistance: 10_000, tolerance: { ...tenPercent, minus: 0.05, plus: 0.05 } }],
    ['68X', { resistance: 49.9, tolerance: tenPercent }],
    ['R56', { resistance: 3.9, tolerance: tenPercent }],
    ['.0523U', { capacitance: 5.23e-8, tolerance: { minus: 0, plus: 0.8, unit: 'fraction' } }],
  ])('nobody prints %s for %o', (text, part) => {
    expect(ways(part).map((way) => way.text)).not.toContain(text);
  });

  test.each<PartToPrint>([
    {},
    { capacitance: 0 },
    { capacitance: -1e-9 },
    { capacitance: NaN },
    { capacitance: Infinity },
    { capacitance: Math.PI * 1e-9 },
    { resistance: NaN },
  ])('nothing is printed for %o', (part) => {
    expect(ways(part)).toEqual([]);
  });

  test('units that are printed are units that are read', () => {
    for (const { word, factor } of markings.printedUnits)
      expect(
        markings.unitWords.some(
          (row) => row.word.toLowerCase() === word.toLowerCase() && row.factor === factor,
        ),
        word,
      ).toBe(true);
  });

  test('an arrangement names voltages and words that there are', () => {
    const schemes = new Set<string>(markings.voltageCodes.map((row) => row.scheme));
    const words = new Set(markings.voltageWords.map((row) => row.word));
    for (const { pattern } of markings.arrangements) {
      for (const [, scheme = ''] of pattern.matchAll(/\{voltage:([^}]+)\}/g))
        expect(schemes).toContain(scheme);
      for (const [, word = ''] of pattern.matchAll(/\{volts:([^}]+)\}/g))
        expect(words).toContain(word);
    }
  });
});
