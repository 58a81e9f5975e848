import { describe, expect, test } from 'vitest';
import type { Hints } from '../../../../src/engine/markings/index.ts';
import {
  isKnown,
  otherShapesAt,
  otherUnitsAt,
} from '../../../../src/engine/markings/beside/other-marks.ts';
import type { Token } from '../../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { lexiconFor, saying, scanFor, scanWithLookAlikes } from '../scans.ts';

const { otherUnit, otherForCode, otherShape } = weights;

/** A mark as where it ends, what it is of, and how readily it is believed. */
type Short = [end: number, is: string, weight: number];

const inShort = (tokens: readonly Token[]): Short[] =>
  saying(tokens, 'other').map(({ token: { end, weight }, content: { is } }) => [end, is, weight]);

describe('a number with the unit of something else', () => {
  test.each<[text: string, at: number, found: Short[]]>([
    ['47 µH', 0, [[5, 'an inductance', otherUnit.usual]]],
    ['47µH', 0, [[4, 'an inductance', otherUnit.usual]]],
    ['4.7mH', 0, [[5, 'an inductance', otherUnit.usual]]],
    ['4R7 µH', 0, [[6, 'an inductance', otherUnit.usual]]],
    ['4,433 MHz', 0, [[9, 'a frequency', otherUnit.usual]]],
    ['2.5 A', 0, [[5, 'a current', otherUnit.other]]],
    // A figure and its letter alone are rather a code; behind three the letter is of a capacitor.
    ['5A', 0, [[2, 'a current', otherUnit.other + otherForCode]]],
    ['10A', 0, [[3, 'a current', otherUnit.other + otherForCode]]],
    ['106A', 0, []],
    ['106 A', 0, [[5, 'a current', otherUnit.other]]],
    ['2.5A', 0, [[4, 'a current', otherUnit.other]]],
    ['500mA', 0, [[5, 'a current', otherUnit.usual]]],
    ['1000 h', 0, [[6, 'a time', otherUnit.usual]]],
    ['10 H', 0, [[4, 'an inductance', otherUnit.rare]]],
    // In the letters of the table, and as a word of its own.
    ['5 a', 0, []],
    ['10 mHz', 0, []],
    ['47 µHX', 0, []],
    ['47 µH2', 0, []],
    ['47 µH-2', 0, [[5, 'an inductance', otherUnit.usual]]],
    // Above nought, and not in the midst of something.
    ['0 A', 0, []],
    ['0.0 A', 0, []],
    ['0.5 A', 0, [[5, 'a current', otherUnit.other]]],
    ['05 A', 0, []],
    ['47 µH', 1, []],
    ['K47 µH', 1, []],
    ['.47 µH', 1, []],
    ['-47 µH', 1, []],
    ['+47 µH', 1, []],
    ['(47 µH)', 1, [[6, 'an inductance', otherUnit.usual]]],
    ['A', 0, []],
    ['47', 0, []],
    ['47 ?H', 0, []],
  ])('%j at %d', (text, at, found) => {
    expect(inShort(otherUnitsAt(scanFor(text), at))).toEqual(found);
  });

  test('is no unit with a letter that was taken for another', () => {
    expect(otherUnitsAt(scanWithLookAlikes('47 mН'), 0)).toEqual([]);
  });

  test.each<[hints: Hints, known: boolean]>([
    [{}, false],
    [{ origin: 'soviet' }, false],
    [{ kind: 'capacitor' }, true],
    [{ body: 'film' }, true],
    [{ type: 'ceramic-x7r' }, true],
  ])('with %j, what the part is is known: %s', (hints, known) => {
    expect(isKnown(lexiconFor(hints))).toBe(known);
    // Then its letter may be a tolerance.
    expect(otherUnitsAt(scanFor('47 nH', hints), 0)[0]?.withUsualUnit).toBe(!known);
  });

  test('says what it is, of whatever part', () => {
    const scan = scanFor('2.5 A');
    const [found] = otherUnitsAt(scan, 0);
    expect(found).toMatchObject({ at: 0, needs: [], assumed: [], withUsualUnit: false });
    expect(found?.meaning).toMatchObject({
      content: { says: 'other', is: 'a current' },
      bodies: scan.lexicon.bodies.all,
      origins: scan.lexicon.origins.all,
      types: [],
      source: 'identity',
    });
    expect(found?.meaning.means()).toBe(
      'a current: ampere: the rating of a fuse, a switch or a choke, or the ripple of a capacitor',
    );
  });
});

describe('a word of the form of another kind of part', () => {
  test.each<[text: string, at: number, found: [end: number, is: string][]]>([
    ['14D471', 0, [[6, 'a varistor']]],
    ['14D471K', 0, [[7, 'a varistor']]],
    ['14D471M 300', 0, [[7, 'a varistor']]],
    ['14D471X', 0, []],
    ['14D4711', 0, []],
    ['QEL14D471K', 3, [[10, 'a varistor']]],
    ['114D471K', 1, []],
    ['.14D471K', 1, []],
    // Letters of a maker may run on before figures, but not before letters of the form.
    ['S14K275', 0, [[7, 'a varistor']]],
    ['XS14K275', 1, []],
    ['-S14K275', 1, [[8, 'a varistor']]],
    ['T3.15A', 0, [[6, 'a fuse']]],
    ['T3x15A', 0, []],
    ['F2AL250V', 0, [[8, 'a fuse']]],
    ['5D-11', 0, [[5, 'a thermistor']]],
    [
      'TGL 38159',
      0,
      [
        [9, 'a standard'],
        [3, 'a standard'],
      ],
    ],
    ['14d471k', 0, []],
    ['D471', 0, []],
  ])('%s at %d', (text, at, found) => {
    expect(inShort(otherShapesAt(scanFor(text), at))).toEqual(
      found.map(([end, is]) => [end, is, otherShape.usual]),
    );
  });

  test('says what it is, of whatever part', () => {
    const scan = scanFor('S14K275');
    const [found] = otherShapesAt(scan, 0);
    expect(found).toMatchObject({ at: 0, needs: [], assumed: [] });
    expect(found?.meaning).toMatchObject({ bodies: scan.lexicon.bodies.all, types: [] });
    expect(found?.meaning.means()).toBe(
      'a varistor: varistor: disc in mm, then the greatest voltage of ac',
    );
  });
});
