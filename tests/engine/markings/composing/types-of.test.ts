import { describe, expect, test } from 'vitest';
import type {
  Hints,
  TemperatureCharacteristic,
  Tolerance,
} from '../../../../src/engine/markings/index.ts';
import { hasSections, sectionsOf } from '../../../../src/engine/markings/composing/sections-of.ts';
import { singleCharactersAt } from '../../../../src/engine/markings/values/single-characters.ts';
import {
  overTemperature,
  withTolerance,
} from '../../../../src/engine/markings/composing/spread.ts';
import { typesOf } from '../../../../src/engine/markings/composing/types-of.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { exactly } from '../../../../src/engine/quantities/range.ts';
import { expected, inShort, lexiconFor, scanFor, type Short } from '../scans.ts';
import { wayOf, type Sought } from '../ways.ts';

describe('the types that a way suggests', () => {
  test.each<[text: string, sought: Sought, types: string[]]>([
    ['MKT', { taken: ['MKT'] }, ['pet-metallized']],
    ['mica 101', { taken: ['mica', '101'] }, ['silvered-mica', 'mica-clamped']],
    // Those that all words agree on.
    ['CDR01 X7R', { taken: ['CDR01', 'X7R'] }, ['ceramic-x7r']],
    ['X7R CDR01', { taken: ['X7R', 'CDR01'] }, ['ceramic-x7r']],
    ['ceramic X7R', { taken: ['ceramic', 'X7R'] }, ['ceramic-disc-unknown', 'ceramic-x7r']],
    // Where they exclude each other, mains duty first, of bodies that they share.
    ['MKP 104 X2', { taken: ['MKP', '104', 'X2'] }, ['film-x2', 'pp-metallized']],
    ['104 X2', { taken: ['104', 'X2'] }, ['film-x2', 'paper-x-safety']],
    // Of two duties that to earth.
    ['104 X1 Y2', { taken: ['104', 'X1', 'Y2'] }, ['film-y2', 'ceramic-y-safety']],
    ['MKP 104 X1 Y2', { taken: ['MKP', '104', 'X1', 'Y2'] }, ['film-y2', 'pp-metallized']],
    // Nothing by a value alone, what its body is by one body.
    ['104', { taken: ['104'], says: 'capacitance' }, []],
    ['473', { taken: ['473'], says: 'resistance' }, []],
    ['107A', { taken: ['107', 'A'], says: 'capacitance', value: 100e-6 }, ['ta-mno2-solid']],
    ['A106', { taken: ['A', '106'], says: 'capacitance' }, []],
    ['104', { taken: ['104'], says: 'capacitance', hints: { body: 'film' } }, ['film-unknown']],
    // The type that is known, unless the marking names others.
    [
      '104',
      { taken: ['104'], says: 'capacitance', hints: { type: 'ceramic-x7r' } },
      ['ceramic-x7r'],
    ],
    [
      '104 X2',
      { taken: ['104', 'X2'], says: 'capacitance', hints: { type: 'film-x2' } },
      ['film-x2'],
    ],
    [
      '104 X7R',
      { taken: ['104', 'X7R'], says: 'capacitance', hints: { type: 'pet-metallized' } },
      ['ceramic-x7r'],
    ],
    // The body that is known chooses among them.
    [
      '104 X2',
      { taken: ['104', 'X2'], says: 'capacitance', hints: { body: 'paper' } },
      ['paper-x-safety'],
    ],
    ['104 X2', { taken: ['104', 'X2'], hints: { body: 'mica' } }, ['film-x2', 'paper-x-safety']],
    // Sections are of electrolytic cans, where their values are.
    ['16+16 µF', { taken: ['16+16 µF'] }, ['al-electrolytic-wet']],
    ['40 µF 450V 20 µF', { taken: ['40 µF', '450V', '20 µF'] }, ['al-electrolytic-wet']],
    ['0.1+0.1 µF', { taken: ['0.1+0.1 µF'] }, []],
    ['0.1+16 µF', { taken: ['0.1+16 µF'] }, []],
    ['5000+5000 µF', { taken: ['5000+5000 µF'] }, ['al-electrolytic-wet']],
    ['6000+6000 µF', { taken: ['6000+6000 µF'] }, []],
    ['MP 16+16 µF', { taken: ['MP', '16+16 µF'] }, ['metallized-paper']],
    ['BP 10uF', { taken: ['BP', '10uF'] }, ['al-electrolytic-bipolar']],
  ])('%s, %j: %j', (text, sought, types) => {
    expect(typesOf(lexiconFor(sought.hints), wayOf(text, sought))).toEqual(types);
  });
});

