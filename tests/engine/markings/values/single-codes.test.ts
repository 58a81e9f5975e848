import { describe, expect, test } from 'vitest';
import {
  readClimate,
  readDateCode,
  readMarking,
  readTemperatureCharacteristic,
  readToleranceLetter,
  readVoltageCode,
  type Hints,
} from '../../../../src/engine/markings/index.ts';
import { catalogue, markings } from '../tables.ts';

const pF = 1e-12;

describe('tolerance letters', () => {
  test.each([
    ['C', 4.7 * pF, 0.25 * pF, 'F'],
    ['C', 100 * pF, 0.0025, 'fraction'],
    ['F', 9.9 * pF, 1 * pF, 'F'],
    ['F', 10 * pF, 0.01, 'fraction'],
    ['С', 100 * pF, 0.1, 'fraction'],
    ['В', 100 * pF, 0.2, 'fraction'],
  ])('%s at %d F is %d %s', (letter, capacitance, size, unit) => {
    const [usual] = readToleranceLetter(markings, letter, capacitance);
    expect(usual?.tolerance.unit).toBe(unit);
    expect((usual?.tolerance.minus ?? NaN) / size).toBeCloseTo(1, 9);
    expect((usual?.tolerance.plus ?? NaN) / size).toBeCloseTo(1, 9);
  });

  test('Z keeps its rival meaning, last', () => {
    expect(readToleranceLetter(markings, 'Z', 1e-8).map(({ tolerance }) => tolerance.plus)).toEqual(
      [0.8, 1],
    );
  });

  test('an unknown letter has no meaning', () => {
    expect(readToleranceLetter(markings, '?')).toEqual([]);
  });
});

describe('temperature codes', () => {
  test.each([
    ['X7R', -55, 125, -0.15, 0.15],
    ['X8L', -55, 150, -0.4, 0.15],
    ['Z5U', 10, 85, -0.56, 0.22],
    ['2C1', -55, 125, -0.2, 0.2],
    ['2F4', -25, 85, -0.8, 0.3],
    ['Н90', -60, 85, -0.9, 0.9],
    ['BX', -55, 125, -0.15, 0.15],
  ])('%s', (code, tMin, tMax, min, max) => {
    const [meaning] = readTemperatureCharacteristic(markings, code);
    expect(meaning?.characteristic).toMatchObject({ tMin, tMax, class: 2 });
    expect(meaning?.characteristic.capacitanceChange?.min).toBeCloseTo(min, 9);
    expect(meaning?.characteristic.capacitanceChange?.max).toBeCloseTo(max, 9);
  });

  test.each([
    ['C0G', 0, 30],
    ['M7G', 100, 30],
    ['S2H', -330, 60],
    ['R3L', -2200, 500],
    ['P3K', -1500, 250],
    ['UJ', -750, 120],
    ['LG', -75, 30],
    ['МП0', 0, 0],
    ['N750', -750, 0],
  ])('%s is %d ±%d ppm/K', (code, typ, spread) => {
    const [meaning] = readTemperatureCharacteristic(markings, code);
    const coefficient = meaning?.characteristic.coefficient;
    expect((coefficient?.typ ?? NaN) * 1e6).toBeCloseTo(typ, 6);
    expect((coefficient?.max ?? NaN) * 1e6).toBeCloseTo(typ + spread, 6);
    expect((coefficient?.min ?? NaN) * 1e6).toBeCloseTo(typ - spread, 6);
  });

  test('a name without a spread says so', () => {
    const [meaning] = readTemperatureCharacteristic(markings, 'N750');
    expect(meaning?.characteristic.spreadKnown).toBe(false);
  });

  test('every class 2 code of three letters has its ends in order', () => {
    for (const low of 'XYZ')
      for (const high of '2456789')
        for (const change of 'ABCDEFPRSTUV') {
          const meanings = readTemperatureCharacteristic(markings, `${low}${high}${change}`);
          expect(meanings).toHaveLength(1);
          for (const { characteristic } of meanings)
            expect(characteristic.tMin).toBeLessThan(characteristic.tMax);
        }
  });
});

describe('voltage codes', () => {
  test('figure and letter follow the rule: the letter times a power of ten', () => {
    const base = { A: 1, B: 1.25, C: 1.6, D: 2, E: 2.5, F: 3.15, G: 4, H: 5, J: 6.3, K: 8 };
    for (const [letter, value] of Object.entries(base))
      for (const power of [0, 1, 2, 3]) {
        const [usual] = readVoltageCode(markings, `${power}${letter}`);
        expect(usual?.volts.typ).toBeCloseTo(value * 10 ** power, 9);
      }
  });

  test('a disc without an underline is for 500 V', () => {
    expect(readVoltageCode(markings, 'no underline')[0]?.volts.typ).toBe(500);
  });
});

describe('a single character of a ceramic chip', () => {
  const values = (text: string, hints: Hints = {}): (number | undefined)[] =>
    readMarking(catalogue, text, hints).map(({ capacitance }) => capacitance?.typ);

  test('is read for every ink where the part is known to be a chip', () => {
    for (const { character, value } of markings.singleCharacters) {
      const found = values(character, { body: 'ceramic-chip' });
      for (const { factor } of markings.inkMultipliers)
        expect(found).toContainEqual(expect.closeTo(value * factor * 1e-12, 18));
    }
  });

  test('is read for the ink that is named', () => {
    for (const { character, value } of markings.singleCharacters)
      for (const { colour, factor } of markings.inkMultipliers)
        expect(values(`${colour} ${character}`)).toEqual([
          expect.closeTo(value * factor * 1e-12, 18),
        ]);
  });

  test.each(['E', 'green', 'green EX', 'white E', 'greenE'])('%s has no value', (text) => {
    expect(values(text).filter((value) => value !== undefined)).toEqual([]);
  });
});

describe('date codes', () => {
  test.each([
    ['8923', ['1989-W23', '2008-09-23']],
    ['9231', ['1992-W31']],
    ['2', []],
    ['8900', []],
    ['8954', []],
    ['606-4-21', ['1954-W21', '1964-W21']],
  ])('%s', (code, dates) => {
    const found = readDateCode(markings, code).flatMap((meaning) => meaning.dates);
    expect(found).toEqual(dates);
  });

  test('an era narrows the dates', () => {
    const found = readDateCode(markings, 'K5', { from: 1990, to: 2005 });
    expect(found.map(({ dates }) => dates)).toEqual([['1998-05']]);
  });
});

describe('climatic category', () => {
  test.each([
    ['40/085/21', { tMin: -40, tMax: 85, dampDays: 21 }],
    ['00/070/04', { tMin: 0, tMax: 70, dampDays: 4 }],
    ['FKF', { tMin: -55, tMax: 125 }],
  ])('%s', (text, climate) => {
    expect(readClimate(markings, text)?.climate).toEqual(climate);
  });

  test('anything else is none', () => {
    expect(readClimate(markings, 'ABC')).toBeUndefined();
    expect(readClimate(markings, '')).toBeUndefined();
  });
});
