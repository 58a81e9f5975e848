import type { Hints } from '../../../src/engine/markings/index.ts';
import { n, p, u, type Wanted } from './cases.ts';

const none: string[] = [];

/** Odd markings as they lie on a bench, and what the trade takes them for. */
export const benchCases: [string, Hints, Wanted][] = [
  // A nought before the R is of resistors.
  ['0R22', {}, { r: 0.22 }],
  // Tantalum chips bear a letter for the voltage behind the figures.
  ['106A', {}, { c: 10 * u, volts: 10, types: ['ta-mno2-solid'] }],
  ['107A', {}, { c: 100 * u, volts: 10, types: ['ta-mno2-solid'] }],
  ['226C', { body: 'tantalum' }, { c: 22 * u, volts: 16 }],
  // Two numbers are the microfarads and volts of a small polar part, not a date.
  ['10 16', {}, { c: 10 * u, volts: 16, lost: none }],
  ['22 6', {}, { c: 22 * u, volts: 6, lost: none }],
  ['47 16V', {}, { c: 47 * u, volts: 16 }],
  ['25/25', {}, { c: 25 * u, volts: 25, lost: none }],
  // A comma or a point before three noughts sets thousands apart.
  ['10,000 pF', {}, { c: 10 * n }],
  ['1,500 pF', {}, { c: 1.5 * n }],
  ['10.000 pF', {}, { c: 10 * n }],
  // Two classes of mains duty, each with its voltage; the lower one holds for both.
  [
    '222M\nX1 400\nY1 250',
    {},
    {
      c: 2.2 * n,
      safety: 'X1/Y1',
      volts: 250,
      kind: 'ac',
      types: ['ceramic-y-safety'],
      lost: none,
    },
  ],
  ['KX 472M X1 440 Y2 300', {}, { c: 4.7 * n, safety: 'X1/Y2', volts: 300, lost: ['KX'] }],
  ['0.1 X2 275', {}, { c: 100 * n, safety: 'X2', volts: 275, kind: 'ac', lost: none }],
  ['1000 pF GMV', {}, { c: n, tolerance: [0, 1, 'fraction'], lost: none }],
  ['.001 GMV', {}, { c: n, tolerance: [0, 1, 'fraction'], lost: none }],
  // Cans of several sections with strokes between them.
  ['8-8-450', {}, { sections: [8 * u, 8 * u], lost: none }],
  ['20-20-20/350', {}, { sections: [20 * u, 20 * u, 20 * u], lost: none }],
  ['40-20-20 450V', {}, { sections: [40 * u, 20 * u, 20 * u], lost: none }],
  ['16+16', {}, { sections: [16 * u, 16 * u], lost: none }],
  ['2x50 uF 350V', {}, { sections: [50 * u, 50 * u], lost: none }],
  // Styles and specifications of the American military.
  ['DM15 471J', {}, { c: 470 * p, types: ['silvered-mica'], lost: none }],
  ['M39014/01-1553', {}, { types: ['ceramic-x7r'], lost: none }],
  ['CKR05BX102KR', {}, { c: n, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['RL07S103J', {}, { r: 10e3, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['RW79U1R00F', {}, { r: 1, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  ['RNC55H1002FS', {}, { r: 10e3, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
];
