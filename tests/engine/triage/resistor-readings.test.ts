import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeOfKind } from '../../../src/engine/index.ts';

/** An old resistor by what a meter reads on it: within its tolerance, drifted, low, or open. */

const catalogue = loadCatalogue();
const PERCENT = 0.01;

const judged = (type: string, value: number, percent: number, read: number[]) => {
  const [min = NaN, max = min] = read;
  const part = percent * PERCENT;
  return judgeOfKind(
    catalogue,
    { type, value, tolerance: { minus: part, plus: part } },
    { resistance: { min, typ: (min + max) / 2, max } },
  );
};

test.each([
  // 100 kΩ 10 %: to 110 kΩ by its tolerance; 15 % more is 126.5 kΩ.
  ['carbon-composition', 100e3, 10, [128e3], 'replace', 'resistor-drifted', '126.5'],
  ['carbon-composition', 100e3, 10, [120e3], 'replace', 'resistor-composition-high', '110'],
  ['carbon-composition', 100e3, 10, [110e3], 'leave', 'resistor-within', '90'],
  ['carbon-composition', 100e3, 10, [90e3], 'leave', 'resistor-within', '110'],
  ['carbon-composition', 100e3, 10, [72e3], 'test', 'resistor-low', '28'],
  ['carbon-composition', 100e3, 20, [119e3], 'leave', 'resistor-within', '120'],
  // 4.7 kΩ 5 %: to 4.935 kΩ; 3 % more is 5.083 kΩ.
  ['carbon-film', 4700, 5, [4900], 'leave', 'resistor-within', '4.935'],
  ['carbon-film', 4700, 5, [5000], 'test', 'resistor-high', '4.935'],
  ['carbon-film', 4700, 5, [5200], 'replace', 'resistor-drifted', '5.083'],
  ['carbon-film', 4700, 5, [2000], 'test', 'resistor-low', '57'],
  ['metal-film', 4700, 1, [300e3], 'replace', 'resistor-open', '63.8'],
  // Whatever the meter shows above its range.
  ['carbon-composition', 100e3, 10, [20e6, Infinity], 'replace', 'resistor-open', '20'],
  ['carbon-composition', 10e6, 10, [20e6, Infinity], 'replace', 'resistor-drifted', '20'],
  // A part of one per cent at another warmth than 25 °C reads some tenths of a per cent a kelvin off.
  ['tempco-resistor', 1000, 1, [1033], 'test', 'resistor-tempco-off', '1.01'],
  ['tempco-resistor', 1000, 1, [960], 'test', 'resistor-tempco-off', '990'],
  // A meter that ends below the mark, and a span that reaches over an end of the tolerance.
  ['metal-film', 22e6, 1, [20e6, Infinity], 'test', 'resistor-unclear', '20'],
  ['carbon-composition', 100e3, 10, [108e3, 112e3], 'test', 'resistor-unclear', '110'],
  ['fusible-film', 10, 5, [11.5], 'replace', 'resistor-drifted', '10.5'],
  ['wirewound', 10e3, 5, [10e3], 'leave', 'resistor-within', '10.5'],
  ['carbon-pot', 470e3, 20, [640e3], 'test', 'track-off', '564'],
  ['carbon-pot', 470e3, 20, [20e6, Infinity], 'replace', 'track-open', '20'],
])(
  '%s of %d Ω and %s %% that reads %j: %s, by %s',
  (type, value, percent, read, advice, rule, number) => {
    const [first] = judged(type, value, percent, read).reasons;
    expect(judged(type, value, percent, read).advice).toBe(advice);
    expect(first?.why).toBe(catalogue.kindTriage.find(({ id }) => id === rule)?.why);
    expect(first?.working).toContain(number);
  },
);

describe('a reading that proves nothing', () => {
  test.each([
    ['a track within its tolerance, which may crackle', 'carbon-pot', 100e3, [101e3], 'test'],
  ])('%s', (_, type, value, read, advice) => {
    const { reasons, advice: said } = judged(type, value, 10, read);
    expect(said).toBe(advice);
    expect(reasons.map(({ working }) => working)).toEqual(['']);
  });

  test.each([
    ['without a mark', undefined, 0.05],
    ['without a tolerance', 4700, undefined],
  ])('%s', (_, value, part) => {
    const tolerance = part === undefined ? undefined : { minus: part, plus: part };
    const { reasons } = judgeOfKind(
      catalogue,
      { type: 'carbon-film', value, tolerance },
      { resistance: { min: 9e3, typ: 9e3, max: 9e3 } },
    );
    expect(reasons.map(({ working }) => working)).toEqual(['']);
  });
});
