import { describe, expect, test } from 'vitest';
import { waysPrinted, type PartToPrint, type Way } from '../../../src/engine/printed/index.ts';
import { catalogue } from '../markings/tables.ts';
import { ALL_BUT_BRITISH } from './origins.ts';

const within = (share: number) => ({ minus: share, plus: share, unit: 'fraction' as const });

const ways = (part: PartToPrint): Way[] => waysPrinted(catalogue, part);

const wayOf = (part: PartToPrint, text: string): Way | undefined =>
  ways(part).find((way) => way.text === text);

describe('everything that is said of a way', () => {
  test.each<[part: PartToPrint, way: Way]>([
    [
      { capacitance: 47e-9, tolerance: within(0.1) },
      {
        text: '473K',
        value: '473',
        writing: 'figures',
        means: '47 and 3 noughts, in pF',
        shows: ['tolerance'],
        use: 'usual',
        bodies: ['ceramic', 'film', 'mica', 'tantalum'],
        origins: ALL_BUT_BRITISH,
        notes: ['Not used on British tubes and discs before about 1970.'],
        sources: ['antentop-code', 'kenwood-chart'],
      },
    ],
    [
      { capacitance: 47e-9, tolerance: within(0.1), ratedVoltage: 100, type: 'pet-metallized' },
      {
        text: 'MKT 47nK 100V',
        value: '47n',
        writing: 'letter',
        means: 'n for nF',
        shows: ['dielectric', 'tolerance', 'voltage'],
        use: 'other',
        bodies: ['film'],
        origins: ALL_BUT_BRITISH,
        notes: [],
        sources: ['wiki-rkm', 'ees-help', 'siemens-mk-1978', 'kenwood-chart', 'identity'],
      },
    ],
    [
      { resistance: 50e3, taper: 'linear' },
      {
        text: 'B50K',
        value: '50K',
        writing: 'letter',
        means: 'K for kΩ',
        shows: ['taper'],
        use: 'usual',
        bodies: ['trimmer'],
        origins: [],
        notes: [
          'Newer parts; makers in Asia settled on it. The letter is as the source has it; the share at half travel is trade practice.',
        ],
        sources: ['probsee-rkm', 'trade', 'wikipedia-potentiometer'],
      },
    ],
  ])('%j', (part, way) => {
    expect(wayOf(part, way.text)).toEqual(way);
  });
});

