import { describe, expect, test } from 'vitest';
import { letterValuesAt } from '../../../../src/engine/markings/values/letter-values.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { scanFor } from '../scans.ts';

/**
 * What figures and a letter of ohms behind them gain where nothing else is printed but per cents: the
 * weight of the text less that of the same with a volt behind it, which capacitors have.
 */
const gained = (text: string): number | undefined => {
  const weightIn = (whole: string): number | undefined =>
    letterValuesAt(scanFor(whole), 0).find(
      ({ meaning: { content } }) => content.says === 'resistance',
    )?.weight;
  const [alone, beside] = [weightIn(text), weightIn(`${text} 1V`)];
  return alone === undefined || beside === undefined ? undefined : alone - beside;
};

describe('figures and a letter of ohms by themselves', () => {
  test.each([
    '1k',
    '10k',
    '100k',
    '4.7k',
    '12.5k',
    '4,75k',
    '4.7K',
    '12.5K',
    '1,25M',
    '2.2M',
    // Per cents, with or without their sign and gaps.
    '15k 1%',
    '10K 5%',
    '1M ±10 %',
    '1M±10%',
    '1M ± 10%',
    '4.75K 0.5%',
    '12.75k 0,25 %',
    // An R for the point, with the letter of a tolerance.
    '1R5J',
    '3R3 K',
    '12R5F',
    '100R5G',
    '4R7M',
    '4,7M 12.5%',
  ])('%s is rather a resistor', (text) => {
    expect(gained(text)).toBeCloseTo(weights.ohmsAlone, 9);
  });

  // A capital letter behind whole figures that are no code may as well be the tolerance of a capacitor.
  test.each(['10K', '100K', '1M', '27 K', '4K7J'])('%s may be a resistor', (text) => {
    expect(gained(text)).toBeCloseTo(weights.ohmsRather, 9);
  });

  test.each([
    // Codes have noughts of their own to count.
    '104K',
    '472K',
    // Picofarads have tolerances of their own; no tolerance, more than one, or none behind the figures.
    '4R7C',
    '8R2 D',
    '1R5',
    '1R5JK',
    'R47J',
    // Something else before, behind or between.
    '10k J',
    '10k 5',
    '10K 5% X',
    '4k7',
    '10kk',
    // 15.1 kilohm, and what per cent of it.
    '15k1%',
    // 0.1M is as well a tenth of a microfarad on an old tube; nobody prints 500 ohm as 0.5k.
    '0.1M',
    '0.47M 10%',
    '0.5k',
  ])('%s is not for this', (text) => {
    expect(gained(text) ?? 0).toBeCloseTo(0, 9);
  });
});
