import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import type { Catalogue } from '../../src/engine/index.ts';
import {
  readTemperatureCharacteristic,
  slopeLetters,
} from '../../src/engine/markings/lexicon/temperatures.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { codePage, listedCodes } from '../../src/reading/codes/index.ts';

/** What rows alone make of a system of temperature codes. */

const catalogue = loadCatalogue();
type Markings = Catalogue['markings'];

const withMarkings = (own: Partial<Markings>): Catalogue => ({
  ...catalogue,
  markings: { ...catalogue.markings, ...own },
});

const codesOf = (tables: Catalogue): string[] =>
  listedCodes(tables).flatMap(({ kind, code }) => (kind === 'temperature' ? [code] : []));

const metCode = (system: string, begins: string[], ends: string[]): Catalogue => {
  const [row] = catalogue.markings.metCodes;
  if (row === undefined) throw new Error('no row to begin with');
  return withMarkings({ metCodes: [{ ...row, system, begins, ends }] });
};

describe('codes that are met', () => {
  test.each<[what: string, system: string, begins: string[], ends: string[], codes: string[]]>([
    [
      'each beginning with each end',
      'iec-2',
      ['2C', '2E'],
      ['1', '6'],
      ['2C1', '2C6', '2E1', '2E6'],
    ],
    // By the tables U is 7.5 and 2 is -100: N750. U1 is -75, and N075 is a name as well.
    ['of slopes that have a name', 'eia-1', [], ['J'], ['U1J', 'U2J']],
    ['none of a system without figures', 'jis-1', [], ['H'], []],
  ])('%s', (_what, system, begins, ends, codes) => {
    const [with_, without] = [codesOf(metCode(system, begins, ends)), codesOf(metCode('', [], []))];
    for (const code of codes) expect(with_).toContain(code);
    // U2J has a row of its own; U3J would be -7500 ppm/K, which nobody names.
    expect(with_).not.toContain('U3J');
    expect(codes.some((code) => !without.includes(code))).toBe(codes.length > 0);
    if (codes.length === 0) expect(with_).toEqual(without);
  });
});

describe('single letters for the slope are said on the page of the letter', () => {
  const page = (tables: Catalogue): string => {
    const codes = listedCodes(tables);
    const own = codes.find(({ kind, code }) => kind === 'letter' && code === 'N');
    if (own === undefined) throw new Error('no page of N');
    return codePage(tables, own, codes)
      .sections.flatMap(({ content }) => content)
      .map(toHtml)
      .join('');
  };
  const { temperatureSystems } = catalogue.markings;
  const saying = (id: string, where: string): Catalogue =>
    withMarkings({
      temperatureSystems: temperatureSystems.map((row) =>
        row.id === id ? { ...row, letter_where: where } : row,
      ),
    });
  const where = 'on an invented bead';

  // By the table of signs N is -750 ppm/K in the British letters and +33 in the Soviet ones.
  test.each([
    ['british-1', '−750 ppm/K', 'met'],
    ['soviet-1', '33 ppm/K', 'seldom'],
  ])('%s', (id, slope, use) => {
    const [row = ''] = page(saying(id, where))
      .split('<tr>')
      .filter((one) => one.includes(where));
    expect(row).toContain('<code>470JN</code>');
    expect(row).toContain(slope);
    expect(row).toContain(`<td>${use}</td>`);
    expect(page(saying(id, ''))).not.toContain(where);
  });
});

describe('codes that are put together by rule stand on the bodies of their system', () => {
  const { temperatureSystems, class1Signs, class2Signs } = catalogue.markings;
  const [system] = temperatureSystems;
  const [one] = class1Signs;
  const [two] = class2Signs;
  if (system === undefined || one === undefined || two === undefined) throw new Error('no rows');

  const markings = {
    ...catalogue.markings,
    temperatureSystems: [
      { ...system, id: 'first', class: 1, bodies: ['mica'], origins: ['soviet'] },
      { ...system, id: 'second', class: 2, bodies: ['film', 'glass'] },
    ],
    class1Codes: [],
    class2Codes: [],
    class1Signs: (
      [
        ['figure', 'Q', 2],
        ['multiplier', '1', -10],
        ['slope', 'Q', 5],
        ['spread', 'Y', 30],
      ] as const
    ).map(([place, symbol, value]) => ({ ...one, system: 'first', place, symbol, value })),
    class2Signs: (
      [
        ['low', 'V', -10, undefined],
        ['high', '3', undefined, 50],
        ['span', '7', -20, 60],
        ['change', 'W', -5, 5],
      ] as const
    ).map(([place, symbol, low, high]) => ({ ...two, system: 'second', place, symbol, low, high })),
  };

  test.each<[string, string[]]>([
    ['Q1Y', ['mica']],
    ['QY', ['mica']],
    ['V3W', ['film', 'glass']],
    ['W7', ['film', 'glass']],
  ])('%s on %j', (code, bodies) => {
    const found = readTemperatureCharacteristic(markings, code);
    expect(found.map((meaning) => meaning.bodies)).toEqual([bodies]);
  });

  test('and single letters for the slope', () => {
    expect(slopeLetters(markings, 'Q').map(({ bodies }) => bodies)).toEqual([['mica']]);
  });
});
