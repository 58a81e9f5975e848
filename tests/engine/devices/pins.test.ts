import { describe, expect, it } from 'vitest';
import { deviceModels } from '../../../src/engine/devices/models/index.ts';
import { comparePins, pinDifferences } from '../../../src/engine/devices/pins.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import type { PinFunctionRow, PinRow } from '../../../src/schemas/devices.ts';
import { catalogueWith, device, pin, use } from './made-up.ts';

/** What becomes of each pin of a made-up order in another. */

const does = (id: string, role: PinFunctionRow['role']): PinFunctionRow => ({
  id,
  name: `the ${id}`,
  role,
  meaning: '',
});
const pinFunctions = [
  does('supply', 'main'),
  does('input', 'main'),
  does('null', 'trim'),
  does('balance', 'trim'),
  does('free', 'none'),
  does('shield', 'none'),
];

const orders = (pinouts: Readonly<Record<string, readonly string[]>>): PinRow[] =>
  Object.entries(pinouts).flatMap(([pinout, pins]) =>
    pins.flatMap((text, index) => {
      const [what = '', section = ''] = text.split(':');
      return what === '' ? [] : [pin(pinout, index + 1, what, section)];
    }),
  );

const differences = (old: readonly string[], stranger: readonly string[]) =>
  pinDifferences(
    catalogueWith({ pinFunctions, pins: orders({ stranger, old }) }),
    'old',
    'stranger',
  ).map((one) => `${one.pin} ${one.role}: ${one.old}, ${one.now}`);

describe('a pin that does something else', () => {
  it.each<[readonly string[], readonly string[], readonly string[]]>([
    [['supply', 'input'], ['supply', 'input'], []],
    [
      ['supply', 'input'],
      ['input', 'supply'],
      ['1 main: the supply, the input', '2 main: the input, the supply'],
    ],
    [['input:1'], ['input:2'], ['1 main: the input 1, the input 2']],
    [['null'], ['balance'], ['1 trim: the null, the balance']],
    [['null'], ['free'], ['1 trim: the null, the free']],
    [['free'], ['null'], ['1 trim: the free, the null']],
    // The new part drives what was free, or the circuit drives what is free now.
    [['free'], ['supply'], ['1 main: the free, the supply']],
    [['supply'], ['free'], ['1 main: the supply, the free']],
    [['null'], ['supply'], ['1 main: the null, the supply']],
    [['free'], ['shield'], []],
    [['supply', 'input'], ['supply'], ['2 main: the input, no pin']],
    [['supply'], ['supply', 'free'], ['2 main: no pin, the free']],
  ])('%o by %o: %o', (old, stranger, expected) => {
    expect(differences(old, stranger)).toEqual(expected);
  });

  it('stands in the order of the pins', () => {
    const many = Array.from({ length: 11 }, () => 'input');
    const found = differences(
      many,
      many.map(() => 'supply'),
    );
    expect(found.map((text) => Number(text.split(' ')[0]))).toEqual(
      many.map((_, index) => index + 1),
    );
  });
});

describe('orders of pins that a number is sold with', () => {
  const pins = [
    ...orders({ usual: ['supply', 'input', 'null'], turned: ['input', 'supply', 'null'] }),
    ...orders({ other: ['supply', 'input', 'balance'] }).map((row) => ({
      ...row,
      basis: 'memory' as const,
    })),
    ...orders({ unasked: ['supply'] }),
  ];
  const catalogue = catalogueWith({ pinFunctions, pins });
  const compared = (old: string[], stranger: string[]) =>
    comparePins(catalogue, device('a', { pinouts: old }), device('b', { pinouts: stranger }));

  it.each<[string[], string[], { least: number; usual: number; most: number }, number]>([
    [['usual'], ['usual'], { least: 0, usual: 0, most: 0 }, 0],
    [['usual'], ['other'], { least: 0, usual: 0, most: 0 }, 1],
    [['usual'], ['turned'], { least: 2, usual: 2, most: 2 }, 0],
    [['usual'], ['usual', 'turned'], { least: 0, usual: 0, most: 2 }, 0],
    [['usual'], ['turned', 'other'], { least: 0, usual: 2, most: 2 }, 0],
  ])('%o by %o', (old, stranger, main, trim) => {
    const found = compared(old, stranger);
    expect(found?.main).toEqual(main);
    expect(found?.trim).toBe(trim);
  });

  it('rest on the rows of both, and on no others', () => {
    expect(compared(['usual'], ['turned'])).toMatchObject({
      basis: 'published',
      sources: ['sheet-of-usual', 'sheet-of-turned'],
    });
    expect(compared(['usual'], ['other'])?.basis).toBe('memory');
  });

  it('are not compared where none is known', () => {
    expect(compared([], ['usual'])).toBeUndefined();
    expect(compared(['usual'], [])).toBeUndefined();
  });
});

describe('what is said of the pins of another device', () => {
  const long = Array.from({ length: 6 }, () => 'input');
  const pins = orders({
    usual: ['supply', 'input', 'null'],
    turned: ['input', 'supply', 'balance'],
    long,
    supplies: long.map(() => 'supply'),
  });
  const catalogue = catalogueWith({ pinFunctions, pins });
  const told = (id: string, from: string[], to: string[]) => {
    const where = { catalogue, use, conditions: {}, original: device('a', { pinouts: from }) };
    const stranger = device('b', { pinouts: to });
    const outcome = deviceModels[id]?.measure(stranger, where);
    const value = outcome?.status === 'known' ? outcome.value : undefined;
    return { value, words: deviceModels[id]?.working(stranger, where, exactly(0)), outcome };
  };

  it.each<[string, string[], string[], [number, number], string]>([
    ['pins', ['usual'], ['usual'], [0, 0], 'every pin does the same'],
    [
      'pins',
      ['usual'],
      ['turned'],
      [2, 2],
      'pin 1: the supply becomes the input, pin 2: the input becomes the supply',
    ],
    ['trim-pins', ['usual'], ['turned'], [0, 1], 'pin 3: the null becomes the balance'],
    ['trim-pins', ['usual'], ['usual'], [0, 0], 'every pin does the same'],
    ['pins-in-doubt', ['usual'], ['usual', 'turned'], [0, 2], 'from 0 to 2 pins'],
    ['pins-in-doubt', ['usual'], ['turned'], [0, 0], 'one order'],
  ])('%s, %o by %o', (id, from, to, [min, max], words) => {
    const { value, words: said } = told(id, from, to);
    expect([value?.min, value?.max]).toEqual([min, max]);
    expect(said).toContain(words);
  });

  it('names the first four of many, and counts the others', () => {
    const { words } = told('pins', ['long'], ['supplies']);
    expect(words?.match(/pin \d:/gu)).toHaveLength(4);
    expect(words).toMatch(/, 2 more$/u);
    expect(told('pins', ['usual'], ['turned']).words).not.toContain('more');
  });

  it('is nothing where an order is not known', () => {
    expect(told('pins', ['usual'], []).outcome).toEqual({ status: 'unknown', missing: ['pins'] });
  });
});
