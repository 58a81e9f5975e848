import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { n, p, u } from './cases.ts';
import { catalogue } from './tables.ts';
import { told, wanted, type Told } from './told.ts';

type Case = [text: string, hints: Hints, told: Told];

const check = (text: string, hints: Hints, asked: Told): void => {
  const [best] = readMarking(catalogue, text, hints);
  expect(best && told(best, asked)).toEqual(wanted(asked));
};

// Printed so on parts of 1950 to 1990, or typed off them; what each means is common practice, no source.
describe('resistors as they are printed', () => {
  test.each<Case>([
    // No resistor is made for 67 W: it is the type number of a trimmer, as others are.
    ['67W 10K', {}, { r: 10e3 }],
    ['64W 1K', {}, { r: 1e3 }],
    ['68WR20K', {}, { r: 20e3 }],
    ['89PR10K', {}, { r: 10e3 }],
    ['T7YB 100k', {}, { r: 100e3 }],
    ['83W 10R', {}, { r: 10, watts: 83, sure: 'likely' }],
    ['17W 1K5', {}, { r: 1500, watts: 17, sure: 'sure' }],
    // Watts as a fraction before ohms.
    ['1/4 4.7K', {}, { r: 4700, watts: 0.25 }],
    ['1/2 100K', {}, { r: 100e3, watts: 0.5 }],
    ['5W.1J', {}, { r: 0.1, watts: 5, within: 0.05 }],
    ['6E8', {}, { r: 6.8 }],
    ['3E9', {}, { r: 3.9 }],
    ['4K7Ω', {}, { r: 4700 }],
    ['4.7 kΏ', {}, { r: 4700 }],
    ['RH-25 10 1%', {}, { r: 10, watts: 25, within: 0.01 }],
    ['RH50 1R', {}, { r: 1, watts: 50 }],
    ['HS25 1R F', {}, { r: 1, watts: 25, within: 0.01 }],
    ['0207 10k', {}, { r: 10e3 }],
    // Styles in small letters.
    ['rn55 1k', {}, { r: 1e3, watts: 0.125 }],
    ['rwr80s1r00f', {}, { r: 1, watts: 2, within: 0.01 }],
    ['mr25 4k7', {}, { r: 4700, watts: 0.4 }],
    ['rc07gf221j', {}, { r: 220, watts: 0.25, within: 0.05 }],
    // A small k is of ohms behind a word that says nothing, too.
    ['CP 500k', {}, { r: 500e3, lost: ['CP'] }],
    ['EVM 10k', {}, { r: 10e3, lost: ['EVM'] }],
    ['100k/ln', {}, { r: 100e3, lost: ['ln'] }],
    // Networks by their type numbers.
    ['4116R-1-102', {}, { r: 1e3 }],
    ['4610X-101-472', {}, { r: 4700 }],
    ['898-1-102', {}, { r: 1e3 }],
  ])('%j with %j', check);
});

describe('potentiometers as they are printed', () => {
  test.each<Case>([
    // The Cyrillic letter is the taper of a potentiometer and the tolerance of a resistor.
    ['СП3-4аМ 100к В', {}, { r: 100e3, taper: 'logarithmic' }],
    ['СП-1 470к В', {}, { r: 470e3, taper: 'logarithmic' }],
    ['СП3-4аМ 100к А', {}, { r: 100e3, taper: 'linear' }],
    ['МЛТ-0,5 100к В', {}, { r: 100e3, watts: 0.5, within: 0.2 }],
    ['СП5-3В 1к ±5%', {}, { r: 1e3, within: 0.05 }],
    ['СП3-19б 100к', {}, { r: 100e3 }],
    ['СП3-33-32 100к В', {}, { r: 100e3, taper: 'logarithmic' }],
    ['С5-37В-5 51 Ом', {}, { r: 51 }],
    ['С2-10-0,5 100 Ом', {}, { r: 100 }],
    // Tapers behind a stroke.
    ['TP 160 25k/N', {}, { r: 25e3, taper: 'linear' }],
    ['TP 280 M1/G', {}, { r: 100e3, taper: 'logarithmic' }],
  ])('%j with %j', check);
});

