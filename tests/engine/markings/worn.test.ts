import { describe, expect, test } from 'vitest';
import { readMarking, type Hints, type Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

const p = 1e-12;
const n = 1e-9;
const u = 1e-6;

const rounded = (values: readonly number[]): string[] =>
  values.map((value) => value.toPrecision(6));

/** Values in the order in which they are offered, each once. */
const valuesOf = (readings: readonly Reading[]): string[] => [
  ...new Set(
    rounded(
      readings.flatMap(({ capacitance, resistance }) => capacitance?.typ ?? resistance?.typ ?? []),
    ),
  ),
];

/** Worn markings, what is known of the part, and the first values that they may be. */
const values: [string, Hints, number[]][] = [
  ['1?3', {}, [10 * n, 15 * n, 12 * n, 18 * n, 11 * n, 13 * n, 16 * n]],
  ['4?3K', {}, [47 * n, 43 * n]],
  ['1?4M', {}, [100 * n, 150 * n, 120 * n, 180 * n]],
  ['?7n', {}, [47 * n, 27 * n]],
  ['4?7', {}, [4.7 * p, 4.7 * n, 4.7 * u]],
  ['4n?', {}, [4.7 * n]],
  ['10?', {}, [10 * p, 100 * p, n, 10 * n, 100 * n]],
  ['0.0?7 µF 400V', {}, [47 * n, 27 * n]],
  ['2#µ 350V', {}, [22 * u, 27 * u]],
  ['47 ?F', {}, [47 * p, 47 * n, 47 * u]],
  ['_70 pF', {}, [470 * p, 270 * p]],
  ['4▯K', { kind: 'resistor' }, [47e3]],
  ['2?A', { body: 'resistor-chip' }, [158, 162, 165, 169]],
];

describe('a character that cannot be read', () => {
  test.each(values)(
    '%j with %j may be these values, the likeliest first',
    (text, hints, wanted) => {
      const found = valuesOf(readMarking(catalogue, text, hints));
      expect(found.slice(0, wanted.length)).toEqual(rounded(wanted));
    },
  );

  test.each(values)('%j with %j is never sure, and says what was made up', (text, hints) => {
    for (const { sure, evidence } of readMarking(catalogue, text, hints).slice(0, 2)) {
      expect(sure).not.toBe('sure');
      const made = evidence.flatMap(({ assumed }) => assumed ?? []);
      expect(made.map(({ why }) => why)).toEqual(['worn']);
      expect(evidence.map(({ means }) => means).join()).toContain(`made up as ${made[0]?.as}`);
    }
  });

  test('a tolerance letter gives every tolerance, those often met first', () => {
    const found = readMarking(catalogue, '104?').map(({ tolerance }) => tolerance?.plus);
    expect(found.slice(0, 4)).toEqual([0.05, 0.1, 0.2, 0.8]);
    expect(found).toContain(undefined);
  });

  test('below ten picofarads the letter is one of picofarads', () => {
    const found = readMarking(catalogue, '4p7?').flatMap(({ tolerance }) => tolerance ?? []);
    expect(found[0]).toEqual({ minus: 0.25 * p, plus: 0.25 * p, unit: 'F' });
    expect(found.map(({ unit }) => unit)).not.toContain('fraction');
  });

  test('a voltage gives usual voltages only', () => {
    const found = readMarking(catalogue, '104K 2?0V').map(({ ratedVoltage }) => ratedVoltage?.typ);
    expect(found).toEqual([200, 250]);
  });

  test('a voltage code gives every letter that there is with the figure', () => {
    const found = readMarking(catalogue, '2?104J').map(({ ratedVoltage }) => ratedVoltage?.typ);
    expect(found).toEqual(expect.arrayContaining([100, 160, 200, 250, 400, 630]));
  });

  test('a temperature code gives those that there are', () => {
    const codes = readMarking(catalogue, '104 X?R').map(
      ({ temperatureCharacteristic }) => temperatureCharacteristic?.code,
    );
    expect(codes).toEqual(expect.arrayContaining(['X5R', 'X7R', 'X8R']));
  });

  test('Cyrillic letters are made up only beside others', () => {
    const made = (text: string, hints: Hints = {}) =>
      readMarking(catalogue, text, hints).flatMap(({ evidence }) =>
        evidence.flatMap(({ assumed }) => assumed?.map(({ as }) => as) ?? []),
      );
    expect(made('33?5').join('')).not.toMatch(/\p{Script=Cyrillic}/u);
    expect(made('3Н3?').join('')).toMatch(/\p{Script=Cyrillic}/u);
    expect(made('33?', { origin: 'soviet' }).join('')).toMatch(/\p{Script=Cyrillic}/u);
  });

  test.each([
    ['4n7 ±1?%', [0.1, 0.15]],
    ['±?0% 4n7', [0.1, 0.2, 0.3]],
    ['0.1 µF ±2? % 250V', [0.2]],
    ['473 ±?% 100V', [0.05, 0.01, 0.02]],
  ])('%j may have these tolerances, those met most often first', (text, wanted) => {
    const found = readMarking(catalogue, text).map(({ tolerance }) => tolerance?.plus);
    expect(found.slice(0, wanted.length)).toEqual(wanted);
  });

  test.each([
    ['4n7 55/?85/21', '−55 to 85 °C, 21 days of damp heat'],
    ['4n7 55/0?5/21', '−55 to 55 or 65 or 75 or 85 °C, 21 days of damp heat'],
    ['?5/100/21 10n', '−65 or −55 or −25 to 100 °C, 21 days of damp heat'],
    ['4n7 55/085/2?', '−55 to 85 °C, 20 to 29 days of damp heat'],
  ])('%j names every category of the standard that it may be', (text, categories) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.evidence.some(({ means }) => means.startsWith(categories))).toBe(true);
    expect(best?.notUnderstood).toEqual([]);
    expect(best?.sure).not.toBe('sure');
  });

  test.each([
    ['473K 8?23', '1980-W23', '1989-W23', 10],
    ['4n7 892?', '1989-W20', '1989-W29', 10],
    ['104K 19?4', '2019-W04', '2019-W44', 5],
  ])('%j may be of every date that one figure leaves', (text, first, last, count) => {
    const { date } = readMarking(catalogue, text)[0] ?? {};
    const dates = date?.split(' or ') ?? [];
    expect([dates[0], dates.at(-1), dates.length]).toEqual([first, last, count]);
  });

  test('no word is made up of which most is missing', () => {
    const [best] = readMarking(catalogue, '104K 50V ?8?4');
    expect(best?.ratedVoltage?.typ).toBe(50);
  });

  test.each(['?', '??', '???', '????V', '_', '#'])('%j alone says nothing', (text) => {
    expect(readMarking(catalogue, text)).toEqual([]);
  });

  test('a stretch of unknown length is left aside, and nothing is sure beside it', () => {
    const [best] = readMarking(catalogue, '104K… 50V');
    expect(best).toMatchObject({ notUnderstood: ['…'], sure: 'likely' });
    expect(best?.ratedVoltage?.typ).toBe(50);
  });
});

