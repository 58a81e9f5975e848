import { describe, expect, test } from 'vitest';
import {
  KEPT_AT_LEAST,
  MOST_STEPS,
  parsesOf,
  skipCost,
  type Parse,
} from '../../../../src/engine/markings/ways/parse.ts';
import { markingOf } from '../../../../src/engine/markings/text/text.ts';
import type { Content } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { lexiconFor } from '../scans.ts';
import { stretchesOf, sumOf, wayOf, type Sought, type WeightName } from '../ways.ts';

describe('what it costs to leave a stretch without a meaning', () => {
  // One, a tenth for each character, six tenths where figures are in it; two and a half at most.
  test.each([
    ['Q', -1.1],
    ['QQX', -1.3],
    ['QQ7', -1.9],
    ['ABCDEFGHIJKLMNO', -2.5],
    ['ABCDEFGHIJKLMNOPQR', -2.5],
    ['123456789', -2.5],
    ['12345678', -2.4],
    // Next to nothing was lost where it cannot be read.
    ['?', -1],
    ['???', -1],
    ['…', -1],
    ['A?', -1.2],
  ])('%s: %d', (text, cost) => {
    expect(skipCost(text)).toBeCloseTo(cost, 9);
  });
});

/** What a way costs or gains beside what it takes. */
const beside = ({ score, taken }: Parse): number =>
  score - taken.reduce((sum, { weight }) => sum + weight, 0);

const leftOf = ({ skipped }: Parse, text: string): string[] =>
  skipped.map(({ at, end }) => text.slice(at, end));

describe('a way through a marking', () => {
  test.each<[text: string, taken: string[], left: string[], adds: WeightName[]]>([
    ['104K', ['104', 'K'], [], []],
    [' 104K\n250V ', ['104', 'K', '250V'], [], []],
    ['104K (250V)', ['104', 'K', '250V'], [], []],
    ['104K, 250V;', ['104', 'K', '250V'], [], []],
    ['ABB', [], ['ABB'], []],
    ['QQX 473K', ['473', 'K'], ['QQX'], []],
    ['473K QQX 250V', ['473', 'K', '250V'], ['QQX'], []],
    // Within a word: what is left beside what is understood is rather one with it.
    ['QX473K', ['473', 'K'], ['QX'], ['restOfWord']],
    ['473%', ['473'], ['%'], ['restOfWord']],
    // A single letter before a code is of a maker, a type or the board.
    ['Q473K', ['473', 'K'], ['Q'], ['strayLetter']],
    ['Q47n', ['47n'], ['Q'], ['restOfWord']],
    // What cannot be read is no part of a word.
    ['473K?', ['473', 'K'], ['?'], []],
    ['473K …250V', ['473', 'K', '250V'], ['…'], []],
    // Film and ceramic; a French word and a Soviet letter.
    ['MKP X7R', ['MKP', 'X7R'], [], ['bodiesClash']],
    ['T.S. 500V 3Н3', ['T.S. 500V', '3Н3'], [], ['originsClash']],
    ['MKP 104K', ['MKP', '104', 'K'], [], []],
    // A value with its unit behind the volts of another is a further section.
    ['40 µF 450V 20 µF 25V', ['40 µF', '450V', '20 µF', '25V'], [], ['furtherSection']],
    [
      '40 µF 450V 20 µF 25V 10 µF 16V',
      ['40 µF', '450V', '20 µF', '25V', '10 µF', '16V'],
      [],
      ['furtherSection', 'furtherSection'],
    ],
  ])('%j takes %j, leaves %j', (text, taken, left, adds) => {
    const parse = wayOf(text, { taken });
    expect(leftOf(parse, text)).toEqual(left);
    const lost = left.reduce((sum, each) => sum + skipCost(each), 0);
    expect(beside(parse)).toBeCloseTo(lost + sumOf(adds), 9);
  });

  // Four figures of a resistor are for two per cent and tighter, three for one to five.
  test.each<[text: string, taken: string[], says: Sought['says'], adds: WeightName[]]>([
    ['4702F', ['4702', 'F'], 'resistance', []],
    ['4702G', ['4702', 'G'], 'resistance', []],
    ['4702J', ['4702', 'J'], 'resistance', ['unusualTolerance']],
    ['473J', ['473', 'J'], 'resistance', []],
    ['473F', ['473', 'F'], 'resistance', []],
    ['473D', ['473', 'D'], 'resistance', ['unusualTolerance']],
    ['473D', ['473', 'D'], 'capacitance', []],
  ])('%s takes %j as a %s', (text, taken, says, adds) => {
    expect(beside(wayOf(text, { taken, ...(says && { says }) }))).toBeCloseTo(sumOf(adds), 9);
  });
});

