import { describe, expect, test } from 'vitest';
import { tableOfList } from '../../../src/job/list/plain-list.ts';

const rowsOf = (text: string) => tableOfList(text)?.split('\n');

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
      'Designators\tMarking',
      'C1\t10uF 25V electrolytic',
      'C2, C3\t4,7 µF, 63 V',
      'C4 to C6\t100n',
      'C7-9\tC0G 22p',
      'R1\t4k7',
      'U1\tTL072',
    ]);
  });

  test.each([
    // A list may have one line.
    ['C1 100n 63V', ['Designators\tMarking', 'C1\t100n 63V']],
    ['C1-C4 100uF 25V', ['Designators\tMarking', 'C1-C4\t100uF 25V']],
    // Letters of designators may be two, and their numbers of three figures.
    ['IC101 TL072\nTR102 BC109', ['Designators\tMarking', 'IC101\tTL072', 'TR102\tBC109']],
    // A dash with gaps before a value is no range, and a stroke may leave the letters off.
    ['C101, C201 - 4.7uF 25V', ['Designators\tMarking', 'C101, C201\t4.7uF 25V']],
    ['C5 - 10 uF 25V', ['Designators\tMarking', 'C5\t10 uF 25V']],
    ['C1 - 4: 10uF 25V', ['Designators\tMarking', 'C1 - 4\t10uF 25V']],
    ['C102/202 = 47µ/10V', ['Designators\tMarking', 'C102, 202\t47µ/10V']],
    // Quotation marks within a line are no sign of a table.
    [
      'C1 2uF 600V oil "bathtub"\nLS1 4" speaker',
      ['Designators\tMarking', 'C1\t2uF 600V oil "bathtub"', 'LS1\t4" speaker'],
    ],
    // What heads the lines below it is no part; what has a value may be one.
    [
      'Parts of the card\nC1 10uF\nCard 2:\nC2 22n',
      [
        'Designators\tMarking\tNote',
        '\t\tParts of the card',
        'C1\t10uF\t',
        '\t\tCard 2:',
        'C2\t22n\t',
      ],
    ],
    [
      '100n 63V\nC1 10uF\nC2 22n\nR1 10k',
      ['Designators\tMarking', '\t100n 63V', 'C1\t10uF', 'C2\t22n', 'R1\t10k'],
    ],
    // What names the list above it is no part, be there a year or volts in it.
    [
      'Guitar amplifier, British, 1966\nC1 10uF\nC2 22n',
      [
        'Designators\tMarking\tNote',
        '\t\tGuitar amplifier, British, 1966',
        'C1\t10uF\t',
        'C2\t22n\t',
      ],
    ],
    [
      'Alimentatore da laboratorio 0-30V 3A\nC1 10uF\nC2 22n',
      [
        'Designators\tMarking\tNote',
        '\t\tAlimentatore da laboratorio 0-30V 3A',
        'C1\t10uF\t',
        'C2\t22n\t',
      ],
    ],
    [
      'Radio 1958\nC1 10uF\nC2 22n',
      ['Designators\tMarking\tNote', '\t\tRadio 1958', 'C1\t10uF\t', 'C2\t22n\t'],
    ],
    [
      'film capacitor 100n 63V\nC1 10uF\nC2 22n\nR1 10k',
      ['Designators\tMarking', '\tfilm capacitor 100n 63V', 'C1\t10uF', 'C2\t22n', 'R1\t10k'],
    ],
    // The next number behind a comma is one of the same letters, and a decimal is none.
    ['TR5,6 OC81', ['Designators\tMarking', 'TR5,6\tOC81']],
    ['C1,2,3 100n', ['Designators\tMarking', 'C1,2,3\t100n']],
    ['C1 2,2 µF 63V', ['Designators\tMarking', 'C1\t2,2 µF 63V']],
    // What a trimmer read before is no value of it.
    ...[
      ['RV1 10k trimmer, reads 3.2k', '10k trimmer\treads 3.2k'],
      ['RV1 100k, was at 45k', '100k\twas at 45k'],
      ['RV1 5k old reading 2.3k', '5k\told reading 2.3k'],
      ['RV1 47k preset wiper to end 12k4', '47k preset\twiper to end 12k4'],
    ].map(([text = '', row = '']): [string, string[]] => [
      text,
      ['Designators\tMarking\tNote', `RV1\t${row}`],
    ]),
    // Designators may stand last, with strokes between them, or behind signs and numbers.
    [
      '100n: C1, C3, C5\n10u 25V: C2, C4\n4k7  R1-R4\nTL072: U1',
      ['Designators\tMarking', 'C1, C3, C5\t100n', 'C2, C4\t10u 25V', 'R1-R4\t4k7', 'U1\tTL072'],
    ],
    ['R201/R202: 10k\nC1/C2 = 1n', ['Designators\tMarking', 'R201, R202\t10k', 'C1, C2\t1n']],
    [
      '- C1 100uF 25V\n* R1 10k\n2. C4 22n',
      ['Designators\tMarking', 'C1\t100uF 25V', 'R1\t10k', 'C4\t22n'],
    ],
    ['C1=100n, C2=10u/25V; R1=4k7', ['Designators\tMarking', 'C1\t100n', 'C2\t10u/25V', 'R1\t4k7']],
    // Letters of other alphabets, and of more marks than the English one has.
    ['Rö1 ECC83\nС2 100н', ['Designators\tMarking', 'Rö1\tECC83', 'С2\t100н']],
    // Lists of the first decades have a dash behind the letters.
    [
      'C-101 .01 MFD 600V\nC-102, C-103 8 MFD\nCR-101 1N1202A\nR-104: 2200 OHM',
      [
        'Designators\tMarking',
        'C-101\t.01 MFD 600V',
        'C-102, C-103\t8 MFD',
        'CR-101\t1N1202A',
        'R-104\t2200 OHM',
      ],
    ],
    // A table as Markdown has it.
    [
      '| Ref | Value |\n|-----|:-----:|\n| C1 | 100n |\n| R1 | 4k7 |',
      ['Ref\tValue', 'C1\t100n', 'R1\t4k7'],
    ],
    // Numbers of parts stand before them, and are no sections of a can.
    ['2x 100uF 25V\n3 × 10uF 63V', ['Quantity\tMarking', '2\t100uF 25V', '3\t10uF 63V']],
    ['4 pcs 10k\n12 Stk. 100n', ['Quantity\tMarking', '4\t10k', '12\t100n']],
  ] satisfies [string, string[]][])('%j', (text, rows) => {
    expect(rowsOf(text)).toEqual(rows);
  });

  test.each([
    ['C1,10uF,25V\nC2,22n,63V'],
    ['C1, 10uF, 25V\nC2, 22n, 63V'],
    ['C1 main;10uF\nC2 main;22n'],
    ['C1\nC2\nC3'],
    ['C1 C2\nC3-C5'],
    ['10uF 25V\n22n 63V'],
    ['TL072'],
    ['C1 main'],
    ['BM-2 0.01\nMLT-2 10k\nBM-2 0.02'],
    ['2x50 µF 350V\n2x32 µF 350V'],
    ['TL072 dual op amp\nNE5532 dual op amp\nBC109C transistor'],
    ['TL072 dual\nLM317 regulator of the long kind\nand so on\nand on'],
  ])('is none: %j', (text) => {
    expect(tableOfList(text)).toBeUndefined();
  });
});

test('lines of any length are read in no time', () => {
  const long = ['C1 '.repeat(200_000), `1${' '.repeat(400_000)}x`, `${'1 '.repeat(200_000)}C`];
  for (const line of long) {
    const from = performance.now();
    tableOfList(`C1 10n\n${line}\nC2 10n`);
    expect(performance.now() - from).toBeLessThan(2000);
  }
});
