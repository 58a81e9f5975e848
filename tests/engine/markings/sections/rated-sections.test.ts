import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../../src/engine/markings/index.ts';
import { catalogue } from '../tables.ts';

/** Cans of several sections with the voltage of each: values in µF, voltages in V. */
const cans: [string, number[], number[]][] = [
  ['40-40/450-50/25', [40, 40, 50], [450, 450, 25]],
  ['20+20/350 40/50', [20, 20, 40], [350, 350, 50]],
  ['16+16/450, 25/25', [16, 16, 25], [450, 450, 25]],
  ['40-20/450-25/25', [40, 20, 25], [450, 450, 25]],
  ['60-40/350-20/300', [60, 40, 20], [350, 350, 300]],
  ['50/350+50/350+20/25', [50, 50, 20], [350, 350, 25]],
  ['40/450\n50/25', [40, 50], [450, 25]],
  ['8-450/8-350', [8, 8], [450, 350]],
  ['20-20-20/450/450/25', [20, 20, 20], [450, 450, 25]],
  ['8-8-8 MFD 475-450-25', [8, 8, 8], [475, 450, 25]],
  ['50+50 µF 450/25 V', [50, 50], [450, 25]],
  ['50+50µF 350/385V', [50, 50], [350, 350]],
  ['100+100µF 350V/385V', [100, 100], [350, 350]],
  ['40µF/450V-40µF/450V-20µF/25V', [40, 40, 20], [450, 450, 25]],
  ['32-32µF 350V 25µF 25V', [32, 32, 25], [350, 350, 25]],
  ['8+8/450', [8, 8], [450, 450]],
  ['20-20-20-20 450 450 450 400', [20, 20, 20, 20], [450, 450, 450, 400]],
  ['40+20+20+20 475 475 450 25', [40, 20, 20, 20], [475, 475, 450, 25]],
  ['80-40-30 MFD 450 350 25', [80, 40, 30], [450, 350, 25]],
  // Two that strokes part, with the volts of a can behind a gap.
  ['50/30 350', [50, 30], [350, 350]],
  ['40-20 450V', [40, 20], [450, 450]],
  ['16/32 350V', [16, 32], [350, 350]],
];

describe('sections of a can with the voltage of each', () => {
  test.each(cans)('%j', (text, values, volts) => {
    const [best] = readMarking(catalogue, text);
    const sections = best?.sections ?? [];
    expect(
      sections.map(({ capacitance }) => Number((capacitance.typ * 1e6).toPrecision(9))),
    ).toEqual(values);
    expect(sections.map(({ ratedVoltage }) => ratedVoltage?.typ)).toEqual(volts);
    expect(best?.notUnderstood).toEqual([]);
  });

  test.each(['22/35', '4n7/400', '10-450', '22/35 8923', '16/450', '100/40', '47/25 50'])(
    '%s is one section',
    (text) => {
      expect(readMarking(catalogue, text)[0]?.sections).toBeUndefined();
    },
  );
});