/** Whether any way takes these stretches, and no others. */
const takes = (text: string, taken: readonly string[]): boolean =>
  parsesOf(lexiconFor(), markingOf(text)).parses.some(
    (parse) => stretchesOf(parse, text).join('|') === taken.join('|'),
  );

describe('what may stand beside what', () => {
  test.each<[text: string, taken: string[], may: boolean]>([
    // A tolerance letter touches its value; one that is met often may have a gap before it.
    ['473G', ['473', 'G'], true],
    ['473 G', ['473', 'G'], true],
    ['473 250V G', ['473', '250V', 'G'], false],
    ['473 250V K', ['473', '250V', 'K'], true],
    ['473 X7R K', ['473', 'X7R', 'K'], true],
    ['473 250V~ K', ['473', '250V~', 'K'], true],
    ['473, K', ['473', 'K'], false],
    ['473 (K)', ['473', 'K'], true],
    ['K', ['K'], false],
    // Each is there once.
    ['473K J', ['473', 'K', 'J'], false],
    ['473K 63V 50V', ['473', 'K', '63V', '50V'], false],
    // A higher one behind it is that of a test.
    ['473K 50V 63V', ['473', 'K', '50V', '63V'], true],
    ['473 474', ['473', '474'], false],
    ['473K 630V- 250V~', ['473', 'K', '630V-', '250V~'], true],
    ['473K 250V~ 275V~', ['473', 'K', '250V~', '275V~'], false],
    ['473 X7R Z5U', ['473', 'X7R', 'Z5U'], false],
    // A second class of mains duty is to earth where the first is across the line.
    ['473 X2 Y2', ['473', 'X2', 'Y2'], true],
    ['X1 X2 473', ['X1', 'X2', '473'], false],
    ['X2 Y2 473', ['X2', 'Y2', '473'], true],
    ['473 X1 400V Y1 250V', ['473', 'X1', '400V', 'Y1', '250V'], true],
    // A further section is told by volts or a sign, and has a unit.
    ['40 µF 20 µF', ['40 µF', '20 µF'], false],
    ['40 µF ▲ 20 µF', ['40 µF', '▲', '20 µF'], true],
    ['40 µF 450V~ 20 µF', ['40 µF', '450V~', '20 µF'], true],
    ['40 µF 450V 473', ['40 µF', '450V', '473'], false],
    ['473 450V 20 µF', ['473', '450V', '20 µF'], false],
    ['40 µF 450V 10 Ω', ['40 µF', '450V', '10 Ω'], false],
    ['10 Ω 450V 20 µF', ['10 Ω', '450V', '20 µF'], false],
    ['16+16 µF 450V 20 µF 25V', ['16+16 µF', '450V', '20 µF', '25V'], true],
    // Behind the letter of a chip's voltage there is nothing but its value.
    ['A106', ['A', '106'], true],
    ['A 106', ['A', '106'], false],
    ['A106', ['A'], false],
    ['A106V', ['A', '106V'], false],
    ['B?0K', ['B', '?0K'], true],
    // A capital letter behind a gap touches nothing; a small one of old ceramics touches the tolerance.
    ['473Ka', ['473', 'K', 'a'], true],
    ['473K a', ['473', 'K', 'a'], false],
    ['473JN', ['473', 'J', 'N'], true],
    ['470JNV', ['470', 'J', 'N', 'V'], true],
    // Bare volts stand behind a value.
    ['473K 250', ['473', 'K', '250'], true],
    ['250 473K', ['250', '473', 'K'], false],
    // Codes cut no run of figures or letters in two.
    ['4731H', ['473', '1H'], false],
    ['1H473', ['1H', '473'], true],
    ['473KV', ['473', 'K', 'V'], false],
    // A comma between figures is the point of a number, and is not passed over.
    ['4,7 n', ['4', '7 n'], false],
    ['473,50V', ['473', '50V'], false],
    ['473, 50V', ['473', '50V'], true],
    ['.50V 473', ['50V', '473'], false],
    ['473 .50V', ['473', '50V'], false],
    ['K.50V', ['50V'], true],
    ['4n7 Q.50V', ['4n7', '50V'], true],
  ])('%j as %j: %s', (text, taken, may) => {
    expect(takes(text, taken)).toBe(may);
  });
});

