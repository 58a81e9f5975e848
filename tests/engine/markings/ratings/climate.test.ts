import { describe, expect, test } from 'vitest';
import {
  climateAt,
  readClimate,
  type Climate,
} from '../../../../src/engine/markings/ratings/climate.ts';
import { filledIn, sayFigures } from '../../../../src/engine/markings/text/filled-in.ts';
import { markingOf } from '../../../../src/engine/markings/text/text.ts';
import { scanFor } from '../scans.ts';
import { markings } from '../tables.ts';

describe('a climatic category', () => {
  // IEC 60068: degrees below nought, degrees above it, days of damp heat; DIN 40040: three letters.
  test.each<[text: string, at: number, end: number, climate: Climate, means: string]>([
    [
      '40/085/21',
      0,
      9,
      { tMin: -40, tMax: 85, dampDays: 21 },
      '−40 to 85 °C, 21 days of damp heat',
    ],
    ['25/85/56', 0, 8, { tMin: -25, tMax: 85, dampDays: 56 }, '−25 to 85 °C, 56 days of damp heat'],
    ['00/070/04', 0, 9, { tMin: 0, tMax: 70, dampDays: 4 }, '0 to 70 °C, 4 days of damp heat'],
    [
      '47n 55/125/56 V',
      4,
      13,
      { tMin: -55, tMax: 125, dampDays: 56 },
      '−55 to 125 °C, 56 days of damp heat',
    ],
    [
      'FKF',
      0,
      3,
      { tMin: -55, tMax: 125 },
      '−55 to 125 °C; to 75 per cent in the yearly mean, 95 per cent on 30 days, no dew',
    ],
    [
      'n HSC.',
      2,
      5,
      { tMin: -25, tMax: 70 },
      '−25 to 70 °C; humidity to 95 per cent in the yearly mean, 100 per cent often',
    ],
    [
      'KYG',
      0,
      3,
      { tMin: 0, tMax: 40 },
      '0 to 40 °C; to 65 per cent in the yearly mean, 85 per cent on 60 days',
    ],
  ])('%s from %d on', (text, at, end, climate, means) => {
    expect(readClimate(markings, text, at)).toEqual({
      end,
      climate,
      means,
      source: climate.dampDays === undefined ? 'din-40040' : 'dk-climatic',
    });
  });

  test.each([
    '40/085/211',
    '40/085/21/1',
    '4/085/21',
    '400/085/21',
    '40/8/21',
    '40/0850/21',
    '40/085/2',
    '40/085',
    '40 085 21',
    // A letter that the standard does not have in its place, one too many, or a small one.
    'AKF',
    'FAF',
    'FKA',
    'FKFF',
    'FKF2',
    'FK',
    'fkf',
    '/FKF',
    '',
  ])('%j is none', (text) => {
    expect(readClimate(markings, text)).toBeUndefined();
  });

  test('in figures is none where the table has no such form', () => {
    const climateLetters = markings.climateLetters.filter(({ place }) => place !== 'figures');
    expect(readClimate({ ...markings, climateLetters }, '40/085/21')).toBeUndefined();
  });

  test('of every letter of the standard is as its row has it', () => {
    for (const { place, letter, degc, meaning } of markings.climateLetters) {
      const at = (own: string, usual: string): string => (place === own ? letter : usual);
      const found = readClimate(markings, at('low', 'F') + at('high', 'K') + at('humidity', 'F'));
      if (place === 'low') expect(found?.climate).toEqual({ tMin: degc, tMax: 125 });
      if (place === 'high') expect(found?.climate).toEqual({ tMin: -55, tMax: degc });
      if (place === 'humidity') expect(found?.means).toBe(`−55 to 125 °C; ${meaning}`);
    }
  });
});

