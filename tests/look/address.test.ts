import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readLook, writeTicked } from '../../src/look/address.ts';
import { readYear } from '../../src/look/year.ts';

const catalogue = loadCatalogue();

const read = (key: string, text: string) => {
  const { answers, rejected } = readLook(catalogue, new URLSearchParams([[key, text]]));
  return { typ: answers.numbers?.[key]?.typ, message: rejected[key] };
};

describe('numbers are read as people write them', () => {
  test.each([
    { key: 'capacitance', text: '10,2n', typ: 1.02e-8 },
    { key: 'capacitance', text: '.05 MFD', typ: 5e-8 },
    { key: 'd-1khz', text: '0.5 %', typ: 0.005 },
    { key: 'd-1khz', text: '0,5', typ: 0.005 },
    { key: 'warm-c', text: '−0.45 %', typ: -0.0045 },
    { key: 'bias', text: '-3 %', typ: 0.03 },
    { key: 'insulation', text: '500', typ: 5e8 },
    { key: 'insulation', text: '>2000 MΩ', typ: 2e9 },
    { key: 'insulation', text: 'over 500M', typ: 5e8 },
    { key: 'size', text: '30', typ: 0.03 },
    { key: 'size', text: '1.5 in', typ: 0.0381 },
    { key: 'esr', text: '0,3', typ: 0.3 },
    { key: 'year', text: '1960s', typ: 1964.5 },
  ])('$key: $text', ({ key, text, typ }) => {
    expect(read(key, text)).toEqual({ typ: expect.closeTo(typ, 12) as number, message: undefined });
  });
});

describe('what cannot be read is told, and counts for nothing', () => {
  test.each([
    { key: 'd-1khz', text: '5 mV', says: 'voltage' },
    { key: 'capacitance', text: '10 ohm', says: 'resistance' },
    { key: 'd-1khz', text: '-1 %', says: 'zero or above' },
    { key: 'd-1khz', text: '90000 %', says: 'from' },
    { key: 'warm-c', text: '-99 %', says: '-60' },
    { key: 'capacitance', text: 'a lot', says: '' },
    { key: 'capacitance', text: '9'.repeat(80), says: '60 characters' },
    { key: 'year', text: '68', says: 'such as 1968' },
    { key: 'year', text: '1850', says: '1900' },
    { key: 'insulation', text: '>5000000 GΩ', says: 'from' },
  ])('$key: $text', ({ key, text, says }) => {
    const { typ, message } = read(key, text);
    expect(typ).toBeUndefined();
    expect(message?.replaceAll('−', '-')).toContain(says);
  });
});

test.each([
  { text: '-20..10 %', min: 0, typ: 0.05, max: 0.2 },
  { text: '-20..-10 %', min: 0.1, typ: 0.15, max: 0.2 },
])('of a change either way the size counts: $text', ({ text, min, typ, max }) => {
  const { answers } = readLook(catalogue, new URLSearchParams({ bias: text }));
  expect(answers.numbers?.['bias']).toEqual({
    min: expect.closeTo(min, 12) as number,
    typ: expect.closeTo(typ, 12) as number,
    max: expect.closeTo(max, 12) as number,
  });
});

test('several answers to one question are joined by dots, in any order', () => {
  const query = new URLSearchParams({ marks: 'uf.end-band.code' });
  expect(readLook(catalogue, query).answers.chosen?.['marks']).toEqual(['uf', 'code', 'end-band']);
  expect(writeTicked(['uf', 'end-band'])).toBe('uf.end-band');
});

test('unknown keys and answers are passed over', () => {
  const query = new URLSearchParams('form=tube.egg&smell=wax&finish=%3Cb%3E&d-1khz=%20');
  expect(readLook(catalogue, query)).toEqual({
    answers: { chosen: { form: ['tube'] }, numbers: {} },
    rejected: {},
  });
});

describe('years', () => {
  test.each([
    { text: '1968', min: 1968, max: 1968 },
    { text: 'about 1968', min: 1968, max: 1968 },
    { text: "'60s", min: 1960, max: 1969 },
    { text: 'late 60s', min: 1966, max: 1969 },
    { text: 'early 1970s', min: 1970, max: 1973 },
    { text: 'mid-60s', min: 1963, max: 1966 },
    { text: '1958–1964', min: 1958, max: 1964 },
    { text: '1958 - 64', min: 1958, max: 1964 },
    { text: '1998–02', min: 1998, max: 2002 },
    { text: '1964 to 1958', min: 1958, max: 1964 },
    { text: '1960s-1970s', min: 1960, max: 1979 },
  ])('$text', ({ text, min, max }) => {
    expect(readYear(text, 1900, 2035)).toMatchObject({ value: { min, max } });
  });

  test.each(['', '68', 'old', '19', '1968-1970-1972', '19688', 'late'])('not %s', (text) => {
    expect(readYear(text, 1900, 2035)).toHaveProperty('message');
  });
});
