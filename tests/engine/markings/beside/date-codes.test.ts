import { describe, expect, test } from 'vitest';
import { datesAt, readDateCode } from '../../../../src/engine/markings/beside/dates.ts';
import { readMarking, type Hints } from '../../../../src/engine/markings/index.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { scanFor } from '../scans.ts';
import { catalogue, markings } from '../tables.ts';

/** Dates of a code under one scheme. */
const under = (scheme: string, code: string): string[] =>
  readDateCode(markings, code).find((meaning) => meaning.scheme === scheme)?.dates ?? [];

const every = (from: number, to: number, step: number, rest: string): string[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => `${from + i * step}${rest}`);

describe('a date code under its scheme', () => {
  // By the rule of each scheme and the calendar; none where there is no such day, week or sign.
  test.each<[scheme: string, code: string, dates: string[]]>([
    // IEC 60062: letters of years come round every twenty; 1 to 9, O, N and D are the months.
    ['iec-60062', 'K5', ['1978-05', '1998-05', '2018-05']],
    ['iec-60062', 'KO', ['1978-10', '1998-10', '2018-10']],
    ['iec-60062', 'KN', ['1978-11', '1998-11', '2018-11']],
    ['iec-60062', 'KD', ['1978-12', '1998-12', '2018-12']],
    ['iec-60062', 'K0', []],
    ['iec-60062', 'G5', []],
    ['iec-60062', 'K51', []],
    ['iec-60062', 'K', []],
    ['iec-60062-early', '5C', ['1972-05']],
    ['british-two-letters', 'WH', ['1965-08']],
    ['month-letter-year-figure', 'L6', ['1966-12']],
    ['year-week', '8923', ['1989-W23']],
    ['year-week', '89-23', ['1989-W23']],
    ['year-week', '8901', ['1989-W01']],
    ['year-week', '0153', ['2001-W53']],
    ['year-week', '0154', []],
    ['year-week', '0100', []],
    ['year-week', '5923', []],
    ['year-week', '89233', []],
    ['year-week', '8x23', []],
    ['year-week', '892', []],
    ['year-figure-week', '942', ['1979-W42', '1989-W42', '1999-W42', '2009-W42']],
    ['year-figure-week', '9-42', ['1979-W42', '1989-W42', '1999-W42', '2009-W42']],
    ['year-figure-week', 'x42', []],
    ['maker-year-week', '606-4-21', ['1954-W21', '1964-W21']],
    ['maker-year-week', '606421', ['1954-W21', '1964-W21']],
    ['maker-year-week', '60-4-21', []],
    ['week-letters', 'HWS', ['1955-W21', '1965-W21', '1975-W21']],
    ['week-letters', 'HW5', []],
    ['year-figure-month', '7A', ['1997-10', '2007-10']],
    // Twelve letters for the months of each year of a run of four.
    ['month-of-four-years', 'N', every(1998, 2029, 4, '-01')],
    ['month-of-four-years', 'A', every(1997, 2029, 4, '-01')],
    ['month-of-four-years', 'M', every(1997, 2029, 4, '-12')],
    ['year-letter-1920', 'P', ['1934', '1959']],
    ['year-month-day', '2313', ['2002-03-13']],
    // February has 29 days in leap years alone; April has 30.
    ['year-month-day', '4229', ['2004-02-29']],
    ['year-month-day', '2229', []],
    ['year-month-day', '2430', ['2002-04-30']],
    ['year-month-day', '2431', []],
    ['year-month-day', '2301', ['2002-03-01']],
    ['year-month-day', '2300', []],
    ['year-month-day', '23x3', []],
  ])('%s: %s', (scheme, code, dates) => {
    expect(under(scheme, code)).toEqual(dates);
  });

  test('says of all schemes what their tables give as an example', () => {
    for (const { id, example } of markings.dateSchemes)
      expect(under(id, example).length, id).toBeGreaterThan(0);
  });

  test.each<[from: number, to: number, dates: string[]]>([
    [1978, 1997, ['1978-05']],
    [1979, 2018, ['1998-05', '2018-05']],
    [1979, 1997, []],
  ])('in an era from %i to %i', (from, to, dates) => {
    const found = readDateCode(markings, 'K5', { from, to });
    expect(
      found.filter(({ scheme }) => scheme === 'iec-60062').flatMap((one) => one.dates),
    ).toEqual(dates);
  });
});