describe('a climatic category in a marking', () => {
  test.each<[text: string, at: number, end: number, inFigures: boolean]>([
    ['4n7 40/085/21', 4, 13, true],
    ['40/085/21 4n7', 0, 9, true],
    ['4n7-40/085/21', 4, 13, true],
    // Letters may be anything where no value stands before them.
    ['4n7 FKF', 4, 7, false],
  ])('%j at %d', (text, at, end, inFigures) => {
    const scan = scanFor(text);
    const [token, ...others] = climateAt(scan, at);
    expect(others).toEqual([]);
    expect(token).toMatchObject({
      at,
      end,
      // Figures with strokes between are hardly anything else; three letters may well be.
      weight: inFigures ? 1.2 : 0.4,
      needs: inFigures ? [] : ['value-before'],
      assumed: [],
      meaning: { slot: 'climate', types: [], source: inFigures ? 'dk-climatic' : 'din-40040' },
    });
    expect(token?.meaning.bodies).toBe(scan.lexicon.bodies.all);
    expect(token?.meaning.origins).toBe(scan.lexicon.origins.all);
    expect(token?.meaning.means()).toBe(
      inFigures
        ? '−40 to 85 °C, 21 days of damp heat'
        : '−55 to 125 °C; to 75 per cent in the yearly mean, 95 per cent on 30 days, no dew',
    );
  });

  // Temperatures that the standard has are tried in the place of a worn figure: −65, −55, −40, −25,
  // −10 and 0 °C below, and 40, 50, 55, 60 and so on up to 170 °C above.
  test.each<[text: string, worn: number, as: string, means: string]>([
    ['55/?85/21', 3, '0', '−55 to 85 °C, 21 days of damp heat'],
    ['55/0?5/21', 4, '5 or 6 or 7 or 8', '−55 to 55 or 65 or 75 or 85 °C, 21 days of damp heat'],
    ['55/0?0/21', 4, '4 or 5 or 6 or 7 or 8 or 9', '−55 to 40 to 90 °C, 21 days of damp heat'],
    ['?5/100/21', 0, '2 or 5 or 6', '−65 or −55 or −25 to 100 °C, 21 days of damp heat'],
    ['55/085/2?', 8, 'any figure', '−55 to 85 °C, 20 to 29 days of damp heat'],
    ['55/085/?6', 7, 'any figure', '−55 to 85 °C, 6 to 96 days of damp heat'],
  ])('%s with a worn figure', (text, worn, as, means) => {
    const [token] = climateAt(scanFor(text), 0);
    expect(token).toMatchObject({
      end: text.length,
      meaning: { content: { says: 'climate' }, source: 'dk-climatic' },
      assumed: [{ at: worn, as, why: 'worn' }],
    });
    expect(token?.meaning.means()).toBe(means);
  });

  test.each<[text: string, at: number]>([
    ['x40/085/21', 1],
    // No such temperatures, two figures missing, a letter missing, or no such category at all.
    ['35/?85/21', 0],
    ['55/9?5/21', 0],
    ['5?/?85/21', 0],
    ['?KF', 0],
    ['4?/n', 0],
    ['FKX', 0],
  ])('%j at %d is none', (text, at) => {
    expect(climateAt(scanFor(text), at)).toEqual([]);
  });
});

describe('a figure in the place of a worn one', () => {
  test.each<[text: string, from: number, most: number, at: number | undefined]>([
    ['4?7', 0, 3, 1],
    ['4?7', 1, 1, 1],
    ['4?7', 0, 2, 1],
    // Too far off, before the stretch, or not the only one in it.
    ['4?7', 0, 1, undefined],
    ['4?7', 2, 3, undefined],
    ['4?7? ', 0, 4, undefined],
    ['4?7? ', 0, 3, 1],
    ['4?7? ', 2, 3, 3],
    ['47', 0, 2, undefined],
  ])('%j from %d, %d characters', (text, from, most, at) => {
    const found = filledIn(markingOf(text), from, most);
    expect(found.map((each) => each.as)).toEqual(at === undefined ? [] : '0123456789'.split(''));
    for (const each of found) {
      expect(each.at).toBe(at);
      expect(each.text).toBe(text.slice(0, at) + each.as + text.slice((at ?? 0) + 1));
    }
  });

  test('is said as one, several, or any', () => {
    expect(sayFigures(['4'])).toBe('4');
    expect(sayFigures(['4', '7'])).toBe('4 or 7');
    expect(sayFigures('0123456789'.split(''))).toBe('any figure');
  });
});
