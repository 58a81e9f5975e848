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
  // Per cents behind the letter of kilohms or megohms, which is then no tolerance.
  ['15k 1%', {}, { r: 15e3, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  ['10K 5%', {}, { r: 10e3, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['1M ±10 %', {}, { r: 1e6, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['10K 5% 100V', {}, { c: 10 * n, volts: 100 }],
  // Names of films in small letters; series of a maker of polyester films.
  ['mkt 0.47 63', {}, { c: 470 * n, volts: 63, types: ['pet-metallized'], lost: none }],
  ['X2 mkp 0.1 275', {}, { c: 100 * n, volts: 275, lost: none }],
  ['C280 0.1 250', {}, { c: 100 * n, volts: 250, types: ['pet-metallized'], lost: none }],
  // A small k before the taper of a pot, which is no current.
  ['100kA', {}, { r: 100e3, lost: none }],
  ['500kB', {}, { r: 500e3, lost: none }],
  // The tolerance behind the watts, with a gap.
  ['0R22 5W J', {}, { r: 0.22, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['10k 0.25W J', {}, { r: 10e3, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  // Ordering codes that tantalum parts bear: a series, the value, its tolerance, three figures of volts.
  ['225K035', {}, { c: 2.2 * u, volts: 35, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['6R8K035', {}, { c: 6.8 * u, volts: 35, types: ['ta-mno2-solid'], lost: none }],
  ['226M6R3', {}, { c: 22 * u, volts: 6.3, tolerance: [0.2, 0.2, 'fraction'], lost: none }],
  ['150D106X9035R2', {}, { c: 10 * u, volts: 35, tolerance: [0.1, 0.1, 'fraction'] }],
  ['150D 156X0020B2', {}, { c: 15 * u, volts: 20, tolerance: [0.2, 0.2, 'fraction'] }],
  ['196D475X9050', {}, { c: 4.7 * u, volts: 50, types: ['ta-mno2-solid'], lost: none }],
  ['T350E106K025AS', {}, { c: 10 * u, volts: 25, types: ['ta-mno2-solid'] }],
  ['T110B225K035AS', {}, { c: 2.2 * u, volts: 35, types: ['ta-mno2-solid'] }],
  ['CS13BF106K', {}, { c: 10 * u, types: ['ta-mno2-solid'], lost: none }],
  // Volts with an R for their point.
  ['220 6R3', {}, { c: 220 * u, volts: 6.3, lost: none }],
  ['100/6R3', {}, { c: 100 * u, volts: 6.3, lost: none }],
  // A peak voltage behind the rating.
  ['8mfd 475 WVDC 525 PK', {}, { c: 8 * u, volts: 475, lost: none }],
  ['32 µF/350V 550 Vs', {}, { c: 32 * u, volts: 350, lost: none }],
  ['47PK', {}, { c: 47 * p, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  // A value, its per cents and its volts, with strokes between; two signs without per cent.
  ['0,1/10/250', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 250, lost: none }],
  ['4700/2,5/63', {}, { c: 4.7 * n, tolerance: [0.025, 0.025, 'fraction'], volts: 63 }],
  ['0,22/20/100', {}, { c: 220 * n, tolerance: [0.2, 0.2, 'fraction'], volts: 100, lost: none }],
  ['10µF +50-10 25V', {}, { c: 10 * u, tolerance: [0.1, 0.5, 'fraction'], volts: 25, lost: none }],
  ['100µF 63V -25+85', {}, { c: 100 * u, volts: 63, lost: none }],
  // An R for the point with a tolerance in per cent, and nothing else, is of a resistor.
  ['1R5J', {}, { r: 1.5, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['3R3 K', {}, { r: 3.3, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['100R5F', {}, { r: 100.5, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  ['4R7C', {}, { c: 4.7 * p, lost: none }],
  ['2R2 100V', {}, { c: 2.2 * p, volts: 100, lost: none }],
  ['104K250V CBB', {}, { c: 100 * n, types: ['pp-metallized', 'pp-film-foil'], lost: none }],
  // Sizes and pitches as lists have them beside the value are no dates and no values.
  ['2512 R010', {}, { r: 0.01, lost: none }],
  ['0805 4n7', {}, { c: 4.7 * n, lost: none }],
  ['1210 22u 25V', {}, { c: 22 * u, volts: 25, lost: none }],
  // Without a value beside it a size is none.
  ['1808', {}, { c: 1.8 * p, lost: none }],
  ['104 8312', {}, { c: 100 * n, date: '1983-W12', lost: none }],
  ['470µ/25 axial', {}, { c: 470 * u, volts: 25, lost: none }],
  ['0,1µF RM 7,5', {}, { c: 100 * n, lost: none }],
  ['4n7 RM22,5 630V', {}, { c: 4.7 * n, volts: 630, lost: none }],
  // One word for waxed paper, and Cyrillic microfarads typed in Latin letters.
  ['.05/400 wax', {}, { c: 50 * n, volts: 400, types: ['paper-wax'], lost: none }],
  ['100 mkF 25 V', {}, { c: 100 * u, volts: 25, lost: none }],
  // A precise style of resistor without its watts.
  ['С2-29В 10К', {}, { r: 10e3, lost: none }],
  // Two numbers are the microfarads and volts of a small polar part, not a date.
  ['10 16', {}, { c: 10 * u, volts: 16, lost: none }],
  ['22 6', {}, { c: 22 * u, volts: 6, lost: none }],
  ['47 16V', {}, { c: 47 * u, volts: 16 }],
  ['25/25', {}, { c: 25 * u, volts: 25, lost: none }],
  // Figures and volts with a stroke between them are a polar part's, up to the volts that those have.
  ['10/63', {}, { c: 10 * u, volts: 63, lost: none }],
  ['2,2/63', {}, { c: 2.2 * u, volts: 63, lost: none }],
  ['1/100V', {}, { c: u, volts: 100, lost: none }],
  ['5 / 70', {}, { c: 5 * u, volts: 70, lost: none }],
  ['32/350', {}, { c: 32 * u, volts: 350, lost: none }],
  ['470/63', {}, { c: 470 * u, volts: 63, lost: none }],
  ['100/350', {}, { c: 100 * u, volts: 350, lost: none }],
  ['1000/25', {}, { c: 1000 * u, volts: 25, lost: none }],
  ['2200/40', {}, { c: 2200 * u, volts: 40, lost: none }],
  ['10000/63', {}, { c: 10_000 * u, volts: 63, lost: none }],
  // Above them, with a tolerance, or on what is seen or named to be a film, they are plain picofarads.
  ['1000/500', {}, { c: n, volts: 500, lost: none }],
  ['4700/400', {}, { c: 4.7 * n, volts: 400, lost: none }],
  ['1500/125 J', {}, { c: 1.5 * n, volts: 125, lost: none }],
  ['20/63', { body: 'film' }, { c: 20 * p, volts: 63, lost: none }],
  ['20/63', { body: 'tantalum' }, { c: 20 * u, volts: 63, lost: none }],
  ['KS 4700/63', {}, { c: 4.7 * n, volts: 63, types: ['ps-film-foil'], lost: none }],
  ['Elko 4700/35', {}, { c: 4700 * u, volts: 35, types: ['al-electrolytic-wet'], lost: none }],
  ['.02 MFD 600 W.V.D.C.', {}, { c: 20 * n, volts: 600, kind: 'dc', lost: none }],
  // Sections, the last of which is no voltage.
  ['20/20/20 450', {}, { sections: [20 * u, 20 * u, 20 * u], volts: 450, lost: none }],
  ['2x50/350', {}, { sections: [50 * u, 50 * u], volts: 350, lost: none }],
  ['50/50 300', {}, { sections: [50 * u, 50 * u], volts: 300, lost: none }],
  // By themselves, figures and the letter of kilohms or megohms are a resistor's.
  ['10k', {}, { r: 10e3, lost: none }],
  ['4.7k', {}, { r: 4.7e3, lost: none }],
  ['3,3K', {}, { r: 3.3e3, lost: none }],
  ['4.7M', {}, { r: 4.7e6, lost: none }],
  ['10k 500V', {}, { c: 10 * p, volts: 500 }],
  ['2.2M 63V', {}, { c: 2.2 * u, volts: 63 }],
  // A Latin H between figures is the Cyrillic letter for nano.
  ['3H3C', {}, { c: 3.3 * n }],
  // Where all letters are of the origin's own script, none is taken for a Latin one: 120 nF of 3 %.
  ['124Н', { body: 'paper', origin: 'soviet' }, { c: 124 * n }],
  ['6H8', {}, { c: 6.8 * n }],
  ['1H223J', {}, { c: 22 * n, volts: 50, tolerance: [0.05, 0.05, 'fraction'] }],
  // Film resistors of one per cent print four figures and a letter.
  ['1501F', {}, { r: 1500, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  ['5111F', {}, { r: 5110, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
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
  // Old Soviet types; what follows the figure of the type is a number of its own.
  [
    'КСО-2 500В 1000 пФ ±5%',
    {},
    { c: n, volts: 500, types: ['silvered-mica', 'mica-clamped'], lost: none },
  ],
  ['МБГО-2 4 мкФ 300В', {}, { c: 4 * u, volts: 300, types: ['metallized-paper'], lost: none }],
  ['КМ-5 М1500 1н0', {}, { c: n, code: 'М1500', lost: none }],
  // A maker's series behind the letters for the film.
  ['MKS4 0.1/250', {}, { c: 100 * n, volts: 250, types: ['pet-metallized'], lost: none }],
  ['mks4 0,1/250', {}, { c: 100 * n, volts: 250, types: ['pet-metallized'], lost: none }],
  ['mkp10 22n 630', {}, { c: 22 * n, volts: 630, types: ['pp-metallized'], lost: none }],
  ['FKP1 1000/1250', {}, { c: n, volts: 1250, types: ['pp-film-foil'], lost: none }],
  ['MKP 104K 275VAC X2', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 275 }],
  // Metallised film is not made of a few picofarads: whole numbers beside its letters are microfarads.
  ['MKP 10 250V', {}, { c: 10 * u, volts: 250, types: ['pp-metallized'], lost: none }],
  ['MKT 22 63V', {}, { c: 22 * u, volts: 63, types: ['pet-metallized'], lost: none }],
  ['MKP 4 630V', {}, { c: 4 * u, volts: 630, types: ['pp-metallized'], lost: none }],
  ['MKT 10', {}, { c: 10 * u, types: ['pet-metallized'], lost: none }],
  // Polystyrene of any age prints plain picofarads, and the code only where it ends in no nought.
  ['KS 330 63', {}, { c: 330 * p, volts: 63, types: ['ps-film-foil'], lost: none }],
  ['styroflex 470', {}, { c: 470 * p, types: ['ps-film-foil'], lost: none }],
  ['KS 331', {}, { c: 330 * p, types: ['ps-film-foil'], lost: none }],
  ['KS 33', {}, { c: 33 * p, types: ['ps-film-foil'], lost: none }],
  // Three figures about the R are of precise resistors, and a gap before the letter changes little.
  ['1R00', {}, { r: 1 }],
  // On what is known to be a capacitor such a letter is that of a capacitance.
  ['57М6', { kind: 'capacitor', origin: 'soviet' }, { c: 57.6 * u }],
  ['4R75', { kind: 'capacitor', body: 'ceramic' }, { c: 4.75 * p }],
  // A point before a figure comes before a seldom tolerance and a code of volts.
  ['2P15J CH', { body: 'ceramic' }, { c: 2.15 * p, tolerance: [0.05, 0.05, 'fraction'] }],
  // Nor has a number with a nought in front, which is a code, a unit in a letter.
  ['0150K', { body: 'ceramic' }, { c: 15 * p, tolerance: [0.1, 0.1, 'fraction'] }],
  // No form of another kind of part begins within a word of figures and letters.
  [
    '30n9D50',
    { kind: 'capacitor', body: 'film' },
    { c: 30.9 * n, tolerance: [0.005, 0.005, 'fraction'], volts: 50 },
  ],
  // Nor is a code of volts at once before three figures a value with its volts.
  ['1K750', { body: 'film' }, { c: 75 * p, volts: 80 }],
  ['56P2K', { body: 'mica' }, { c: 56.2 * p, tolerance: [0.1, 0.1, 'fraction'] }],
  ['10R0', {}, { r: 10 }],
  ['49R9', {}, { r: 49.9 }],
  ['270 K 1W', {}, { r: 270e3, lost: none }],
  ['100 n', {}, { c: 100 * n, lost: none }],
  ['22 u', {}, { c: 22 * u, lost: none }],
  ['4.7 u 63V', {}, { c: 4.7 * u, volts: 63, lost: none }],
  ['47 p', {}, { c: 47 * p, lost: none }],
  ['27 K', {}, { c: 27 * p, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['2.7 k 1/2W', {}, { r: 2700, lost: none }],
  ['1 M 1W', {}, { r: 1e6, lost: none }],
  ['27 K', { body: 'resistor' }, { r: 27e3, lost: none }],
  // A tolerance letter with its volts at once behind it, and a unit with them.
  ['15n K250', {}, { c: 15 * n, tolerance: [0.1, 0.1, 'fraction'], volts: 250, lost: none }],
  ['0.1 J400', {}, { c: 100 * n, tolerance: [0.05, 0.05, 'fraction'], volts: 400, lost: none }],
  ['1u0 K63', {}, { c: u, tolerance: [0.1, 0.1, 'fraction'], volts: 63, lost: none }],
  // A Soviet temperature code in Latin letters is no tolerance with its volts.
  ['1n M750', {}, { c: n, lost: ['M750'] }],
  ['22u35', {}, { c: 22 * u, volts: 35, lost: none }],
  ['10µ16', {}, { c: 10 * u, volts: 16, lost: none }],
  ['10µ35V', {}, { c: 10 * u, volts: 35, lost: none }],
  ['1u6', {}, { c: 1.6 * u }],
  ['4µ7', {}, { c: 4.7 * u }],
  // Two like numbers with a stroke and the volts of a supply are the sections of a can.
  ['32-32 350V', {}, { sections: [32 * u, 32 * u], lost: none }],
  ['16-16 450', {}, { sections: [16 * u, 16 * u], lost: none }],
  ['50µ+50µ 350V', {}, { sections: [50 * u, 50 * u], volts: 350, lost: none }],
  ['32+32u 350', {}, { sections: [32 * u, 32 * u], volts: 350, lost: none }],
  ['2x50u 350', {}, { sections: [50 * u, 50 * u], volts: 350, lost: none }],
  ['8u-8u 450V', {}, { sections: [8 * u, 8 * u], volts: 450, lost: none }],
  ['50/50 300V', {}, { sections: [50 * u, 50 * u], lost: none }],
  // Thousands apart without a unit, and a value beside its volts.
  ['10 000', {}, { c: 10 * n, lost: none }],
  ['47.000', {}, { c: 47 * n, lost: none }],
  ['473 100V', {}, { c: 47 * n, volts: 100 }],
  ['2.2/50', {}, { c: 2.2 * u, volts: 50, lost: none }],
  ['1000 6.3', {}, { c: 1e-3, volts: 6.3, lost: none }],
  ['100u 6v3', {}, { c: 100 * u, volts: 6.3, lost: none }],
  ['220 6V3', {}, { c: 220 * u, volts: 6.3, lost: none }],
  ['470 25V 105°', {}, { c: 470 * u, volts: 25, lost: none }],
  ['10µF 16V\n-40/+85', {}, { c: 10 * u, volts: 16, lost: none }],
  ['2x2500pF', {}, { sections: [2.5 * n, 2.5 * n], lost: none }],
  // A tolerance behind the volts, or in brackets.
  ['100µF 25V (M)', {}, { c: 100 * u, tolerance: [0.2, 0.2, 'fraction'], volts: 25, lost: none }],
  ['100µF(M)25V', {}, { c: 100 * u, tolerance: [0.2, 0.2, 'fraction'], volts: 25, lost: none }],
  ['104 X7R 50V K', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['226C', {}, { c: 22 * u, volts: 16 }],
  ['223D', {}, { c: 22 * n, tolerance: [0.005, 0.005, 'fraction'] }],
  ['104C', { body: 'film' }, { c: 100 * n, tolerance: [0.0025, 0.0025, 'fraction'] }],
  // Trimmers and potentiometers.
  ['3296W 103', {}, { r: 10e3, lost: none }],
  ['10K LIN', {}, { r: 10e3, lost: none }],
  ['47K 2W', {}, { r: 47e3, lost: [] }],
  // K behind the figures of a resistance is its thousand, behind a letter among them its tolerance.
  ['100K 1/4W', {}, { r: 100e3, sure: 'likely', lost: none }],
  ['470K', { kind: 'resistor' }, { r: 470e3, sure: 'sure' }],
  ['4K7K', { kind: 'resistor' }, { r: 4.7e3, tolerance: [0.1, 0.1, 'fraction'] }],
  // What bears its watts has leads, and rather plain ohms than the code of a chip.
  ['470 5W', {}, { r: 470, sure: 'likely', lost: none }],
  ['471J 2W', {}, { r: 470, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  // Behind the watts of a Soviet film part plain figures are ohms.
  ['МЛТ-2 470', {}, { r: 470, sure: 'likely' }],
  ['МЛТ-0,5 470', {}, { r: 470, sure: 'likely' }],
  // Early classes of mains duty had no figure; beside volts for AC the letter is no tolerance.
  ['2n2 Y 250V~', {}, { c: 2.2 * n, volts: 250, kind: 'ac', safety: 'Y', lost: none }],
  ['0.1 µF 250~ X', {}, { c: 100 * n, volts: 250, kind: 'ac', safety: 'X', lost: none }],
  ['104Y', {}, { c: 100 * n, tolerance: [0, 0.5, 'fraction'] }],
  // Two sections of a can, whatever else has such volts.
  ['100+100/275', {}, { sections: [100 * u, 100 * u], volts: 275, types: ['al-electrolytic-wet'] }],
  ['МЛТ-0,5 4К7', {}, { r: 4.7e3, sure: 'sure', lost: [] }],
  ['ОМЛТ-0,5 2М2 ±10%', {}, { r: 2.2e6, tolerance: [0.1, 0.1, 'fraction'], lost: [] }],
  ['С2-23 1к0 5%', {}, { r: 1e3, tolerance: [0.05, 0.05, 'fraction'], lost: [] }],
  ['223J 2A', {}, { c: 22 * n, volts: 100 }],
  ['470 MFD 50 WVDC 85C', {}, { c: 470 * u, volts: 50, kind: 'dc', sure: 'sure' }],
  ['КСО-5 500 В 4700 пФ ±5%', {}, { c: 4.7 * n, volts: 500, sure: 'sure' }],
  ['0,47 400V~', {}, { c: 470 * n, volts: 400, kind: 'ac' }],
  // A stray letter before a code is no voltage of a can of ten thousand microfarads.
  ['C103J', {}, { c: 10 * n, tolerance: [0.05, 0.05, 'fraction'], sure: 'likely' }],
  ['C104K', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'] }],
  ['C223', {}, { c: 22 * n }],
  ['C103G', {}, { c: 10 * n, tolerance: [0.02, 0.02, 'fraction'] }],
  ['A103J', {}, { c: 10 * n, tolerance: [0.05, 0.05, 'fraction'] }],
  ['J106', {}, { c: 10 * u, volts: 6.3, sure: 'sure' }],
  ['C226', {}, { c: 22 * u, volts: 16, sure: 'sure' }],
  // R is the point of a resistance first.
  ['R100', {}, { r: 0.1, lost: none }],
  ['R47', {}, { r: 0.47, lost: none }],
  ['R22J', {}, { r: 0.22, tolerance: [0.05, 0.05, 'fraction'] }],
  ['1К5', {}, { r: 1.5e3, lost: none }],
  // A case size of dipped mica by itself is no value.
  ['DM15', {}, { types: ['silvered-mica'], lost: none }],
  // A letter for the taper does not settle what the part is.
  ['W20K', {}, { r: 20e3, sure: 'likely' }],
  // Letters of a maker make no reading so poor that figures are taken for letters.
  ['KOE EB 22/16', {}, { c: 22 * u, volts: 16 }],
  // Chips bear two figures and a letter.
  ['01A', {}, { r: 100, tolerance: [0.01, 0.01, 'fraction'] }],
  ['10E 5W', {}, { lost: none }],
  // Cans of several sections are aluminium; small sections say nothing of it.
  [
    '50+50/450',
    {},
    { sections: [50 * u, 50 * u], volts: 450, types: ['al-electrolytic-wet'], lost: none },
  ],
  ['0.1+0.1 uF', {}, { sections: [100 * n, 100 * n], types: none }],
  // Figures that begin with a nought are a code as well: never sure.
  ['CH 0J0620P', {}, { c: 620 * p, volts: 6.3, code: 'CH', sure: 'likely' }],
  ['ПЭВ-10 1кОм', {}, { r: 1e3, lost: none }],
  ['С5-5-2 1к 1%', {}, { r: 1e3, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  // Two sections for AC are of a motor: no can of polar ones.
  ['35+5 MFD 440VAC', {}, { sections: [35 * u, 5 * u], types: none, lost: none }],
  // A minus behind a gap is of a temperature, and no sign for direct volts.
  ['1500µF/100V -25+85', {}, { c: 1500 * u, volts: 100, lost: none }],
  ['2200µ 63V -40+85C', {}, { c: 2200 * u, volts: 63, lost: none }],
  ['105℃ 220µF 35V', {}, { c: 220 * u, volts: 35, lost: none }],
  // Values and voltages of a can, a gap between them and no unit.
  [
    '40/20/20/20 475/450/450/25',
    {},
    { sections: [40 * u, 20 * u, 20 * u, 20 * u], types: ['al-electrolytic-wet'], lost: none },
  ],
  // Millionths for each degree are of a resistor.
  ['10k 1% 100ppm', {}, { r: 10e3, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  // A starting capacitor is none for running.
  [
    'motor start 200 MFD 125VAC',
    {},
    { c: 200 * u, volts: 125, types: ['al-motor-start'], lost: none },
  ],
  // Volts in three figures behind a gap, where a series of tantalum is named.
  ['TAP 106M 016', {}, { c: 10 * u, volts: 16, tolerance: [0.2, 0.2, 'fraction'], lost: none }],
  ['T350 106 K 025', {}, { c: 10 * u, volts: 25, lost: none }],
  ['196D 475X9 050', {}, { c: 4.7 * u, volts: 50, lost: none }],
  ['104K 025', {}, { c: 100 * n, lost: none }],
  // A plus behind a fraction is the sign of a lead: sections of cans are whole microfarads.
  ['4.7+35', {}, { c: 4.7 * u, volts: 35, lost: none }],
  ['2.2+16', {}, { c: 2.2 * u, volts: 16, lost: none }],
  ['16+16', {}, { sections: [16 * u, 16 * u] }],
  // The name of its liquid says that it is oil-filled paper.
  ['PYRANOL 4 MFD 660VAC', {}, { c: 4 * u, volts: 660, types: ['paper-oil'], lost: none }],
  // A mains filter in one body: one across the line, two to earth.
  ['0,1µF X2+2x2500pF Y', {}, { sections: [100 * n, 2.5 * n, 2.5 * n], safety: 'Y', lost: none }],
  ['0,1+2x2500p', {}, { sections: [100 * n, 2.5 * n, 2.5 * n], lost: none }],
  ['0.1 + 2 x 0.0025 µF 250V~', {}, { sections: [100 * n, 2.5 * n, 2.5 * n], lost: none }],
  // A small Cyrillic letter is that of thousands of ohms, and a style may end in its watts.
  ['2к2', {}, { r: 2.2e3, lost: none }],
  ['МЛТ-0,5 47к', {}, { r: 47e3, lost: none }],
  ['С2-29В-0,25 10,2к 1%', {}, { r: 10.2e3, tolerance: [0.01, 0.01, 'fraction'], lost: none }],
  ['ПЭВ-7,5 1к', {}, { r: 1e3, lost: none }],
  ['С5-35В 3,9к', {}, { r: 3.9e3, lost: none }],
  ['СП3-38а 10к', {}, { r: 10e3, lost: none }],
  // Styles with a letter of their family before the dash.
  ['К40У-9 0,1 мкФ 200В', {}, { c: 100 * n, volts: 200, types: ['paper-oil'], lost: none }],
  ['К72П-6 0,1 500В', {}, { c: 100 * n, volts: 500, types: ['ptfe'], lost: none }],
  ['КБГ-МН 0,5 мкф 600в', {}, { c: 500 * n, volts: 600, lost: none }],
  // Numbers of American military parts: value, tolerance, then a grade or a failure rate.
  ['CM05FD101JO3', {}, { c: 100 * p, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['CM06FD102G03', {}, { c: n, tolerance: [0.02, 0.02, 'fraction'], lost: none }],
  ['CKR05BX104KS', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['CCR05CG101JM', {}, { c: 100 * p, tolerance: [0.05, 0.05, 'fraction'], lost: none }],
  ['CP53B1EF105K', {}, { c: u, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['CPV09A1KE104K', {}, { c: 100 * n, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  // The letter between the style and the figures is the voltage.
  ['CSR13G106KM', {}, { c: 10 * u, volts: 50, tolerance: [0.1, 0.1, 'fraction'], lost: none }],
  ['CSR13E476KL', {}, { c: 47 * u, volts: 20, lost: none }],
  ['CSR13C227KM', {}, { c: 220 * u, volts: 10, lost: none }],
  // A square trimmer: how its pins stand, then a code.
  ['W504', {}, { r: 500e3, lost: none }],
  ['X103', {}, { r: 10e3, lost: none }],
  // Old Soviet resistors print plain ohms: the code is one reading of two.
  ['ВС-0,25 510', {}, { r: 510, lost: none }],
];