describe('cans and bathtubs with several sections', () => {
  test.each<Case>([
    ['16x16 350/385', {}, { sections: [16 * u, 16 * u], volts: 350, sectionVolts: [350, 350] }],
    ['50x50 450', {}, { sections: [50 * u, 50 * u], volts: 450 }],
    ['2X.1 600V', {}, { sections: [100 * n, 100 * n], volts: 600 }],
    ['3X.05 400V', {}, { sections: [50 * n, 50 * n, 50 * n], volts: 400 }],
    ['0.5-0.5 600V', {}, { sections: [500 * n, 500 * n], volts: 600 }],
    ['.1-.1-.1 600V', {}, { sections: [100 * n, 100 * n, 100 * n], volts: 600 }],
    ['.1+.1 400', {}, { sections: [100 * n, 100 * n], volts: 400 }],
    ['.1/.1/.1 400V', {}, { sections: [100 * n, 100 * n, 100 * n], volts: 400 }],
    [
      '40+40+20/450,450,25',
      {},
      { sections: [40 * u, 40 * u, 20 * u], sectionVolts: [450, 450, 25] },
    ],
    ['88-108 125VAC', {}, { c: 88 * u, volts: 125, within: 108 / 88 - 1 }],
  ])('%j with %j', check);
});

describe('values, volts and what stands beside them', () => {
  test.each<Case>([
    // Letters of a series that would be a date as well.
    ['3.3uF 50V LN', {}, { c: 3.3 * u, volts: 50 }],
    ['SME 100 50', {}, { c: 100 * u, volts: 50 }],
    // A characteristic before picofarads.
    ['P120 10p', {}, { c: 10 * p }],
    ['22 p033', {}, { c: 22 * p }],
    // Volts without a word between the type and the group letter.
    ['КСО-2 500 Г 510', {}, { c: 510 * p, volts: 500 }],
    ['КСОТ-5 Б 500 5100 I', {}, { c: 5.1 * n, volts: 500, lost: ['I'] }],
    ['КСО-5 250 Б 6800 II', {}, { c: 6.8 * n, volts: 250, lost: ['II'] }],
    // A tolerance without its sign between a value with its letter and its volts.
    ['n33 2,5 630 KS', {}, { c: 330 * p, within: 0.025, volts: 630, type: 'ps-film-foil' }],
    ['n15 2,5 63', {}, { c: 150 * p, within: 0.025, volts: 63 }],
    ['1n5 1 160', {}, { c: 1.5 * n, within: 0.01, volts: 160 }],
    // Volts in Cyrillic behind a gap.
    ['К52-1 33 мк 25 В', {}, { c: 33 * u, volts: 25 }],
    ['МБМ-0,5 мкФ 160 В', {}, { c: 500 * n, volts: 160 }],
    ['К53-4А 47х6,3', {}, { c: 47 * u, volts: 6.3 }],
    // A value with the letter of its unit is not left aside for figures of a series.
    ['MKT1.60 1µ 160', {}, { c: u, volts: 160 }],
    ['100N 250', {}, { c: 100 * n, volts: 250 }],
    ['.1 M.F.D. 600', {}, { c: 100 * n, volts: 600 }],
    ['.1MFD 500 V.D.C.W.', {}, { c: 100 * n, volts: 500 }],
    ['TE 1500V .01', {}, { c: 10 * n }],
    ['0,05µF 750V≈', {}, { c: 50 * n, volts: 750, kind: 'ac' }],
    ['0.47µF M X2 310V~ 40/110/56/B', {}, { c: 470 * n, within: 0.2, volts: 310, kind: 'ac' }],
    ['SH 40/100/21 0.1 X2 250', {}, { c: 100 * n, volts: 250 }],
    // Units before their figures, as on labels.
    ['MFD 8 VOLTS 450', {}, { c: 8 * u, volts: 450 }],
    ['VOLTS 450 MFD 40', {}, { c: 40 * u, volts: 450 }],
    ['µF 10', {}, { c: 10 * u }],
    ['pF 100', {}, { c: 100 * p }],
    ['MFD .05 VOLTS 400', {}, { c: 50 * n, volts: 400 }],
    ['OHMS 500 WATTS 10', {}, { r: 500, watts: 10 }],
    // A resistor in series in one body.
    ['.1+100R 250~', {}, { c: 100 * n, volts: 250, kind: 'ac' }],
    ['0,1µF+100Ω 250V~', {}, { c: 100 * n, volts: 250, kind: 'ac' }],
    ['BR 8-450', {}, { c: 8 * u, volts: 450 }],
  ])('%j with %j', check);

  // Nobody knows what a word behind a number is a unit of.
  test.each(['10 apples', 'C1 10 apples', '47 Ohrn', '100 Philips'])(
    '%j is no more than possible',
    (text) => {
      expect(readMarking(catalogue, text)[0]?.sure).toBe('possible');
    },
  );
});
