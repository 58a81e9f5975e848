import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { n, p, u } from './cases.ts';
import { catalogue } from './tables.ts';
import { told, wanted, type Told } from './told.ts';

// Typed as people read them off a part; what each means is common practice, no source.
describe('what a technician reads off a board', () => {
  test.each<[text: string, hints: Hints, told: Told]>([
    // An E for the point or for ohms, as a good many makers of wirewound and metal film parts print.
    ['270E', {}, { r: 270 }],
    ['12E', {}, { r: 12 }],
    ['1E5', {}, { r: 1.5 }],
    ['4E7', {}, { r: 4.7 }],
    ['100E J', {}, { r: 100, within: 0.05 }],
    ['100EJ', {}, { r: 100, within: 0.05 }],
    ['5W 10E', {}, { r: 10, watts: 5 }],
    // A letter for the voltage of a tantalum chip stays one behind a code.
    ['107E', {}, { c: 100 * u, volts: 25, kind: 'dc', type: 'ta-mno2-solid' }],
    ['226E', {}, { c: 22 * u, volts: 25, type: 'ta-mno2-solid' }],
    // Behind a letter for the point E is the half per cent of few films, and R no unit.
    ['1U0E', {}, { c: u, within: 0.005 }],
    // A tolerance in picofarads without its unit, beside a few of them.
    ['5.6 ±.25 NPO', {}, { c: 5.6 * p, withinF: 0.25 * p }],
    ['3.3 +-.5 COG', {}, { c: 3.3 * p, withinF: 0.5 * p }],
    ['4,7 ±0,25', {}, { c: 4.7 * p, withinF: 0.25 * p }],
    // It is in per cent beside more of them, and may be either beside an R.
    ['47p ±.5', {}, { c: 47 * p, within: 0.005 }],
    ['1R0 ±.5', {}, { c: p, withinF: 0.5 * p, sure: 'possible' }],
    ['8.2pF ±0.5', {}, { c: 8.2 * p, withinF: 0.5 * p }],
    ['5p6 ±0.25', {}, { c: 5.6 * p, withinF: 0.25 * p }],
    // A value, its per cents and its volts, with gaps between.
    ['0,68 10 250', {}, { c: 680 * n, within: 0.1, volts: 250 }],
    ['0.1 20 400', {}, { c: 100 * n, within: 0.2, volts: 400 }],
    // What stands behind the value is its usual voltage rather than a date.
    ['50/30 350', {}, { sections: [50 * u, 30 * u], volts: 350 }],
    // In the number of a military part K is ten per cent, and figures are a code.
    ['CSR13E106KP', {}, { c: 10 * u, within: 0.1, volts: 20, type: 'ta-mno2-solid' }],
    ['CS13BF226K', {}, { c: 22 * u, within: 0.1 }],
    ['RC20GF472K', {}, { r: 4700, within: 0.1, watts: 0.5, sure: 'sure' }],
    ['RCR20G225KS', {}, { r: 2.2e6, within: 0.1, watts: 0.5, sure: 'sure' }],
    ['CM05FD510JO3', {}, { c: 51 * p, within: 0.05 }],
    ['CM06FD431J03', {}, { c: 430 * p, within: 0.05 }],
    // Letters of tolerances behind thousands of ohms; pots seldom bear F or G.
    ['47KG', {}, { r: 47e3, within: 0.02 }],
    ['470KF', {}, { r: 470e3, within: 0.01 }],
    ['10KF', {}, { r: 10e3, within: 0.01 }],
    ['5R6 G', {}, { r: 5.6, within: 0.02 }],
    ['10MJ', {}, { r: 10e6, within: 0.05 }],
    // What is no capacitor nor resistor of a fixed value says so.
    ['NTC 10K', {}, { r: 10e3 }],
    ['10K NTC', {}, { r: 10e3 }],
    ['NTC 5 ohm', {}, { r: 5 }],
    ['PTC 33R', {}, { r: 33 }],
    ['4MHZ', {}, { other: /frequency/u }],
    ['100 KHZ', {}, { other: /frequency/u }],
    ['1.6AT', {}, { other: /fuse/u }],
    ['500mA F', {}, { other: /fuse/u }],
    ['T 1A', {}, { other: /fuse/u }],
    ['T2.5A 250V', {}, { other: /fuse/u, volts: 250 }],
    ['1A SB', {}, { other: /fuse/u }],
    ['10W', {}, { watts: 10, other: /power/u }],
    ['5W', {}, { watts: 5, other: /power/u }],
    ['10 W', {}, { watts: 10, other: /power/u }],
    ['0.5W', {}, { watts: 0.5, other: /power/u }],
    ['0,6 W', {}, { watts: 0.6, other: /power/u }],
    ['1/4W', {}, { watts: 0.25, other: /power/u }],
    ['100W', {}, { watts: 100, other: /power/u }],
    ['10W 100V', {}, { watts: 10, volts: 100, other: /power/u }],
    // Behind a code, and on what is said to be a capacitor, it is a tolerance all the same.
    ['104W', {}, { c: 100 * n, within: 2 }],
    ['10W', { kind: 'capacitor' }, { c: 10 * p, within: 2 }],
    // Designators of other parts before what is printed on them.
    ['L3 100uH', {}, { other: /inductance/u }],
    ['F1 T1A', {}, { other: /fuse/u }],
    ['X1 4MHz', {}, { other: /frequency/u }],
    ['LA1 12V 50mA', {}, { other: /current/u, volts: 12 }],
    ['LP1 12V 2.2W', {}, { other: /power/u, volts: 12, watts: 2.2 }],
    // Watts as a fraction, or behind a gap, without their unit.
    ['CF 1/4 4K7', {}, { r: 4700, watts: 0.25 }],
    // Soviet resistors, with a point or a comma in the watts, and with the letter for the point.
    ['МЛТ-0.25 К47', {}, { r: 470, watts: 0.25 }],
    ['МЛТ-0,25 К47', {}, { r: 470, watts: 0.25 }],
    ['МЛТ-0.5 10к', {}, { r: 10e3, watts: 0.5 }],
    ['С2-23 0,125 1к', {}, { r: 1000, watts: 0.125 }],
    ['С2-23-0,25 4к7', {}, { r: 4700, watts: 0.25 }],
    ['ПЭВ-10 100', {}, { r: 100, watts: 10 }],
    // A large value beside a few volts is one of an electrolytic.
    ['1000M 25V', {}, { c: 1000 * u, within: 0.2, volts: 25 }],
    ['1000 - 25', {}, { c: 1000 * u, volts: 25 }],
    ['2500 40V', {}, { c: 2500 * u, volts: 40 }],
    ['6R8 10V', {}, { c: 6.8 * u, volts: 10 }],
    // The voltage of a test is none to work at.
    ['0,1 MF 1500 V Prüfspg', {}, { c: 100 * n }],
    ['0,1 µF Prüfspg. 1500 V', {}, { c: 100 * n }],
    ['0,25µF/250V- 750V-', {}, { c: 250 * n, volts: 250 }],
    ['0,5 MF 160 V Prüfsp. 480 V', {}, { c: 500 * n, volts: 160 }],
    ['.02 mfd. 600 volts D.C. working', {}, { c: 20 * n, volts: 600 }],
    ['.006 M.F. 1600 V', {}, { c: 6 * n, volts: 1600 }],
    // Cans with a voltage for each section, and with the sign before its value.
    [
      '40/20/20 MFD 450/450/25V',
      {},
      { sections: [40 * u, 20 * u, 20 * u], sectionVolts: [450, 450, 25] },
    ],
    // Double-layer parts, in farads.
    ['5.5V 0.1F', {}, { c: 0.1, volts: 5.5, sure: 'likely' }],
    ['5.5V 1F supercap', {}, { c: 1, volts: 5.5, type: 'double-layer-backup' }],
    ['EDLC 0.22F', {}, { c: 0.22, type: 'double-layer-backup', sure: 'possible' }],
    ['К58-3 0,47Ф 5,5В', {}, { c: 0.47, volts: 5.5, type: 'double-layer-backup' }],
    // Slips of who types: a small l for 1, a capital O for a nought before the point.
    ['O.1 uF 630 v', {}, { c: 100 * n, volts: 630 }],
    // Standards and words without a meaning for the value.
    ['0,1µF X2 MKP 275VAC 40/100/21', {}, { c: 100 * n, volts: 275, type: 'film-x2' }],
    ['0,1µF MKP 275VAC 40/100/21', {}, { c: 100 * n, volts: 275, type: 'pp-metallized' }],
    ['MP0 33', {}, { c: 33 * p, type: 'ceramic-c0g' }],
    ['47/63 IEC 40/085/56', {}, { c: 47 * u, volts: 63 }],
    ['100K A taper', {}, { r: 100e3, taper: 'logarithmic' }],
    ['202 trim', {}, { r: 2000 }],
    ['CHR09A1MA105K', {}, { c: u, within: 0.1 }],
    ['MFR4 10K 1%', {}, { r: 10e3, within: 0.01 }],
    // A capital N for nano before the letter of a tolerance that is often met.
    ['47NJ63', {}, { c: 47 * n, within: 0.05, volts: 63 }],
    ['22NK100', {}, { c: 22 * n, within: 0.1, volts: 100 }],
    ['10NK', {}, { c: 10 * n, within: 0.1 }],
    ['100NJ', {}, { c: 100 * n, within: 0.05 }],
    ['101N', {}, { c: 100 * p, within: 0.3 }],
    // What follows the tolerance of a metal film part says how far heat moves it; it is no date.
    ['2K21 1% T2', {}, { r: 2210, within: 0.01 }],
    ['10K0 F T9', {}, { r: 10e3, within: 0.01 }],
    ['50 ohm 50W ww', {}, { r: 50, watts: 50 }],
    ['22u 25 bp', {}, { c: 22 * u, volts: 25, type: 'al-electrolytic-bipolar' }],
    ['10u 16V ta', {}, { c: 10 * u, volts: 16, type: 'ta-mno2-solid' }],
    // Styles of film resistors, with the value behind.
    ['RD25 4.7K', {}, { r: 4700, watts: 0.25 }],
    ['CMF55 10K 1%', {}, { r: 10e3, within: 0.01, watts: 0.125 }],
    ['CCF55 1002F', {}, { r: 10e3, within: 0.01, watts: 0.25 }],
    ['MF25 100R', {}, { r: 100, watts: 0.25 }],
    ['H8 10K', {}, { r: 10e3 }],
    // A K or M among the figures with a tolerance behind, and nothing else, is of a resistor.
    ['6K8 2%', {}, { r: 6800, within: 0.02, sure: 'likely' }],
    ['4K7J', {}, { r: 4700, within: 0.05, sure: 'likely' }],
    ['4K7 K', {}, { r: 4700, within: 0.1 }],
    ['270 K 5%', {}, { r: 270e3, within: 0.05 }],
    ['100R 6W K', {}, { r: 100, watts: 6, within: 0.1 }],
    ['0R47 2W5', {}, { r: 0.47, watts: 2.5 }],
    // Cans whose sections a dash or a plus joins, with a stroke before their volts, and with the surge.
    ['8-16/500', {}, { sections: [8 * u, 16 * u], volts: 500 }],
    ['32-32/450', {}, { sections: [32 * u, 32 * u], volts: 450 }],
    ['16 + 16 450/525', {}, { sections: [16 * u, 16 * u], volts: 450 }],
    ['50-350', {}, { c: 50 * u, volts: 350 }],
    ['8-450', {}, { c: 8 * u, volts: 450 }],
    ['10-40', {}, { c: 25 * p }],
    // The letter of 35 volts behind the code of a tantalum chip, where no part is made for so many volts.
    ['226V', {}, { c: 22 * u, volts: 35, type: 'ta-mno2-solid' }],
    ['475V', {}, { volts: 475 }],
    ['400V', {}, { volts: 400 }],
    ['315V', {}, { volts: 315 }],
    ['1000 µF 315V', {}, { c: 1000 * u, volts: 315 }],
    ['104K 315V', {}, { c: 100 * n, within: 0.1, volts: 315 }],
    // Bare behind the volts of an electrolytic it is the highest temperature, and no date.
    ['100uF 35V 105', {}, { c: 100 * u, volts: 35 }],
    ['22uF 63V 85', {}, { c: 22 * u, volts: 63 }],
    ['470 25V (M) 85', {}, { c: 470 * u, within: 0.2, volts: 25 }],
    ['22uF 63V 8512', {}, { c: 22 * u, volts: 63, date: '1985-W12' }],
    ['10uF N/P 50V', {}, { c: 10 * u, volts: 50, type: 'al-electrolytic-bipolar' }],
    // Two figures and a letter that capacitors seldom bear may be of a chip, and one is no sure value.
    ['1H', {}, { c: u, within: 0.03, sure: 'possible' }],
    ['33B', {}, { c: 33 * p, sure: 'possible' }],
    ['10B', {}, { c: 10 * p, sure: 'possible' }],
    // Thousands of picofarads in words; a filter without the unit of its smaller two.
    ['5K pF', {}, { c: 5 * n }],
    ['10 k pF 500V', {}, { c: 10 * n, volts: 500 }],
    ['0,1+2x2500 250~', {}, { sections: [100 * n, 2.5 * n, 2.5 * n], volts: 250, kind: 'ac' }],
    ['1500J 50', {}, { c: 1.5 * n, within: 0.05, volts: 50 }],
    // Links without a resistance.
    ['0R0', {}, { r: 0 }],
    ['0R', {}, { r: 0 }],
    ['0 ohm', {}, { r: 0 }],
    ['0Ω', {}, { r: 0 }],
    // As people type it: a small r for ohms, units in words, and the unit once more behind its letter.
    ['100r', {}, { r: 100 }],
    ['100 r', {}, { r: 100 }],
    ['4r7', {}, { r: 4.7 }],
    ['0r22', {}, { r: 0.22 }],
    ['r22 5w', {}, { r: 0.22, watts: 5 }],
    ['5w 4r7', {}, { r: 4.7, watts: 5 }],
    ['10 kilohm', {}, { r: 10e3 }],
    ['10kilo', {}, { r: 10e3 }],
    ['4k7 ohm', {}, { r: 4700 }],
    ['4R7 Ω 5W', {}, { r: 4.7, watts: 5 }],
    ['5 nano', {}, { c: 5 * n }],
    ['47 pico', {}, { c: 47 * p }],
    ['470 micro', {}, { c: 470 * u }],
    ['10 k', {}, { r: 10e3 }],
    ['4,7 k', {}, { r: 4700 }],
    ['4.7 K', {}, { r: 4700 }],
    // A word before the value, such as a maker's, leaves it what it is by itself.
    ['somebody 10k', {}, { r: 10e3, lost: ['somebody'] }],
    ['some-body 470K 10%', {}, { r: 470e3, within: 0.1, lost: ['some', 'body'] }],
    ['somebody 100KF', {}, { r: 100e3, within: 0.01, lost: ['somebody'] }],
    // European films of foil bear their picofarads as they stand, and four figures of volts are no date.
    ['FKP1 2200 1250', {}, { c: 2.2 * n, volts: 1250, type: 'pp-film-foil', sure: 'likely' }],
    ['KS 4700 1%', {}, { c: 4.7 * n, within: 0.01, type: 'ps-film-foil', sure: 'sure' }],
    ['KC 1000 63', {}, { c: n, volts: 63, sure: 'sure' }],
    ['KP 1836 680', {}, { c: 680 * p, sure: 'likely' }],
    ['FKC 1000 160', {}, { c: n, volts: 160, sure: 'sure' }],
    ['.22R', {}, { r: 0.22, sure: 'sure' }],
    // Thousands or a tolerance: where nothing else is printed, nobody knows.
    ['27K', {}, { c: 27 * p, within: 0.1, sure: 'possible' }],
    ['10 K', {}, { c: 10 * p, within: 0.1, sure: 'possible' }],
    ['10M', {}, { c: 10 * p, within: 0.2, sure: 'possible' }],
  ])('%j with %j', (text, hints, asked) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best && told(best, asked)).toEqual(wanted(asked));
  });

  test.each(['10W', '10 W', '5W', '0.5W', '1/4W', '1/4 W', '47w', '10 watts'])(
    'no reading of %j alone is a capacitance',
    (text) => {
      const readings = readMarking(catalogue, text);
      expect(readings.map(({ power }) => power !== undefined)).toContain(true);
      expect(readings.flatMap(({ capacitance }) => capacitance ?? [])).toEqual([]);
    },
  );
});
