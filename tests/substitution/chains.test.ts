import { describe, expect, test } from 'vitest';
import { answered } from './answered.ts';

/** What a page says of plain resistors in series; which are named is worked by hand in `engine/kinds/chain`. */
describe('where no single part of a plain type will do', () => {
  // The largest of two of 5 % has 1.05 / 2 of the whole voltage, of three 1.05 / 2.95; its square over the value is the power.
  test.each([
    // Half of 600 V and a twentieth more are 315 V, and 0.2 W.
    [
      'two for 600 V',
      'carbon-composition hv-dropper value=1M&vdc=600',
      'Two carbon film resistors of 510 kΩ ±5 % 0.5 W in series fit as well: each bears about half of the voltage and of the power, up to 315 V and 0.195 W.',
    ],
    // 1 W goes up to 1 MΩ, and two of that are 9 % short; of three each may bear 320 V.
    [
      'three for 900 V, as two are not made close enough',
      'carbon-composition hv-dropper value=2.2M&vdc=900&v-surge=900',
      'Three carbon film resistors of 750 kΩ ±5 % 0.5 W in series fit as well: each bears about a third of the voltage and of the power, up to 320 V and 0.137 W.',
    ],
    // 400² / 22 k are 7.3 W, half of which 10 W bear with ease.
    [
      'two for the power',
      'wirewound hv-dropper value=22k&vdc=400&rating=10',
      'Two wirewound resistors of 11 kΩ ±5 % 10 W in series fit: each bears about half of the voltage and of the power, up to 210 V and 4.01 W.',
    ],
    [
      'two that never flame, where the place asks for that',
      'wirewound hot-power value=22k&vdc=450',
      'Two wirewound resistors of 11 kΩ ±5 % 10 W in series fit: each bears about half of the voltage and of the power, up to 236 V and 5.07 W.',
    ],
    // Close parts end at 1 MΩ: three of 732 kΩ are 0.2 % less than the old value.
    [
      'three for a close value that is not made in one',
      'metal-film precision-divider value=2.2M&vdc=500',
      'Three metal film resistors of 732 kΩ ±0.1 % 0.25 W in series fit: each bears about a third of the voltage and of the power, up to 178 V and 43.3 mW.',
    ],
  ])('%s are named', (_case, asked, sentence) => {
    const [type = '', position = '', address = ''] = asked.split(' ');
    expect(answered(type, position, address)).toContain(sentence);
  });

  test.each([
    ['a single one fits', 'carbon-composition hv-dropper value=220k&vdc=450'],
    // A quarter of 2 kV and a little more is 538 V, more than any plain body stands.
    ['four are too few', 'carbon-film hv-dropper value=10M&vdc=2000'],
    ['what is wrong is the noise', 'carbon-composition plate-load value=220k&vdc=400'],
    [
      'only parts that burn through may stand there',
      'fusible-film fusible-position value=100&vdc=8',
    ],
  ])('none are where %s', (_case, asked) => {
    const [type = '', position = '', address = ''] = asked.split(' ');
    expect(answered(type, position, address)).not.toContain('in series fit');
  });
});