/** Whether a tolerance may stand behind a value of a kind. */
const takesAs = (text: string, taken: readonly string[], says: Content['says']): boolean =>
  parsesOf(lexiconFor(), markingOf(text)).parses.some(
    (parse) =>
      parse.value?.meaning.content.says === says &&
      stretchesOf(parse, text).join('|') === taken.join('|'),
  );

describe('a tolerance behind a value', () => {
  test.each<[text: string, taken: string[], says: Content['says'], may: boolean]>([
    // Letters of capacitors only, of resistors only, and for other capacitances.
    ['473S', ['473', 'S'], 'capacitance', true],
    ['473S', ['473', 'S'], 'resistance', false],
    ['473J', ['473', 'J'], 'resistance', true],
    ['4p7F', ['4p7', 'F'], 'capacitance', true],
    ['47R ±2 pF', ['47R', '±2 pF'], 'resistance', false],
    ['47R ±2%', ['47R', '±2%'], 'resistance', true],
    ['47p ±2 pF', ['47p', '±2 pF'], 'capacitance', true],
    ['16+16 µF K', ['16+16 µF', 'K'], 'sections', true],
    ['16+16 µF A', ['16+16 µF', 'A'], 'sections', false],
    ['16+16 pF H', ['16+16 pF', 'H'], 'sections', true],
    ['4+4 pF H', ['4+4 pF', 'H'], 'sections', false],
  ])('%s as %j, a %s: %s', (text, taken, says, may) => {
    expect(takesAs(text, taken, says)).toBe(may);
  });

  test.each<[text: string, may: boolean]>([
    // How many fail is said of parts with a military style.
    ['RN55C1002FL', true],
    ['DM15 101JL', true],
    ['MKP 102JL', false],
    ['102JL', false],
  ])('%s says how many fail: %s', (text, may) => {
    const says = parsesOf(lexiconFor(), markingOf(text)).parses.some(({ taken }) =>
      taken.some(({ meaning }) => meaning.means().startsWith('failure rate')),
    );
    expect(says).toBe(may);
  });
});

describe('how many ways are looked at', () => {
  test.each([
    ['103M 1KV Z5U', 60],
    ['1?4M 5?V', 150],
  ])('%s: %d at most, best first', (text, most) => {
    const { parses } = parsesOf(lexiconFor(), markingOf(text));
    const scores = parses.map(({ score }) => score);
    expect(scores.length).toBeGreaterThan(1);
    expect(scores.length).toBeLessThanOrEqual(most);
    expect(scores).toEqual(scores.toSorted((a, b) => b - a));
  });

  test('steps are bounded, however long the marking is', () => {
    const text = '104K 250V X7R '.repeat(21);
    const { steps } = parsesOf(lexiconFor(), markingOf(text));
    // At each of 294 places the least number of ways go on at least, each by a few tokens.
    expect(steps).toBeLessThan(MOST_STEPS + 294 * KEPT_AT_LEAST * 10);
    expect(steps).toBeGreaterThan(294);
  });

  test('a marking of which nothing has a meaning is left as a whole', () => {
    const { parses } = parsesOf(lexiconFor(), markingOf('zzz'));
    expect(parses.map(({ skipped }) => skipped)).toEqual([[{ at: 0, end: 3 }]]);
    expect(parses[0]?.score).toBeCloseTo(
      weights.notUnderstood + 3 * weights.notUnderstoodCharacter,
      9,
    );
  });
});
