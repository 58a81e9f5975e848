import { describe, expect, test } from 'vitest';
import { readMarking, type Reading } from '../../src/engine/index.ts';
import { codeTables } from '../../src/reading/code-tables.ts';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { withRows, type Added } from './with-rows.ts';

/** “Adding a code table” of DEVELOPERS.md: what rows alone make of codes that nobody printed yet. */

const trade = { source: 'trade', basis: 'common-practice' };
const usual = { ...trade, use: 'usual' };

interface Case {
  of: string;
  added: Added;
  marking: string;
  /** What the first reading then says. */
  says: (reading: Reading) => unknown;
  is: unknown;
}

const cases: Case[] = [
  {
    of: 'rated voltages',
    added: {
      'markings/voltage-schemes.csv': [
        { id: 'invented', name: 'invented letters', stands: 'beside', ...trade },
      ],
      'markings/voltage-codes.csv': [
        { scheme: 'invented', code: '8T', volts_min: '77', volts_max: '77', kind: 'dc', ...usual },
      ],
    },
    marking: '104K 8T',
    says: ({ ratedVoltage }) => ratedVoltage?.typ,
    is: 77,
  },
  {
    of: 'tolerances',
    added: {
      'markings/tolerance-letters.csv': [
        {
          letter: 'Ю',
          script: 'cyrillic',
          minus: '3',
          plus: '3',
          unit: 'percent',
          met: 'often',
          ...usual,
        },
      ],
    },
    marking: '104Ю',
    says: ({ tolerance }) => tolerance?.plus,
    is: 0.03,
  },
  {
    of: 'dates',
    added: {
      'markings/date-schemes.csv': [
        {
          ...{ id: 'invented', name: 'invented signs', order: 'year;month' },
          ...{ years_from: '1971', years_to: '1972', example: 'YÄ', means: 'May 1971', ...usual },
        },
      ],
      'markings/date-signs.csv': [
        { scheme: 'invented', place: 'year', symbol: 'Y', value: '1971', ...trade },
        { scheme: 'invented', place: 'month', symbol: 'Ä', value: '5', ...trade },
      ],
    },
    marking: '104K YÄ',
    says: ({ date }) => date,
    is: '1971-05',
  },
  {
    of: 'temperature characteristics',
    added: {
      'markings/temperature-systems.csv': [
        {
          ...{ id: 'invented', name: 'invented codes', class: '2', t_ref: '25', t_min: '-55' },
          ...{ t_max: '85', bodies: 'ceramic', ...trade },
        },
      ],
      'markings/class2-codes.csv': [
        {
          ...{ code: 'W9Q', system: 'invented', t_min: '-55', t_max: '85', low: '-15', high: '15' },
          ...{ types: 'ceramic-x7r', alone: 'yes', bodies: 'ceramic', ...usual },
        },
      ],
    },
    marking: '104K W9Q',
    says: ({ temperatureCharacteristic }) => temperatureCharacteristic?.capacitanceChange,
    is: { min: -0.15, max: 0.15 },
  },
  {
    of: 'what a part is made of',
    added: {
      'markings/dielectric-codes.csv': [
        {
          ...{ code: 'ZQX', form: 'word', counts_zeros: 'yes', dielectric: 'an invented film' },
          ...{ types: 'pet-metallized', bodies: 'film', ...usual },
        },
      ],
    },
    marking: '104K ZQX',
    says: ({ types }) => types,
    is: ['pet-metallized'],
  },
  {
    of: 'whatever else is printed',
    added: {
      'markings/mark-groups.csv': [
        { id: 'invented', name: 'invented marks', says: 'remark', form: 'word', ...trade },
      ],
      'markings/body-marks.csv': [
        {
          ...{ mark: 'ZQX', group: 'invented', printed: 'yes', meaning: 'made by nobody' },
          ...usual,
        },
      ],
    },
    marking: '104K ZQX',
    says: ({ evidence }) => evidence.find(({ text }) => text === 'ZQX')?.means,
    is: 'made by nobody',
  },
];

describe.each(cases)('codes of $of', ({ added, marking, says, is }) => {
  const { faults, catalogue } = withRows(added);

  test('ask for no more than rows', () => {
    expect(faults).toEqual([]);
  });

  test('are read', () => {
    const [before] = readMarking(loadCatalogue(), marking);
    const [reading] = readMarking(catalogue, marking);
    expect(reading && says(reading)).toEqual(is);
    expect(before && says(before)).not.toEqual(is);
  });

  test('stand on the page of their table', () => {
    const shown = codeTables(catalogue).map(({ count }) => count);
    const sum = (counts: number[]): number => counts.reduce((all, one) => all + one, 0);
    expect(sum(shown)).toBeGreaterThan(sum(codeTables(loadCatalogue()).map(({ count }) => count)));
  });
});

test('a group of marks is a part of their page under its name', () => {
  const added = cases.at(-1)?.added ?? {};
  const titles = codeTables(withRows(added).catalogue).flatMap(({ groups }) =>
    groups.map(({ title }) => title),
  );
  expect(titles).toContain('Invented marks');
});
