import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { n, p, u } from './cases.ts';
import { catalogue } from './tables.ts';

type Case = [text: string, farads: number, volts?: number | undefined, hints?: Hints];

/**
 * Soviet series from before the numbered ones, which print picofarads as they are: common practice, no
 * source; the group letters of mica from memory.
 */
const soviet: Case[] = [
  ['СГМ-3 470', 470 * p],
  ['910 ±2% СГМ', 910 * p],
  ['КСО-1 270 250В Г', 270 * p, 250],
  ['КСО-5 Г 4700 500В', 4.7 * n, 500],
  ['КСО-11 Б 2200 2,5кВ', 2.2 * n, 2500],
  ['КД-1 М47 330', 330 * p],
  ['ПСО 510 500В', 510 * p, 500],
  ['ПМ-1 470', 470 * p],
  // The numbered series that followed them count zeros as well.
  ['К10-17 104', 100 * n],
];

/**
 * The older Czechoslovak system counts picofarads: j for one, k for a thousand, M for a million, G for a
 * thousand million (nf.duseknet.com, table of the older system; eluc.ikap.cz has 20 M and 2.2 G for it).
 */
const czech: Case[] = [
  ['4j7', 4.7 * p],
  ['M1/250', 100 * n, 250],
  ['M22 K 250V', 220 * n, 250],
  ['M1 160V', 100 * n, 160],
  ['5M 350', 5 * u, 350],
  ['2G2 16V', 2200 * u, 16],
  ['22j', 22 * p, undefined, { origin: 'czech' }],
  ['20M 12V', 20 * u, 12, { origin: 'czech' }],
  ['G5 15V', 500 * u, 15, { origin: 'czech' }],
  // From about 1970 on they bear what others bear.
  ['100n', 100 * n, undefined, { origin: 'czech' }],
  ['4n7 K', 4.7 * n, undefined, { origin: 'czech' }],
];

const japanese: Case[] = [
  ['104', 100 * n, undefined, { origin: 'japanese' }],
  ['2A474J', 470 * n, 100, { origin: 'japanese' }],
];

describe('values as those who made the part write them', () => {
  test.each([...soviet, ...czech, ...japanese])('%s', (text, farads, volts, hints) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best?.capacitance?.typ).toBeCloseTo(farads, 15);
    expect(best?.ratedVoltage?.typ).toBe(volts);
    expect(best?.notUnderstood).toEqual([]);
  });
});
