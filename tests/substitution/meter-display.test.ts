import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meterDisplay } from '../../src/substitution/meter-display.ts';
import { readEvidence } from '../../src/substitution/old-part.ts';

describe('what a meter shows instead of a number', () => {
  it.each([
    'OL',
    'ol',
    '0L',
    '0.L',
    'O.L',
    '.OL',
    'O.L.',
    '0,L',
    ' OL ',
    '-OL',
    '+OL',
    'OL MΩ',
    '0.L kΩ',
    'OL kohm',
    'O.L nF',
    'OVL',
    'OVER',
    'over range',
    'Overload',
    'OFL',
    'OF',
    '∞',
    '∞ Ω',
    'inf',
    'infinite',
    'open',
    'open circuit',
    'o/c',
  ])('%s is over range', (text) => {
    expect(meterDisplay(text)).toEqual({ is: 'over' });
  });

  it.each(['-', '–', '—', '---', '----', '_', 'n/a', ' - '])('%s is no reading', (text) => {
    expect(meterDisplay(text)).toEqual({ is: 'none' });
  });

  it.each([
    ['>200 MΩ', '200 MΩ'],
    ['≥ 2', '2'],
    ['more than 20 M', '20 M'],
    ['over 1 000', '1 000'],
    ['> .5', '.5'],
  ])('%s is more than %s', (text, than) => {
    expect(meterDisplay(text)).toEqual({ is: 'more', than });
  });

  it.each([
    '',
    '0',
    '0 F',
    '0.1',
    '1.',
    '-3',
    '4k7',
    '47.2 k',
    '9,1 µF',
    '=1+1',
    '>',
    'overcast',
    'open at one spot',
    'old 5',
    'E B C',
    '1e99',
    '0l5',
  ])('%s is left to be read', (text) => {
    expect(meterDisplay(text)).toBeUndefined();
  });

  it('takes no number for one', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(meterDisplay(String(number))).toBeUndefined();
      }),
    );
  });
});

describe('readings that an old part is judged by', () => {
  const read = (key: string, text: string) => readEvidence(new URLSearchParams({ [key]: text }));

  it.each([
    ['reads', '9.1 µF', 'capacitance', 9.1e-6],
    ['reads', '1 000 µF', 'capacitance', 1e-3],
    ['reads', '1e-6', 'capacitance', 1e-6],
    ['reads', '0', 'capacitance', 0],
    ['ins', '>200 M', 'insulation', 2e8],
    ['esr', '0,4', 'esr', 0.4],
    ['esr', '1 000', 'esr', 1000],
    ['idle', '30', 'idle', 30 * 31_557_600],
  ] as const)('%s: %s counts', (key, text, reading, value) => {
    const { evidence, rejected } = read(key, text);
    expect(rejected).toEqual({});
    expect(evidence[reading]).toBeCloseTo(value, 12);
  });

  it.each([
    ['reads', '1 000', /pF, nF or µF/u],
    ['reads', '1000', /pF, nF or µF/u],
    ['reads', '0.047', /pF, nF or µF/u],
    ['reads', '1e99', /10.F/u],
    ['reads', '-3 µF', /below zero/u],
    ['esr', '1e99', /1.GΩ/u],
    ['d120', '1e99', /%/u],
    ['leak', '1e99 A', /100.A/u],
    ['idle', '1e9', /years/u],
    ['esr', 'OL', /no number/u],
    ['esr', '>50', /no number/u],
    ['reads', '-', /no number/u],
  ])('%s: %s does not, and says why', (key, text, why) => {
    const { evidence, rejected } = read(key, text);
    expect(evidence).toEqual({ signs: [] });
    expect(rejected[key]).toMatch(why);
  });
});
