import { describe, expect, test } from 'vitest';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import type { Parse } from '../../../../src/engine/markings/ways/parse.ts';
import { scoreOf } from '../../../../src/engine/markings/ranking/score.ts';
import { lexiconFor } from '../scans.ts';
import { sumOf, wayOf, type WeightName } from '../ways.ts';

/** What the score of a whole way adds to the sum of what it takes and leaves. */
const added = (parse: Parse, hints: Hints = {}): number =>
  scoreOf(lexiconFor(hints), parse) - parse.score;

type Case = [text: string, taken: string[], adds: WeightName[], hints?: Hints];

/** Ways with a capacitance, and those without a value. */
const capacitances: Case[] = [
  ['104K', ['104', 'K'], []],
  ['MKP', ['MKP'], ['noValue']],
  ['X7R', ['X7R'], ['noValue', 'bodyAgrees'], { body: 'ceramic' }],

  // A figure code stands on every body of a capacitor and says nothing about it; Z stands on some.
  ['104K', ['104', 'K'], [], { body: 'film' }],
  ['104Z', ['104', 'Z'], ['bodyAgrees'], { body: 'film' }],
  ['104Z', ['104', 'Z'], ['bodyDiffers'], { body: 'mica' }],
  ['104K', ['104', 'K'], ['bodyDiffers', 'kindDiffers', 'outsideBody'], { body: 'resistor' }],
  // Such codes were printed everywhere but on old British parts; a capital P was everywhere.
  ['104K', ['104', 'K'], ['originAgrees'], { origin: 'soviet' }],
  ['104K', ['104', 'K'], ['originDiffers'], { origin: 'british' }],
  ['47P', ['47P'], [], { origin: 'british' }],

  // A mica part has 0.2 µF at most, an aluminium can 600 V; either is enough to rule it out.
  ['200 nF', ['200 nF'], [], { body: 'mica' }],
  ['220 nF', ['220 nF'], ['outsideBody'], { body: 'mica' }],
  ['0.5 pF', ['0.5 pF'], ['outsideBody'], { body: 'mica' }],
  ['1 pF', ['1 pF'], [], { body: 'mica' }],
  ['10 µF 600V', ['10 µF', '600V'], [], { body: 'aluminium' }],
  ['10 µF 630V', ['10 µF', '630V'], ['outsideBody'], { body: 'aluminium' }],
  // A test voltage is none that the part is for.
  ['10 µF 630V TEST', ['10 µF', '630V TEST'], [], { body: 'aluminium' }],

  // A code in picofarads is on parts for 50 V and more, one in nanofarads on any.
  ['101 50V', ['101', '50V'], []],
  ['101 16V', ['101', '16V'], ['voltageTooLow']],
  ['101 16V TEST', ['101', '16V TEST'], []],
  ['104 16V', ['104', '16V'], []],

  // Nobody makes a tolerance wider than the value.
  ['2.7 pF ±2 pF', ['2.7 pF', '±2 pF'], []],
  ['2 pF ±2 pF', ['2 pF', '±2 pF'], []],
  ['1.8 pF ±2 pF', ['1.8 pF', '±2 pF'], ['toleranceAboveValue']],
  ['1.8 pF ±20%', ['1.8 pF', '±20%'], []],

  // A class of mains duty is for alternating volts; one without the other says nothing.
  ['0.1uF X2 275V~', ['0.1uF', 'X2', '275V~'], ['safetyWithAc']],
  ['0.1uF X2 275V-', ['0.1uF', 'X2', '275V-'], []],
  ['0.1uF 275V~', ['0.1uF', '275V~'], []],
  ['0.1uF X2', ['0.1uF', 'X2'], []],
  // Its letter alone may be a tolerance, and no mains has less than 100 V.
  ['2n2 Y 110-', ['2n2', 'Y', '110-'], ['safetyOffMains']],
  ['2n2 Y 63V', ['2n2', 'Y', '63V'], ['safetyOffMains']],
  ['2n2 Y 100V', ['2n2', 'Y', '100V'], ['safetyWithoutAc']],
  ['2n2 Y 100V~', ['2n2', 'Y', '100V~'], ['safetyWithAc']],
  ['2n2 Y2 63V', ['2n2', 'Y2', '63V'], []],
  ['2n2 Y 63V TEST', ['2n2', 'Y', '63V TEST'], []],

  // The old Soviet series print their values as they are.
  ['СГМ 471', ['СГМ', '471'], ['styleOfOthers']],
  ['К10-17 471', ['К10-17', '471'], []],

  // Both ends are of a part that bears alternating volts.
  ['88-108uF 110VAC', ['88-108uF', '110VAC'], ['spanWithAc']],
  ['88-108uF 110V', ['88-108uF', '110V'], []],
  // A range is a trimmer's, which bears no volts.
  ['3-30', ['3-30'], []],
  ['3-30 63V', ['3-30', '63V'], ['voltageOfRange']],
  ['3-30 300V TEST', ['3-30', '300V TEST'], []],

  // A test is above the rating.
  ['0.1uF 400V 1200V TEST', ['0.1uF', '400V', '1200V TEST'], []],
  ['0.1uF 400V 400V TEST', ['0.1uF', '400V', '400V TEST'], []],
  ['0.1uF 400V 300V TEST', ['0.1uF', '400V', '300V TEST'], ['testBelowRating']],
  ['0.1uF 300V TEST 400V', ['0.1uF', '300V TEST', '400V'], ['testBelowRating']],

  // What is not of a capacitor or resistor: alone it is believed, unless the part is known.
  ['47 µH', ['47 µH'], ['noValue', 'otherAlone']],
  ['47 µH', ['47 µH'], ['noValue', 'otherAlone', 'kindDiffers'], { kind: 'capacitor' }],
  ['47 µH', ['47 µH'], ['noValue', 'otherAlone', 'kindDiffers'], { body: 'ceramic' }],
  ['47 µH 2W', ['47 µH', '2W'], ['noValue', 'otherAlone']],
  ['4µF 2.5 A', ['4µF', '2.5 A'], []],
  ['4µF 2.5 A', ['4µF', '2.5 A'], [], { kind: 'capacitor' }],
];

