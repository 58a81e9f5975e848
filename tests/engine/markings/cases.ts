import type { Hints, Reading } from '../../../src/engine/markings/index.ts';

/** What a case expects of the best reading; what it leaves out is not looked at. */
export interface Wanted {
  c?: number;
  /** Values of several sections, F. */
  sections?: number[];
  r?: number;
  tolerance?: [number, number, 'fraction' | 'F'];
  volts?: number;
  kind?: 'dc' | 'ac';
  code?: string;
  types?: string[];
  sure?: Reading['sure'];
  date?: string;
  safety?: string;
  lost?: string[];
}

const none: string[] = [];
export const p = 1e-12;
export const n = 1e-9;
export const u = 1e-6;

/** Markings of our own making, with what is known of the part and what the best reading is. */
export const cases: [string, Hints, Wanted][] = [
  ['2x50uF 350V', {}, { sections: [50 * u, 50 * u], volts: 350, lost: none }],
  ['CBB22 104J 630V', {}, { c: 100 * n, volts: 630, sure: 'sure' }],
  ['33pKL', {}, { c: 33 * p, tolerance: [0.1, 0.1, 'fraction'], code: 'L' }],
  ['15пФ', {}, { c: 15 * p }],
  ['3Н3В', {}, { c: 3.3 * n, tolerance: [0.2, 0.2, 'fraction'] }],
  ['1М5С', {}, { c: 1.5 * u, tolerance: [0.1, 0.1, 'fraction'] }],
  ['103M BRANDLESS 8812', {}, { c: 10 * n, date: '1988-W12', lost: ['BRANDLESS'] }],
  [
    '103M 1KV Z5U',
    {},
    {
      c: 10 * n,
      tolerance: [0.2, 0.2, 'fraction'],
      volts: 1000,
      code: 'Z5U',
      types: ['ceramic-z5u'],
      sure: 'sure',
      lost: none,
    },
  ],
  [
    '103m 1kv z5u',
    {},
    {
      c: 10 * n,
      tolerance: [0.2, 0.2, 'fraction'],
      volts: 1000,
      code: 'Z5U',
      sure: 'sure',
      lost: none,
    },
  ],
  ['473K', {}, { c: 47 * n, tolerance: [0.1, 0.1, 'fraction'], sure: 'sure' }],
  [
    '2A474J',
    {},
    { c: 470 * n, tolerance: [0.05, 0.05, 'fraction'], volts: 100, kind: 'dc', sure: 'sure' },
  ],
  ['2a474j', {}, { c: 470 * n, tolerance: [0.05, 0.05, 'fraction'], volts: 100 }],
  ['.1K250', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 250 }],
  ['.05 mfd 400V', {}, { c: 50 * n, volts: 400, sure: 'sure' }],
  ['0.01MFD 600WVDC', {}, { c: 10 * n, volts: 600, kind: 'dc', sure: 'sure' }],
  ['4n7', {}, { c: 4.7 * n, lost: none }],
  ['4,7 nF', {}, { c: 4.7 * n, sure: 'sure' }],
  ['47u 16V', {}, { c: 47 * u, volts: 16 }],
  [
    '1u0 K 100-',
    {},
    { c: u, tolerance: [0.1, 0.1, 'fraction'], volts: 100, kind: 'dc', lost: none },
  ],
  [
    'MKP 0u22 M 275~ X2',
    {},
    {
      c: 220 * n,
      volts: 275,
      kind: 'ac',
      safety: 'X2',
      types: ['film-x2', 'pp-metallized'],
      sure: 'sure',
    },
  ],
  ['CH 1H 101 J', {}, { c: 100 * p, volts: 50, code: 'CH', types: ['ceramic-c0g'] }],
  [
    '47JN',
    {},
    { c: 47 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N', types: ['ceramic-class1-other'] },
  ],
  [
    '470JN',
    { origin: 'british', body: 'ceramic' },
    { c: 470 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N' },
  ],
  ['470JN', {}, { c: 470 * p, tolerance: [0.05, 0.05, 'fraction'], code: 'N' }],
  ['6.8DC', {}, { c: 6.8 * p, tolerance: [0.5 * p, 0.5 * p, 'F'], code: 'C' }],
  ['1KV 102K', {}, { c: n, tolerance: [0.1, 0.1, 'fraction'], volts: 1000, sure: 'sure' }],
  ['250 mmfd', {}, { c: 250 * p, sure: 'sure' }],
  ['500 cm', {}, { c: 556.325 * p, sure: 'sure' }],
  ['2 jar', {}, { c: 2222 * p }],
  ['n47', {}, { c: 470 * p }],
  ['p33', {}, { c: 0.33 * p }],
  ['4R7', { body: 'ceramic' }, { c: 4.7 * p }],
  ['2R2', { body: 'film' }, { c: 2.2 * u }],
  ['15П', {}, { c: 15 * p }],
  ['М15', {}, { c: 150 * n }],
  ['10K', { kind: 'resistor' }, { r: 10000 }],
  ['10 000 pF', {}, { c: 10 * n, sure: 'sure', lost: none }],
  ['100 mmfd', {}, { c: 100 * p, sure: 'sure' }],
  ['1 MFD 50WVDC', {}, { c: u, volts: 50, kind: 'dc', sure: 'sure' }],
  [
    '0.1uF ±10% 100V',
    {},
    { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 100, lost: none },
  ],
  [
    '10 µF -20+80% 63 V',
    {},
    { c: 10 * u, tolerance: [0.2, 0.8, 'fraction'], volts: 63, lost: none },
  ],
  ['3.3 pF ±0.5 pF', {}, { c: 3.3 * p, tolerance: [0.5 * p, 0.5 * p, 'F'], lost: none }],
  ['104J 8923', {}, { c: 100 * n, date: '1989-W23', lost: none }],
  ['NONAME\n104K\n250V', {}, { c: 100 * n, volts: 250, lost: ['NONAME'] }],
  ['350/500V 8uF', {}, { c: 8 * u, volts: 350, lost: none }],
  ['0.1 uF 400V 1200V TEST', {}, { c: 100 * n, volts: 400, lost: none }],
  ['0,1/250', {}, { c: 100 * n, volts: 250, lost: none }],
  ['103Z', {}, { c: 10 * n, tolerance: [0.2, 0.8, 'fraction'] }],
  [
    '4p7C NP0',
    {},
    { c: 4.7 * p, tolerance: [0.25 * p, 0.25 * p, 'F'], code: 'NP0', types: ['ceramic-c0g'] },
  ],
  ['100J N750', {}, { c: 10 * p, code: 'N750', types: ['ceramic-class1-other'] }],
  ['BP 10uF 50V', {}, { c: 10 * u, volts: 50, types: ['al-electrolytic-bipolar'] }],
  ['К73-17 0,1мкФ 250В', {}, { c: 100 * n, volts: 250, types: ['pet-metallized'], lost: none }],
  ['222M Y2 250~', {}, { c: 2.2 * n, safety: 'Y2', kind: 'ac' }],
  ['472M X1Y2', {}, { c: 4.7 * n, safety: 'X1/Y2', types: ['ceramic-y-safety'] }],
  ['F103Z', {}, { c: 10 * n, code: 'F', types: ['ceramic-y5v'] }],
  ['104 X7R 50V', {}, { c: 100 * n, volts: 50, types: ['ceramic-x7r'] }],
  ['22/16', {}, { c: 22 * u, volts: 16 }],
  ['10/16V', {}, { c: 10 * u, volts: 16 }],
  ['100/25', {}, { c: 100 * u, volts: 25 }],
  ['104k', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'] }],
  ['680p 500V', {}, { c: 680 * p, volts: 500 }],
  ['16+16µF 350V', {}, { sections: [16 * u, 16 * u], volts: 350, lost: none }],
  ['3300p K 630-', {}, { c: 3.3 * n, volts: 630, tolerance: [0.1, 0.1, 'fraction'] }],
  [
    '56R2Z Z5U',
    { body: 'ceramic' },
    { c: 56.2 * p, tolerance: [0.2, 0.8, 'fraction'], code: 'Z5U' },
  ],
  ['16P2K', { body: 'ceramic' }, { c: 16.2 * p, tolerance: [0.1, 0.1, 'fraction'] }],
  ['2P8', {}, { c: 2.8 * p }],
  ['4n75', { body: 'ceramic' }, { c: 4.75 * n }],
  ['.0523U', { body: 'film' }, { c: 52.3 * n }],
  ['100N750', {}, { c: 10 * p, code: 'N750' }],
  ['8 450V', { body: 'aluminium' }, { c: 8 * u, volts: 450, lost: none }],
  ['2/16', { body: 'aluminium' }, { c: 2 * u, volts: 16, lost: none }],
  ['m18 25V', { body: 'ceramic', origin: 'soviet' }, { c: 180 * n, volts: 25 }],
  ['470 25V', { body: 'ceramic', origin: 'soviet' }, { c: 47 * p, volts: 25 }],
  ['2P15', { body: 'mica' }, { c: 2.15 * p }],
];