/** Markings with a character taken for another, the value, and what the evidence says of it. */
const confused: [string, Hints, number, string][] = [
  ['1O4K', {}, 100 * n, 'read O as 0'],
  ['lO4', {}, 100 * n, 'read l as 1; read O as 0'],
  ['I03M', {}, 10 * n, 'read I as 1'],
  ['103M 25U', {}, 10 * n, 'read 2 as Z'],
  ['S6 nF', {}, 56 * n, 'read S as 5'],
  ['6B0p 500V', {}, 680 * p, 'read B as 8'],
  ['47O pF', {}, 470 * p, 'read O as 0'],
  ['104К', {}, 100 * n, 'read К as K'],
  ['884K', {}, 680 * n, 'read 8 as 6'],
  ['3H3', { origin: 'soviet' }, 3.3 * n, 'read H as Н'],
];

describe('a character taken for another', () => {
  test.each([
    ['104 S0', undefined],
    ['104 5O', 50],
    ['104K S0V', 50],
  ])('%j is rated %s V: a bare number begins with a figure', (text, volts) => {
    expect(readMarking(catalogue, text)[0]?.ratedVoltage?.typ).toBe(volts);
  });

  test('a Cyrillic letter with a meaning of its own is itself', () => {
    const values = readMarking(catalogue, 'К31 100п').map(({ capacitance }) => capacitance?.typ);
    expect(values).toEqual([100 * p]);
  });

  test.each(confused)('%j with %j', (text, hints, value, says) => {
    const [best] = readMarking(catalogue, text, hints);
    expect((best?.capacitance?.typ ?? NaN) / value).toBeCloseTo(1, 9);
    expect(best?.evidence.map(({ means }) => means).join('; ')).toContain(says);
    expect(best?.sure).not.toBe('sure');
  });

  test.each(['473K', '10n', '68p J', '4K7', '100 NP0', 'B 47p', 'S8 104J'])(
    '%j is read as it is written where that is good',
    (text) => {
      const assumed = readMarking(catalogue, text).map(({ evidence }) =>
        evidence.flatMap((each) => each.assumed ?? []),
      );
      expect(assumed[0]).toEqual([]);
    },
  );

  test('a raised point is a decimal point', () => {
    expect(readMarking(catalogue, '0·1 µF')[0]?.capacitance?.typ).toBeCloseTo(100 * n, 18);
  });
});
