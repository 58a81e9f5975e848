import { describe, expect, test } from 'vitest';
import { mantissaValuesAt } from '../../../../src/engine/markings/values/chip-values.ts';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import { unitValuesAt } from '../../../../src/engine/markings/values/unit-values.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { expected, inShort, lexiconFor, scanFor, type Short } from '../scans.ts';

const {
  coarseSeries: coarse,
  noSeries,
  precisionSeries: precision,
  worn,
  completedUnit,
  mantissaLetter,
  ceramicChipKnown,
  mantissaAlone,
  valueWithUnit,
} = weights;

describe('a value with its unit', () => {
  test.each<[text: string, found: Short[]]>([
    ['47nF', [[4, '47 nF (nanofarad)', valueWithUnit.usual + coarse]]],
    ['47 nF', [[5, '47 nF (nanofarad)', valueWithUnit.usual + coarse]]],
    ['4.75 nF', [[7, '4.75 nF (nanofarad)', valueWithUnit.usual + precision.unit]]],
    ['4.73 nF', [[7, '4.73 nF (nanofarad)', valueWithUnit.usual + noSeries.unit]]],
    ['10 kohm', [[7, '10 kΩ (kilohm)', valueWithUnit.usual + coarse]]],
    // A single letter may follow, such as that of a tolerance.
    ['47nFK', [[4, '47 nF (nanofarad)', valueWithUnit.usual + coarse]]],
    ['47nFKL', []],
    // Old writing of microfarads, and thousandths of a farad of large cans.
    [
      '10 mF',
      [
        [5, '10 µF (microfarad, old writing)', valueWithUnit.usual + coarse],
        [5, '10000 µF (millifarad)', valueWithUnit.other + coarse],
      ],
    ],
    ['10 Mf', []],
    ['47 %', []],
    ['5 W', []],
    ['0 pF', []],
    ['47', []],
  ])('%s', (text, found) => {
    expect(inShort(unitValuesAt(scanFor(text), 0))).toEqual(expected(found));
  });

  test('whose unit cannot be read in part is each that there is', () => {
    const found = unitValuesAt(scanFor('47 ?F'), 0);
    const nano = found.find(({ meaning }) => meaning.means() === '47 nF (nanofarad)');
    expect(nano).toMatchObject({
      assumed: [{ at: 3, as: 'n', why: 'worn' }],
      withUsualUnit: false,
      meaning: { content: { says: 'capacitance', figures: '47', withUnit: true } },
    });
    expect(nano?.weight).toBeCloseTo(valueWithUnit.usual + coarse + worn + completedUnit, 9);
    expect(unitValuesAt(scanFor('47 nF'), 0)[0]?.withUsualUnit).toBe(true);
    const touching = unitValuesAt(scanFor('47?F'), 0).map(({ meaning }) => meaning.means());
    expect(touching).toContain('47 nF (nanofarad)');
    expect(unitValuesAt(scanFor('4?n F'), 0)).toEqual([]);
    expect(unitValuesAt(scanFor('4? nF'), 0).map(({ meaning }) => meaning.means())).toEqual([
      '40 nF (nanofarad)',
      '43 nF (nanofarad)',
      '47 nF (nanofarad)',
    ]);
  });
});

describe('a value behind its unit, as on labels', () => {
  const meantAt = (text: string, at: number): string[] =>
    unitValuesAt(scanFor(text), at).map(({ end, meaning }) =>
      `${String(end)}: ${meaning.means()}`.replaceAll('\u00a0', ' '),
    );

  test.each<[text: string, at: number, found: string[]]>([
    ['MFD 8', 0, ['5: 8 µF (microfarad, old American writing)']],
    ['MFD: 8', 0, ['6: 8 µF (microfarad, old American writing)']],
    ['µF=10', 0, ['5: 10 µF (microfarad)']],
    ['OHMS 500', 0, ['8: 500 Ω (ohm)']],
    // Behind figures, unless the label has its volts before theirs too.
    ['600 MFD 8', 4, []],
    ['WV 600 MFD 8', 7, ['12: 8 µF (microfarad, old American writing)']],
    ['WV600 MFD 8', 6, []],
    // The figures have a unit or a letter of their own.
    ['MFD 8 µF', 0, []],
    ['MFD 8n', 0, []],
    ['MFD 8x', 0, []],
    // A word that goes on, one that means more by itself, and a single letter.
    ['MFDX 8', 0, []],
    ['XMFD 8', 1, []],
    ['MF 100', 0, []],
    ['F 8', 0, []],
    // No figures, and no unit.
    ['MFD', 0, []],
    ['MFD x', 0, []],
    ['MKP 8', 0, []],
    // Worn figures are none.
    ['MFD 8?', 0, []],
  ])('%s at %d: %j', (text, at, found) => {
    expect(meantAt(text, at)).toEqual(found);
  });

  test('weighs less than one before its unit', () => {
    const [behind] = unitValuesAt(scanFor('µF 10'), 0);
    const [before] = unitValuesAt(scanFor('10 µF'), 0);
    expect(behind?.weight).toBeCloseTo((before?.weight ?? 0) + weights.unitBefore, 9);
    expect(behind?.assumed).toEqual([]);
    expect(behind).not.toHaveProperty('withUsualUnit');
  });
});

describe('a letter and a figure of a small chip', () => {
  test.each<[text: string, found: Short[], hints?: Hints]>([
    [
      'A5',
      [
        [2, '100 nF', mantissaLetter.usual + mantissaAlone, 'whole-word'],
        [2, '1 µF', mantissaLetter.rare + mantissaAlone, 'whole-word'],
      ],
    ],
    ['J3', [[2, '2.2 nF', mantissaLetter.usual + mantissaAlone, 'whole-word']]],
    [
      'J3',
      [[2, '2.2 nF', mantissaLetter.usual + mantissaAlone + ceramicChipKnown, 'whole-word']],
      { body: 'ceramic-chip' },
    ],
    ['J9', [[2, '0.22 pF', mantissaLetter.usual + mantissaAlone, 'whole-word']]],
    ['g1', [[2, '90 pF', mantissaLetter.rare + mantissaAlone, 'whole-word']]],
    ['JJ', []],
    ['3J', []],
    ['J', []],
  ])('%s', (text, found, hints) => {
    const tokens = mantissaValuesAt(scanFor(text, hints), 0);
    expect(inShort(tokens)).toEqual(expected(found));
    for (const { meaning, assumed } of tokens) {
      expect(meaning.bodies).toBe(lexiconFor().bodies.bitsOf(['ceramic-chip']));
      expect(assumed).toEqual([]);
    }
  });
});