describe('where a way is met', () => {
  test.each<[part: PartToPrint, text: string, bodies: string[] | undefined]>([
    // Bodies in which such a value is met: mica to 0.2 µF, beads from 47 nF.
    [
      { capacitance: 100e-9 },
      '104',
      ['ceramic', 'ceramic-chip', 'film', 'mica', 'aluminium', 'tantalum'],
    ],
    [{ capacitance: 220e-9 }, '224', ['ceramic', 'ceramic-chip', 'film', 'aluminium', 'tantalum']],
    [{ capacitance: 10e-9 }, '103', ['ceramic', 'ceramic-chip', 'film', 'mica', 'glass']],
    // Of such a voltage: beads to 150 V.
    [{ capacitance: 10e-6, ratedVoltage: 150 }, '106 150V', ['ceramic', 'film', 'tantalum']],
    [{ capacitance: 10e-6, ratedVoltage: 160 }, '106 160V', ['ceramic', 'film']],
    // Of the type.
    [{ capacitance: 100e-9, type: 'pet-metallized' }, '104', ['film']],
    [{ capacitance: 100e-9, type: 'ceramic-x7r' }, '104', ['ceramic', 'ceramic-chip']],
    [
      { capacitance: 100e-9, type: 'no-such-type', ratedVoltage: 50 },
      '104 50V',
      ['ceramic', 'film', 'mica', 'tantalum'],
    ],
    [{ capacitance: 10e-9, type: 'al-electrolytic-wet' }, '103', undefined],
    // One or two figures on a film or beside a letter are pF; in µF they have a voltage beside them.
    [{ capacitance: 22e-6 }, '22', ['paper', 'aluminium', 'tantalum']],
    [{ capacitance: 51e-6, tolerance: within(0.05) }, '51J', undefined],
    [{ capacitance: 22e-6, ratedVoltage: 100 }, '22/100', ['film', 'aluminium', 'tantalum']],
    // A resistor is in no body of capacitors.
    [{ resistance: 47e3 }, '473', ['resistor-chip', 'resistor-network', 'trimmer']],
    [{ resistance: 10e6 }, '106', ['resistor-chip', 'resistor-network']],
  ])('%j as %s: %j', (part, text, bodies) => {
    expect(wayOf(part, text)?.bodies).toEqual(bodies);
  });

  const atLeast = { minus: 0, plus: 1, unit: 'fraction' } as const;
  test.each<[part: PartToPrint, text: string, printed: boolean]>([
    // P behind a number is pF, so that 18 pF and no less cannot be 180P; behind a code it says just that.
    [{ capacitance: 18e-12, tolerance: atLeast }, '180P', false],
    [{ capacitance: 10e-9, tolerance: atLeast }, '103P', true],
    [{ capacitance: 560e-12, tolerance: atLeast }, '5600P', false],
    // A letter with figures that is the code of a slope is no point of a value.
    [{ capacitance: 1.33e-12 }, '1П33', false],
    [{ capacitance: 4.75e-6 }, '4м75', false],
    [{ capacitance: 1.3e-12 }, '1П3', true],
    // Nor has a letter that says the unit itself any doubt left.
    [{ capacitance: 4.7e-9, tolerance: atLeast }, '4n7P', true],
    // Only Soviet parts write m for micro, and their letter that looks like a P is one per cent.
    [{ capacitance: 4.7e-6, tolerance: atLeast }, '4m7P', false],
  ])('%j, as %s: %s', (part, text, printed) => {
    expect(wayOf(part, text) !== undefined).toBe(printed);
  });

  test('nobody mixes scripts', () => {
    const texts = ways({ capacitance: 4.7e-9, tolerance: within(0.1), ratedVoltage: 63 }).map(
      ({ text }) => text,
    );
    expect(texts).toContain('4н7С');
    expect(texts).toContain('4n7K');
    expect(texts).not.toContain('4н7K');
    expect(texts).not.toContain('4n7С');
    expect(texts.every((text) => !(/[A-Za-z]/.test(text) && /[А-я]/.test(text)))).toBe(true);
  });
});

describe('two ways of one text', () => {
  test('are one, the more usual leading, and met wherever either is', () => {
    // In full on mica and film, and on British ceramics.
    const way = wayOf({ capacitance: 470e-12 }, '470');
    expect(way).toMatchObject({ use: 'other', means: 'pF as it stands' });
    expect(way?.bodies).toEqual(['ceramic', 'film', 'mica', 'glass']);
    expect(way?.origins).toEqual([]);
    const texts = ways({ capacitance: 470e-12 }).map(({ text }) => text);
    expect(new Set(texts).size).toBe(texts.length);
  });

  test('the usual come first', () => {
    const uses = ways({ capacitance: 47e-9, tolerance: within(0.1) }).map(({ use }) => use);
    const sorted = [
      ...uses.filter((use) => use === 'usual'),
      ...uses.filter((use) => use === 'other'),
      ...uses.filter((use) => use === 'rare'),
    ];
    expect(uses).toEqual(sorted);
    expect(new Set(uses).size).toBe(3);
  });
});

describe('a value of the usual series', () => {
  test.each<[farads: number, plain: string, is: boolean]>([
    // 47 and 24 are of E24, 25 was usual before; 475 and 23 are neither.
    [47e-12, '47', true],
    [24e-12, '24', true],
    [25e-12, '25', true],
    [23e-12, '23', false],
    [4750e-12, '4750', false],
    [4700e-12, '4700', true],
  ])('%d F is printed in full: %s, %s', (farads, plain, is) => {
    expect(wayOf({ capacitance: farads }, plain) !== undefined).toBe(is);
  });
});