describe('a date in a marking', () => {
  const dateOf = (text: string, hints: Hints = {}): string | undefined =>
    readMarking(catalogue, text, hints)[0]?.date;
  /** What the first reading with a date says of it. */
  const saidOf = (text: string, hints: Hints = {}): string | undefined =>
    readMarking(catalogue, text, hints)
      .flatMap(({ evidence }) => evidence)
      .find(({ means }) => means.startsWith('made'))?.means;

  test.each<[text: string, date: string | undefined, hints?: Hints]>([
    ['104J 8923', '1989-W23'],
    // A letter of the lot may follow.
    ['104J 8923A', '1989-W23'],
    ['104J 8923AB', undefined],
    ['104J8923', undefined],
    ['104J X8923A', undefined],
    // A whole word, with blanks about it.
    ['104J 8923-63V', undefined],
    ['104J\n8923\n', '1989-W23'],
    // Four figures, and what is written with dashes, may stand before the value.
    ['8923 104J', '1989-W23'],
    ['104J 606-4-21', '1954-W21 or 1964-W21'],
    ['606-4-21 104J', '1954-W21 or 1964-W21'],
    ['104J 606-4-211', undefined],
    ['606421 104J', undefined],
    // A series number behind the letters for the film is none.
    ['MKT 1822 0,1 250-', undefined],
    // One letter only on parts of an origin that dated them so.
    ['104J P', undefined],
    ['104J P', '1934 or 1959', { origin: 'german' }],
    ['104J P', undefined, { origin: 'british' }],
    // A worn figure leaves several.
    [
      '104J 892?',
      every(1989, 1989, 1, '')
        .flatMap((year) => Array.from({ length: 10 }, (_, i) => `${year}-W2${i}`))
        .join(' or '),
    ],
  ])('%s: %s', (text, date, hints) => {
    expect(dateOf(text, hints)).toBe(date);
  });

  test.each<[text: string, at: number, weights: [means: string, weight: number][]]>([
    // Two figures that are a usual voltage too are rather that.
    ['104J 16', 5, [['made 1991-06 or 2001-06', weights.date.rare + weights.dateForVoltage]]],
    ['104J 17', 5, [['made 1991-07 or 2001-07', weights.date.rare]]],
    ['104J K5', 5, [['made 1978-05 or 1998-05 or 2018-05', weights.date.usual]]],
    ['104J K5', 6, []],
    ['104JK5', 4, []],
    ['104J 1234567890123', 5, []],
  ])('%s at %i', (text, at, found) => {
    const tokens = datesAt(scanFor(text), at);
    const said = tokens.map(({ meaning, weight }) => [meaning.means(), weight]);
    for (const each of found) expect(said).toContainEqual(each);
    if (found.length === 0) expect(said).toEqual([]);
    for (const { needs, assumed, meaning } of tokens) {
      expect(needs).toEqual(['value-before']);
      expect(assumed).toEqual([]);
      expect(meaning).toMatchObject({ slot: 'date', types: [] });
    }
  });

  test('has every figure that a worn one may be, and its dates in their order', () => {
    const [found] = datesAt(scanFor('104J ?42'), 5).filter(({ meaning }) =>
      meaning.means().includes('-W42'),
    );
    const dates = found?.meaning.content.says === 'date' ? found.meaning.content.dates : [];
    // Every year of the scheme, 1970 to 2009, by its last figure.
    expect(dates).toEqual(every(1970, 2009, 1, '-W42'));
    expect(found?.assumed).toEqual([{ at: 5, as: 'any figure', why: 'worn' }]);
    expect(found?.weight).toBeCloseTo(weights.date.rare + weights.wornFigure, 9);
    // One in another word is none of its figures.
    const [other] = datesAt(scanFor('104J 8923 5?V'), 5);
    expect(other?.assumed).toEqual([]);
  });

  test('is said, up to four one by one', () => {
    expect(saidOf('104J 8923')).toBe('made 1989-W23');
    expect(saidOf('104J P', { origin: 'german' })).toBe('made 1934 or 1959');
    expect(saidOf('104J N', { origin: 'japanese' })).toBe(
      'made on one of 8 dates from 1998-01 to 2026-01',
    );
  });
});
