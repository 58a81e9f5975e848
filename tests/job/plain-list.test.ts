import { describe, expect, test } from 'vitest';
import { tableOfList } from '../../src/job/plain-list.ts';

const rowsOf = (text: string) => tableOfList(text)?.split('\n').slice(1);

describe('a list that people type', () => {
  test('is cut behind its designators', () => {
    const list = [
      'C1 10uF 25V electrolytic',
      'C2, C3: 4,7 µF, 63 V',
      'C4 to C6 = 100n',
      'C7-9 C0G 22p',
      'R1 - 4k7',
      'U1 TL072',
    ];
    expect(rowsOf(list.join('\r\n\r\n'))).toEqual([
      'C1\t10uF 25V electrolytic',
      'C2, C3\t4,7 µF, 63 V',
      'C4 to C6\t100n',
      'C7-9\tC0G 22p',
      'R1\t4k7',
      'U1\tTL072',
    ]);
  });

  test('keeps a line that is none', () => {
    expect(rowsOf('Parts of the card\nC1 10uF\nC2 22n\nR1 10k')?.[0]).toBe('\tParts of the card');
  });

  test.each([
    ['C1,10uF,25V\nC2,22n,63V'],
    ['C1, 10uF, 25V\nC2, 22n, 63V'],
    ['C1 main;10uF\nC2 main;22n'],
    ['C1\nC2\nC3'],
    ['C1 C2\nC3-C5'],
    ['10uF 25V\n22n 63V'],
    ['C1 10uF'],
    ['TL072 dual\nLM317 regulator of the long kind\nand so on\nand on'],
  ])('is none: %j', (text) => {
    expect(tableOfList(text)).toBeUndefined();
  });
});
