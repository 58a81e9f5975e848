import { describe, expect, test } from 'vitest';
import { ratedSectionsAt } from '../../../../src/engine/markings/sections/rated-sections.ts';
import { spansAt } from '../../../../src/engine/markings/sections/ranges.ts';
import { sectionsAt } from '../../../../src/engine/markings/sections/sections.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { expected, inShort, saying, scanFor, type Short } from '../scans.ts';

const {
  value: { usual, other, rare },
  valueWithUnit,
  sections,
  range,
  span,
  fineSeries: fine,
  coarseSeries: coarse,
  noSeries,
  voltageWithUnit,
} = weights;

/** A list with its unit; how far its values were made is added. */
const LIST = valueWithUnit.usual + sections;

const alike = (count: number, value: string): string =>
  `${count} sections: ${Array.from({ length: count }, () => value).join(' and ')}`;

describe('sections of one can', () => {
  // 16 and 20 are of E24, 100 and 10 of E3; 8, 25, 32, 40 and 50 were usual before there were series.
  test.each<[text: string, at: number, found: Short[]]>([
    ['16+16µF', 0, [[7, `${alike(2, '16 µF')} (microfarad)`, LIST + fine]]],
    ['16 + 16 µF', 0, [[10, `${alike(2, '16 µF')} (microfarad)`, LIST + fine]]],
    ['16&16µF', 0, [[7, `${alike(2, '16 µF')} (microfarad)`, LIST + fine]]],
    ['16 µF + 16 µF', 0, [[13, `${alike(2, '16 µF')} (microfarad)`, LIST + fine]]],
    [
      '16+16+8 µF',
      0,
      [[10, '3 sections: 16 µF and 16 µF and 8 µF (microfarad)', LIST + (2 * fine) / 3]],
    ],
    ['40/40 µF', 0, [[8, `${alike(2, '40 µF')} (microfarad)`, LIST]]],
    ['40–40 µF', 0, [[8, `${alike(2, '40 µF')} (microfarad)`, LIST]]],
    // What a stroke parts may be something else: values of no series are not believed for a unit.
    [
      '33+45 µF',
      0,
      [[8, '2 sections: 33 µF and 45 µF (microfarad)', LIST + (coarse + noSeries.unit) / 2]],
    ],
    [
      '33/45 µF',
      0,
      [[8, '2 sections: 33 µF and 45 µF (microfarad)', LIST + (coarse + noSeries.bare) / 2]],
    ],
    ['2x50µF', 0, [[6, `${alike(2, '50 µF')} (microfarad)`, LIST]]],
    ['2 × 100 µF', 0, [[10, `${alike(2, '100 µF')} (microfarad)`, LIST + coarse]]],
    ['3X8 MFD', 0, [[7, `${alike(3, '8 µF')} (microfarad, old American writing)`, LIST]]],
    ['6x8µF', 0, [[5, `${alike(6, '8 µF')} (microfarad)`, LIST]]],
    ['7x8µF', 0, []],
    ['1x8µF', 0, []],
    ['2x', 0, []],
    ['2', 0, []],
    ['x50', 0, []],
    // With the drawn sign of each.
    [
      '▲40-■20 µF',
      0,
      [[10, '2 sections: 40 µF (triangle) and 20 µF (square) (microfarad)', LIST + fine / 2]],
    ],
    [
      '▲ 40+20 µF',
      0,
      [[10, '2 sections: 40 µF (triangle) and 20 µF (microfarad)', LIST + fine / 2]],
    ],
    // Without a unit: joined by a plus, alike by strokes, or three and more by strokes.
    ['16+16', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['33+45', 0, [[5, '2 sections: 33 µF and 45 µF', other + (coarse + noSeries.bare) / 2]]],
    ['2x50', 0, [[4, alike(2, '50 µF'), other]]],
    ['32-32', 0, [[5, alike(2, '32 µF'), rare]]],
    ['40-20', 0, []],
    ['40-20-20', 0, [[8, '3 sections: 40 µF and 20 µF and 20 µF', rare + (2 * fine) / 3]]],
    ['04-20-20', 0, []],
    [
      '8-8-450',
      0,
      [
        [7, '3 sections: 8 µF and 8 µF and 450 µF', rare + noSeries.bare / 3],
        // The last may be the voltage.
        [3, alike(2, '8 µF'), rare],
      ],
    ],
    [
      '50-50-25 µF',
      0,
      [
        [11, '3 sections: 50 µF and 50 µF and 25 µF (microfarad)', LIST],
        [5, alike(2, '50 µF'), rare],
      ],
    ],
    // Behind a plus, or another stroke, a stroke parts the voltage from them.
    ['16+16/450', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['32-32/450', 0, [[5, alike(2, '32 µF'), rare]]],
    // Six at most, and of 1 to 5000 µF.
    ['8+8+8+8+8+8+8', 0, [[11, alike(6, '8 µF'), other]]],
    ['1+1', 0, [[3, alike(2, '1 µF'), other + coarse]]],
    // Of fewer than one as many as of paper in one tub, and not beside whole ones.
    ['0.95+0.95', 0, []],
    ['1+0.9', 0, []],
    ['5000+5000', 0, [[9, alike(2, '5000 µF'), other]]],
    ['5100+5100', 0, []],
    ['16', 0, []],
    ['16+', 0, []],
    ['16+K', 0, []],
    ['1?+16', 0, []],
    ['0+0', 0, []],
    // A letter of ohms is no unit of theirs, nor one that is unusual for microfarads.
    ['10K+10K', 0, []],
    ['16M+16M', 0, []],
    ['16+16R', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['16R+16R', 0, []],
    // A letter runs on behind the unit, or it is in other letters than its own.
    ['16+16 µFK', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['16+16 Mf', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['16+16 kΩ', 0, [[5, alike(2, '16 µF'), other + fine]]],
    ['16+16 ?F', 0, [[5, alike(2, '16 µF'), other + fine]]],
  ])('%j at %d', (text, at, found) => {
    expect(inShort(sectionsAt(scanFor(text), at))).toEqual(expected(found));
  });

  test('say their values and signs', () => {
    const scan = scanFor('▲40-20 µF');
    const [found] = saying(sectionsAt(scan, 0), 'sections');
    expect(found?.content.values.map((value) => value.toPrecision(6))).toEqual([
      '0.0000400000',
      '0.0000200000',
    ]);
    expect(found?.content.symbols).toEqual(['triangle', undefined]);
    expect(found?.token).toMatchObject({
      at: 0,
      needs: [],
      assumed: [],
      meaning: { slot: 'value', types: [], bodies: scan.lexicon.bodiesOfKind.capacitor },
    });
  });
});

const RANGE = usual + range;

describe('between which values a part is', () => {
  const SPAN = valueWithUnit.usual + span;
  const ends = (low: string, high: string): string => `from ${low} to ${high} (microfarad)`;
  test.each<[text: string, found: [end: number, means: string, weight: number]]>([
    ['88-108 µF', [9, ends('88 µF', '108 µF'), SPAN]],
    ['88 - 108 µF', [11, ends('88 µF', '108 µF'), SPAN]],
    // From a tenth to three tenths apart.
    ['100-110 µF', [10, ends('100 µF', '110 µF'), SPAN]],
    ['100-130 µF', [10, ends('100 µF', '130 µF'), SPAN]],
    // From 20 µF to 2 mF.
    ['20-24 µF', [8, ends('20 µF', '24 µF'), SPAN]],
    ['1600-2000 µF', [12, ends('1600 µF', '2000 µF'), SPAN]],
  ])('%s', (text, found) => {
    const tokens = saying(spansAt(scanFor(text), 0), 'capacitance').map(({ token }) => token);
    expect(tokens.map(({ end, meaning, weight }) => [end, meaning.means(), weight])).toEqual([
      found,
    ]);
  });

  test.each([
    '100-109 µF',
    '100-131 µF',
    '108-88 µF',
    '19-23 µF',
    '1650-2050 µF',
    '88/108 µF',
    '88+108 µF',
    '88-108-130 µF',
    '88-108 nF',
    '88-108',
  ])('%s is none', (text) => {
    expect(saying(spansAt(scanFor(text), 0), 'capacitance')).toEqual([]);
  });

  test('says both ends, and is of parts that start a motor', () => {
    const scan = scanFor('88-108 µF');
    const [found] = saying(spansAt(scan, 0), 'capacitance');
    expect(found?.content).toMatchObject({ value: 88e-6, span: true });
    expect(found?.token.meaning).toMatchObject({
      types: ['al-motor-start'],
      source: 'trade',
      implies: { minus: 0, plus: 108 / 88 - 1, unit: 'fraction' },
    });
  });
});

describe('the range of a trimmer', () => {
  test.each<[text: string, found: Short[]]>([
    ['3-30', [[4, 'adjustable from 3 pF to 30 pF', RANGE, 'whole-word']]],
    // To 100 pF at most, two and a half times at least.
    ['10-100', [[6, 'adjustable from 10 pF to 100 pF', RANGE, 'whole-word']]],
    ['10-101', []],
    ['3-7.5', [[5, 'adjustable from 3 pF to 7.5 pF', RANGE, 'whole-word']]],
    ['3-7.4', []],
    // A value and its volts, save where a trimmer is named before.
    ['3/30', [[4, 'adjustable from 3 pF to 30 pF', RANGE, 'whole-word type-before']]],
    ['3+30', [[4, '2 sections: 3 µF and 30 µF', other + (2 * fine) / 2]]],
    ['03-30', []],
    ['3-030', []],
    // With its unit, of any width.
    ['3-30 pF', [[7, 'adjustable from 3 pF to 30 pF', LIST + range]]],
    ['20-30 pF', [[8, 'adjustable from 20 pF to 30 pF', LIST + range]]],
    ['30-3 pF', []],
    ['30-30 pF', []],
    ['3+30 pF', [[7, '2 sections: 3 pF and 30 pF (picofarad)', LIST + range]]],
    ['3-10-30 pF', [[4, 'adjustable from 3 pF to 10 pF', RANGE, 'whole-word']]],
    ['1-2 nF', [[6, '2 sections: 1 nF and 2 nF (nanofarad)', LIST + (coarse + fine) / 2]]],
  ])('%s', (text, found) => {
    expect(inShort(sectionsAt(scanFor(text), 0))).toEqual(expected(found));
  });

  test('says both ends, and is of parts that can be set', () => {
    const scan = scanFor('3-30 pF');
    const [found] = saying(sectionsAt(scan, 0), 'capacitance');
    expect(found?.content).toMatchObject({
      value: 30e-12,
      from: 3e-12,
      figures: '',
      withUnit: true,
    });
    expect(found?.token.meaning.bodies).toBe(
      scan.lexicon.bodies.bitsOf(['air', 'ceramic', 'film', 'mica']),
    );
    expect(found?.token.meaning).toMatchObject({ slot: 'value', types: ['air-variable'] });
  });
});

const RATED = other + voltageWithUnit.usual + sections;
const LISTED = valueWithUnit.usual + voltageWithUnit.usual + sections;

/** Sections in words, each as microfarads and volts. */
const rated = (...each: [microfarads: number, volts: string][]): string =>
  `${each.length} sections: ${each.map(([value, volts]) => `${value} µF ${volts}`).join(' and ')}`;

describe('sections with the voltage of each', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['40-40/450-50/25', 0, [[15, rated([40, '450 V'], [40, '450 V'], [50, '25 V']), RATED]]],
    [
      '20+20/350 40/50',
      0,
      [[15, rated([20, '350 V'], [20, '350 V'], [40, '50 V']), RATED + (2 * fine) / 3]],
    ],
    ['40/450, 50/25', 0, [[13, rated([40, '450 V'], [50, '25 V']), RATED]]],
    ['40/450 - 50/25', 0, [[14, rated([40, '450 V'], [50, '25 V']), RATED]]],
    ['40/450\n50/25', 0, [[12, rated([40, '450 V'], [50, '25 V']), RATED]]],
    [
      '20-20-20/450/450/25',
      0,
      [[19, rated([20, '450 V'], [20, '450 V'], [20, '25 V']), RATED + fine]],
    ],
    ['8-450/8-350', 0, [[11, rated([8, '450 V'], [8, '350 V']), RATED]]],
    ['1/450 5000/25', 0, [[13, rated([1, '450 V'], [5000, '25 V']), RATED + coarse / 2]]],
    // Further on is not here.
    ['8 40/450 50/25', 0, []],
    ['8 8-450/8-350', 0, []],
    ['8-8 MFD x 450-25', 0, []],
    ['8-8 ?F 450-25', 0, []],
    ['8-8 pF 450-25', 0, []],
    // One group with one voltage is a value and its volts.
    ['40/450', 0, []],
    ['20+20/350', 0, []],
    ['20+20/350/350', 0, []],
    ['20-20/450/350/25', 0, []],
    ['40/450 50/25 8', 0, [[12, rated([40, '450 V'], [50, '25 V']), RATED]]],
    ['40/450-50/25-8', 0, []],
    ['40/450 50/25/8/6', 0, []],
    ['40/450 50/250.5', 0, []],
    // Volts that no part is made for, or values that no can has.
    ['40/47 50/25', 0, []],
    ['40/450 50/47', 0, []],
    ['6000/450 50/25', 0, []],
    ['40/450 0/25', 0, []],
    // A word begins and ends there.
    ['x40/450 50/25', 1, []],
    ['140/450 50/25', 1, []],
    ['40/450 50/25V', 0, []],
    ['/450 50/25', 0, []],
    // With a unit, and as many voltages as values behind it.
    ['8-8-8 MFD 475-450-25', 0, [[20, rated([8, '475 V'], [8, '450 V'], [8, '25 V']), LISTED]]],
    ['50+50 µF 450/25 V', 0, [[17, rated([50, '450 V'], [50, '25 V']), LISTED]]],
    ['50+50µF 450/25', 0, [[14, rated([50, '450 V'], [50, '25 V']), LISTED]]],
    ['20+20 µF 450/25V TEST', 0, [[16, rated([20, '450 V'], [20, '25 V']), LISTED + fine]]],
    ['8-8 MFD 450-25-16', 0, []],
    ['8 MFD 450-25', 0, []],
    ['8-8 MFD 450', 0, []],
    ['8-8 kΩ 450-25', 0, []],
    ['8-8 450-25', 0, []],
    ['6000+6000 µF 450/25', 0, []],
    // A rating with its surge voltage, a quarter above it at most, is one of all.
    ['50+50 µF 400/500 V', 0, []],
    ['50+50 µF 400/501 V', 0, [[18, rated([50, '400 V'], [50, '501 V']), LISTED]]],
    ['50+50 µF 400/400 V', 0, [[18, rated([50, '400 V'], [50, '400 V']), LISTED]]],
    ['8+8+8 µF 400/450/400 V', 0, [[22, rated([8, '400 V'], [8, '450 V'], [8, '400 V']), LISTED]]],
  ])('%j at %d', (text, at, found) => {
    expect(inShort(ratedSectionsAt(scanFor(text), at))).toEqual(expected(found));
  });

  test('say their values and volts, and are of cans', () => {
    const scan = scanFor('40/450 50/25');
    const [found] = saying(ratedSectionsAt(scan, 0), 'sections');
    expect(found?.content).toMatchObject({ values: [40e-6, 50e-6], symbols: [], volts: [450, 25] });
    expect(found?.token).toMatchObject({ at: 0, needs: [], assumed: [] });
    expect(found?.token.meaning).toMatchObject({
      slot: 'value',
      types: [],
      bodies: scan.lexicon.bodies.bitsOf(['aluminium', 'paper']),
    });
  });
});
