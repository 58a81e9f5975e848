import { describe, expect, test } from 'vitest';
import type { PartToPrint } from '../../../src/engine/printed/index.ts';
import { valuesPrinted } from '../../../src/engine/printed/values.ts';
import { markings } from '../markings/tables.ts';
import { printed, within, type Short } from './value-pieces.ts';

describe('a resistance in figures alone', () => {
  const CHIP = 'resistor-chip,resistor-network,trimmer';
  const FOUR = 'resistor-chip,resistor';

  test.each<[part: PartToPrint, found: Short[]]>([
    [
      { resistance: 47e3 },
      [
        ['473', 'usual', '47 and 3 noughts, in Ω', CHIP],
        ['4702', 'usual', '470 and 2 noughts, in Ω', FOUR],
        ['47001', 'rare', '4700 and 1 nought, in Ω', 'resistor'],
      ],
    ],
    [
      { resistance: 47 },
      [
        ['470', 'usual', '47, in Ω', CHIP],
        ['47', 'rare', 'Ω as it stands', 'resistor'],
      ],
    ],
    // Four figures in full would be taken for a code.
    [
      { resistance: 470 },
      [
        ['471', 'usual', '47 and 1 nought, in Ω', CHIP],
        ['4700', 'usual', '470, in Ω', FOUR],
        ['470', 'rare', 'Ω as it stands', 'resistor'],
      ],
    ],
    [
      { resistance: 4700 },
      [
        ['472', 'usual', '47 and 2 noughts, in Ω', CHIP],
        ['4701', 'usual', '470 and 1 nought, in Ω', FOUR],
        ['47000', 'rare', '4700, in Ω', 'resistor'],
      ],
    ],
    [{ resistance: 4.7 }, []],
    // Five figures are on accurate wire.
    [
      { resistance: 4750 },
      [
        ['4751', 'usual', '475 and 1 nought, in Ω', FOUR],
        ['47500', 'rare', '4750, in Ω', 'resistor'],
      ],
    ],
    // Wider than the parts that are marked so.
    [
      { resistance: 47e3, tolerance: within(0.05) },
      [
        ['473', 'usual', '47 and 3 noughts, in Ω', CHIP],
        ['4702', 'rare', '470 and 2 noughts, in Ω', FOUR],
        ['47001', 'rare', '4700 and 1 nought, in Ω', 'resistor'],
      ],
    ],
    [
      { resistance: 47e3, tolerance: within(0.02) },
      [
        ['473', 'usual', '47 and 3 noughts, in Ω', CHIP],
        ['4702', 'usual', '470 and 2 noughts, in Ω', FOUR],
        ['47001', 'rare', '4700 and 1 nought, in Ω', 'resistor'],
      ],
    ],
    // Behind a nought, the letter of a tolerance that such parts do not have would be taken for thousands.
    [{ resistance: 47, tolerance: within(0.1) }, [['47', 'rare', 'Ω as it stands', 'resistor']]],
    [
      { resistance: 470, tolerance: within(0.1) },
      [
        ['471', 'rare', '47 and 1 nought, in Ω', CHIP],
        ['470', 'rare', 'Ω as it stands', 'resistor'],
      ],
    ],
    [{ resistance: 475, tolerance: within(0.05) }, [['475', 'rare', 'Ω as it stands', 'resistor']]],
    [
      { resistance: 475, tolerance: within(0.01) },
      [
        ['4750', 'usual', '475, in Ω', FOUR],
        ['475', 'rare', 'Ω as it stands', 'resistor'],
      ],
    ],
    // A hundred megohms is the most of three figures.
    [
      { resistance: 100e6 },
      [
        ['107', 'usual', '10 and 7 noughts, in Ω', CHIP],
        ['1006', 'usual', '100 and 6 noughts, in Ω', FOUR],
      ],
    ],
    [{ resistance: 120e6 }, [['1206', 'usual', '120 and 6 noughts, in Ω', FOUR]]],
  ])('%j', (part, found) => {
    expect(printed(part, ['figures', 'four-figures', 'plain'])).toEqual(found);
    const plain = found.filter(([, , means]) => means === 'Ω as it stands');
    expect(printed(part, ['plain'])).toEqual(plain);
    // With those of five, which are written likewise.
    const isLonger = (one: Short): boolean =>
      one[3] === FOUR || (/nought|, in Ω/u.test(one[2]) && one[3] === 'resistor');
    expect(printed(part, ['four-figures'])).toEqual(found.filter(isLonger));
  });

  test('with a letter is in ohms and thousands, four figures without one behind', () => {
    const letters = (ohms: number): [string, string][] =>
      valuesPrinted(markings, { resistance: ohms }, true)
        .filter(({ writing }) => writing === 'letter')
        .map(({ text, use }) => [text, use]);
    expect(letters(4700)).toEqual(
      expect.arrayContaining([
        ['4K7', 'usual'],
        ['4k7', 'usual'],
        ['4.7K', 'other'],
        ['4К7', 'usual'],
      ]),
    );
    expect(letters(47)).toEqual(
      expect.arrayContaining([
        ['47R', 'usual'],
        ['47E', 'other'],
      ]),
    );
    expect(letters(1500).map(([text]) => text)).toContain('1500R');
    expect(letters(1500e3).map(([text]) => text)).not.toContain('1500K');
    expect(Object.fromEntries(letters(123.4))['0.1234K']).toBe('other');
    expect(letters(0.22).map(([text]) => text)).toEqual(expect.arrayContaining(['R22', '220m']));
    const found = valuesPrinted(markings, { resistance: 4700 }, true).find(
      ({ text }) => text === '4K7',
    );
    expect(found).toMatchObject({ means: 'K for kΩ and the point', note: '' });
  });

  test('nothing is printed where there is no value', () => {
    expect(valuesPrinted(markings, {}, true)).toEqual([]);
  });
});