const resistances: Case[] = [
  // Figures and a letter of thousands are met on capacitors too, unless something says otherwise.
  ['47K', ['47K'], ['resistor']],
  ['473J', ['473', 'J'], ['resistor']],
  // Four figures are of resistors of 1 %, if they say so.
  ['1002F', ['1002', 'F'], []],
  ['1002', ['1002'], ['resistor']],
  ['1002G', ['1002', 'G'], ['resistor']],
  ['473F', ['473', 'F'], ['resistor']],
  ['47K 2W', ['47K', '2W'], []],
  ['47K 50V', ['47K', '50V'], ['resistor']],
  ['47R', ['47R'], []],
  ['1K0', ['1K0'], []],
  ['47 Ω', ['47 Ω'], []],
  ['47K', ['47K'], [], { kind: 'resistor' }],
  ['47K', ['47K'], ['kindDiffers'], { kind: 'capacitor' }],
  ['47K', ['47K'], [], { body: 'resistor' }],
  ['47K', ['47K'], ['bodyDiffers', 'outsideBody', 'resistor'], { body: 'film' }],
  // A link has no ohms, which no other part in its body has.
  ['000', ['000'], ['bodyAgrees'], { body: 'resistor' }],

  // Pots are not as precise as a tenth, nor as three figures.
  ['B50K', ['B', '50K'], []],
  ['B503M', ['B', '503', 'M'], []],
  ['B503K', ['B', '503', 'K'], ['taperOfPrecisePart']],
  ['B4.99K', ['B', '4.99K'], ['taperOfPrecisePart']],
];

describe('what is added to the score of a way', () => {
  test.each(capacitances)('%s of which %j is taken: %j, %j', (text, taken, adds, hints = {}) => {
    const parse = wayOf(text, { taken, says: 'capacitance', hints });
    expect(added(parse, hints)).toBeCloseTo(sumOf(adds), 9);
  });

  test.each(resistances)('%s as a resistance, %j: %j, %j', (text, taken, adds, hints = {}) => {
    const parse = wayOf(text, { taken, says: 'resistance', hints });
    expect(added(parse, hints)).toBeCloseTo(sumOf(adds), 9);
  });

  // Figures in microfarads are likelier with volts apart from them.
  test.each<[text: string, taken: string[], value: number, adds: WeightName[]]>([
    ['10 16', ['10', '16'], 10e-6, ['voltsBeside']],
    ['10 16V', ['10', '16V'], 10e-6, ['voltsBeside']],
    ['WV 16 10', ['WV 16', '10'], 10e-6, ['voltsBeside']],
    ['10K16', ['10', 'K', '16'], 10e-6, []],
    ['10 16V+', ['10', '16V', '+'], 10e-6, []],
    ['10 16V TEST', ['10', '16V TEST'], 10e-6, []],
    ['10 16', ['10', '16'], 10e-12, ['voltageTooLow']],
    ['47u 16V', ['47u', '16V'], 47e-6, []],
  ])('%s of which %j is taken as %d F: %j', (text, taken, value, adds) => {
    const parse = wayOf(text, { taken, says: 'capacitance', value });
    expect(added(parse)).toBeCloseTo(sumOf(adds), 9);
  });
});

// E3 has 22 and 47, E12 has 27 and E24 has 43 and 24; 10 % is the tolerance of E12, 20 % that of E6.
describe('what is added where a figure of the value was made up', () => {
  test.each<[text: string, taken: string[], madeUpAs: string, adds: WeightName[]]>([
    ['4?3K', ['4?3', 'K'], '7', ['inSeriesOfTolerance']],
    ['4?3K', ['4?3', 'K'], '3', ['beyondSeriesOfTolerance']],
    ['4?3J', ['4?3', 'J'], '3', ['inSeriesOfTolerance']],
    ['2?3M', ['2?3', 'M'], '2', ['inSeriesOfTolerance']],
    ['2?3M', ['2?3', 'M'], '7', ['beyondSeriesOfTolerance']],
    ['2?3M', ['2?3', 'M'], '4', ['beyondSeriesOfTolerance', 'beyondSeriesOfTolerance']],
    // Without a tolerance, or with one in picofarads, no series is to be expected.
    ['4?3', ['4?3'], '3', []],
    ['4?3 ±1 pF', ['4?3', '±1 pF'], '3', []],
  ])('%s of which %j is taken, as %s: %j', (text, taken, madeUpAs, adds) => {
    const parse = wayOf(text, { taken, says: 'capacitance', madeUpAs });
    expect(added(parse)).toBeCloseTo(sumOf(adds), 9);
  });

  test('and nothing where all could be read', () => {
    const parse = wayOf('433K', { taken: ['433', 'K'], says: 'capacitance' });
    expect(added(parse)).toBe(0);
  });
});
