import { describe, expect, test } from 'vitest';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { slopeOf, withoutSlope } from '../../../src/job/understanding/slope.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';
import { catalogue } from '../boards.ts';

/**
 * A resistor that takes warmth out of an exponential converter rises by 3300 to 3900 ppm a kelvin
 * (data/kinds/types.csv); a film stays within hundreds, and says so in the same words.
 */

const read = (said: Partial<Line>) =>
  understoodLine(catalogue, { ...emptyLine('a'), designators: 'R12', ...said });
const placesOf = (said: Partial<Line>) =>
  read(said)
    .asks.find(({ about }) => about === 'position')
    ?.choices.map(({ set }) => set.position) ?? [];

describe.each(['', 'resistor'])('of the kind “%s”', (kind) => {
  test.each<[string, number]>([
    ['1k tempco 3300ppm', 1000],
    ['1k tempco', 1000],
    ['1k +3300 ppm/K', 1000],
    ['1k 3500ppm/°C', 1000],
    ['1k Tempco (3300 ppm)', 1000],
    ['tempco resistor 1k', 1000],
    ['1k87 tempco', 1870],
    ['2k 3300ppm VCO', 2000],
    ['1k 1% 3500 ppm expo', 1000],
    ['1k 3300ppm 1V/oct', 1000],
    ['1k silistor', 1000],
    ['1k linear PTC', 1000],
    ['metal film 1k +3300 ppm', 1000],
    // Few are made in so much, and still it sits nowhere else.
    ['47k tempco', 47_000],
  ])('%s is a compensating resistor, in the place for such', (words, ohm) => {
    for (const said of [
      { kind, marking: words },
      { kind, value: words },
    ]) {
      const { part } = read(said);
      expect(part).toMatchObject({ kind: 'resistor', family: 'kind', type: 'tempco-resistor' });
      expect(part.value?.typ).toBeCloseTo(ohm, 6);
      expect(part.position).toBeUndefined();
      expect(placesOf(said)).toEqual(['exponential-compensation']);
    }
  });

  test.each<[string, string | undefined]>([
    ['10k metal film low tempco', 'metal-film'],
    ['10k 0.1% metal film low-TC', 'metal-film'],
    ['10k 0.1% 25ppm tempco', undefined],
    ['1k 1% 100ppm', undefined],
    ['1M ±1500 ppm carbon film', 'carbon-film'],
  ])('%s is a plain resistor', (marking, type) => {
    const { part } = read({ kind, marking });
    expect([part.kind, part.type]).toEqual(['resistor', type]);
    expect(placesOf({ kind, marking }).length).toBeGreaterThan(1);
  });
});

test('a tolerance beside the slope is still read', () => {
  expect(read({ marking: '1k 1% 3500 ppm' }).part.tolerance).toEqual({ minus: 0.01, plus: 0.01 });
});

test.each(['X1', 'Y3'])('%s of thousands of ppm is a resonator, and no resistor', (designators) => {
  expect(read({ designators, marking: '455 kHz 3000ppm' }).part.kind).toBe('other');
});

test('a capacitor that follows the temperature stays one', () => {
  expect(read({ designators: 'C5', marking: '100p 1500ppm' }).part.kind).not.toBe('resistor');
  expect(read({ designators: 'C5', value: '100 pF', marking: 'tempco' }).part.kind).toBe(
    'capacitor',
  );
});

test.each([
  ['1k 3300ppm', 'rises', '1k'],
  ['1k +3300 ppm/K 1%', 'rises', '1k   1%'],
  ['1k -4500 ppm/K', 'falls', '1k'],
  ['1k −4500ppm', 'falls', '1k'],
  ['1k ±1500 ppm', undefined, '1k ±1500 ppm'],
  ['1k 100ppm', undefined, '1k 100ppm'],
  ['1k 13300ppm', undefined, '1k 13300ppm'],
  ['1k 1 V/oct.', undefined, '1k'],
])('%s %s, and leaves %s', (text, slope, left) => {
  expect(slopeOf(text)).toBe(slope);
  expect(withoutSlope(text)).toBe(left);
});