describe('the sections of a way', () => {
  test.each<
    [text: string, taken: string[], sections: [uF: number, volts?: number, sign?: string][]]
  >([
    [
      '40 µF ▲ 450V 20 µF ■ 25V',
      ['40 µF', '▲', '450V', '20 µF', '■', '25V'],
      [
        [40, 450, 'triangle'],
        [20, 25, 'square'],
      ],
    ],
    [
      'BP 40 µF ▲ 450V 20 µF ■ 25V',
      ['BP', '40 µF', '▲', '450V', '20 µF', '■', '25V'],
      [
        [40, 450, 'triangle'],
        [20, 25, 'square'],
      ],
    ],
    [
      '▲ 40 µF 450V ■ 20 µF 25V',
      ['▲', '40 µF', '450V', '■', '20 µF', '25V'],
      [
        [40, 450, 'triangle'],
        [20, 25, 'square'],
      ],
    ],
    [
      '16+16 µF 450V 20 µF 25V',
      ['16+16 µF', '450V', '20 µF', '25V'],
      [
        [16, 450],
        [16, 450],
        [20, 25],
      ],
    ],
    [
      '40/450 50/25',
      ['40/450 50/25'],
      [
        [40, 450],
        [50, 25],
      ],
    ],
    // A surge voltage is none of theirs.
    ['16+16 µF 500V SURGE', ['16+16 µF', '500V SURGE'], [[16], [16]]],
  ])('%s', (text, taken, sections) => {
    const parse = wayOf(text, { taken });
    expect(hasSections(parse)).toBe(true);
    expect(
      sectionsOf(parse, undefined).map(({ capacitance, ratedVoltage, symbol }) => [
        Math.round(capacitance.typ * 1e6),
        ratedVoltage?.typ,
        symbol,
      ]),
    ).toEqual(sections.map(([uF, volts, sign]) => [uF, volts, sign]));
  });

  test('have the tolerance of all; one value is no section', () => {
    const parse = wayOf('16+16 µF', { taken: ['16+16 µF'] });
    const [first] = sectionsOf(parse, { minus: 0.1, plus: 0.5, unit: 'fraction' });
    expect(first?.capacitance.min).toBeCloseTo(14.4e-6, 12);
    expect(first?.capacitance.max).toBeCloseTo(24e-6, 12);
    expect(hasSections(wayOf('16 µF 450V', { taken: ['16 µF', '450V'] }))).toBe(false);
  });
});

const fraction = (minus: number, plus: number): Tolerance => ({ minus, plus, unit: 'fraction' });
const farads = (minus: number, plus: number): Tolerance => ({ minus, plus, unit: 'F' });

describe('the ends of a value', () => {
  test.each<[value: number, tolerance: Tolerance | undefined, min: number, max: number]>([
    [100, undefined, 100, 100],
    [100, fraction(0.2, 0.8), 80, 180],
    [100, farads(10, 30), 90, 130],
    // No part has less than nothing.
    [10, farads(20, 30), 0, 40],
  ])('%d with %j', (value, tolerance, min, max) => {
    expect(withTolerance(value, tolerance)).toEqual({ min, typ: value, max });
    if (tolerance === undefined) expect(withTolerance(value, tolerance)).toEqual(exactly(value));
  });

  const span = { code: '-', class: 1, spreadKnown: true, tReference: 20, tMin: -40, tMax: 80 };
  const ppm = (min: number, max: number): TemperatureCharacteristic => ({
    ...span,
    coefficient: { min: min * 1e-6, typ: 0, max: max * 1e-6 },
  });

  test.each<[says: string, of: TemperatureCharacteristic, min: number, max: number]>([
    // 60 K below and above the reference: −1000 ppm/K is 6 % more when cold and 6 % less when hot.
    ['falling', ppm(-1000, -1000), 90 * 0.94, 110 * 1.06],
    ['rising', ppm(500, 500), 90 * 0.97, 110 * 1.03],
    // What one end may fall the other may rise.
    ['either way', ppm(-1000, 500), 90 * 0.94, 110 * 1.06],
    ['the other way', ppm(-500, 1000), 90 * 0.94, 110 * 1.06],
    ['hot alone', { ...ppm(1000, 1000), tMin: 20 }, 90, 110 * 1.06],
    ['cold alone', { ...ppm(1000, 1000), tMax: 20 }, 90 * 0.94, 110],
    [
      'by per cents',
      { ...span, capacitanceChange: { min: -0.56, max: 0.22 } },
      90 * 0.44,
      110 * 1.22,
    ],
    ['to nothing', { ...span, capacitanceChange: { min: -1.5, max: 0 } }, 0, 110],
    ['not at all', span, 90, 110],
  ])('over temperature: %s', (_, of, min, max) => {
    const found = overTemperature(100, fraction(0.1, 0.1), of);
    expect(found.min).toBeCloseTo(min, 9);
    expect(found.typ).toBe(100);
    expect(found.max).toBeCloseTo(max, 9);
  });
});

const { singleCharacter, singleCharacterAndInk } = weights;

describe('a single character of a chip', () => {
  // By the table E is 15; the inks stand for a tenth, one, ten, a hundred and so on of it.
  test.each<[text: string, at: number, found: Short[], hints?: Hints]>([
    ['green E', 0, [[7, '150 pF (E in green ink)', singleCharacterAndInk]]],
    ['E green', 0, [[7, '150 pF (E in green ink)', singleCharacterAndInk]]],
    ['Green  E', 0, [[8, '150 pF (E in green ink)', singleCharacterAndInk]]],
    ['x green E', 2, [[9, '150 pF (E in green ink)', singleCharacterAndInk]]],
    [
      'E',
      0,
      [
        [1, '1.5 pF (E in orange ink)', singleCharacter],
        [1, '15 pF (E in black ink)', singleCharacter],
        [1, '150 pF (E in green ink)', singleCharacter],
        [1, '1.5 nF (E in blue ink)', singleCharacter],
        [1, '15 nF (E in violet ink)', singleCharacter],
        [1, '150 nF (E in red ink)', singleCharacter],
      ],
      { body: 'ceramic-chip' },
    ],
    ['E', 0, []],
    ['white E', 0, []],
    ['E white', 0, []],
    ['green EX', 0, []],
    ['EX', 0, [], { body: 'ceramic-chip' }],
    ['xE', 1, [], { body: 'ceramic-chip' }],
    ['greenE', 0, [], { body: 'ceramic-chip' }],
  ])('%j at %d', (text, at, found, hints) => {
    const scan = scanFor(text, hints);
    const tokens = singleCharactersAt(scan, at);
    expect(inShort(tokens)).toEqual(expected(found));
    for (const { meaning } of tokens) {
      expect(meaning.bodies).toBe(scan.lexicon.bodies.bitsOf(['ceramic-chip']));
      expect(meaning.settle).toBe('the ink of the single character says the multiplier');
    }
  });
});
