import type { Use } from './token.ts';

/**
 * How readily each kind of token is believed. The numbers are on a log scale, about one for a
 * factor of three, and were set so that the published cases and those of the trade come out; only
 * their differences matter.
 */
export const weights = {
  value: { usual: 3, other: 2, rare: 0.5 },
  mantissaLetter: { usual: 0.6, other: 0, rare: -0.8 },
  valueWithUnit: { usual: 5, other: 3, rare: 1.5 },
  tolerance: { usual: 1.5, other: 0.3, rare: -0.6 },
  writtenTolerance: 2.5,
  /** The same without its sign for per cent, as in `0,1/10/250`. */
  bareTolerance: -0.8,
  /** A nought before a letter that resistors have for a point, as in `0R22`. */
  noughtBeforeLetter: -2,
  /** A capacitance with three figures about a letter that resistors have too, as in `1R00`. */
  preciseFigures: -2.5,
  /** A tolerance letter that is rather the unit of the value before it. */
  toleranceForUnit: -2.5,
  /** The same of a letter that is seldom met as a tolerance where volts follow, as in `100N 250`. */
  seldomBeforeVolts: -0.5,
  /** The same of a unit of power, which stands on resistors alone, as in `10W`. */
  toleranceForPower: -6,
  /** A seldom tolerance letter with figures at once behind it, which are rather one code with it. */
  toleranceBeforeFigures: -1.8,
  /** Wider than parts have whose value is written so. */
  unusualTolerance: -1.2,
  voltageWithUnit: { usual: 2, other: 1.5, rare: 0 },
  /** Two figures and a letter of a chip resistor, and a letter before two figures. */
  chipCode: 2.6,
  /** A letter and a figure with nothing but volts beside them: what else would be printed so? */
  mantissaAlone: 2.2,
  /** The same where nothing else is printed, as on small chips. */
  chipCodeAlone: 1.2,
  letterFirstCode: 0,
  /** Codes that only chips carry, where the part is known to be one: resistors, capacitors. */
  chipKnown: 2,
  ceramicChipKnown: 3.6,
  /** A single character on a chip, without the colour of its ink and with it. */
  singleCharacter: 1,
  singleCharacterAndInk: 3,
  power: { usual: 2, other: 1, rare: 0 },
  /** The same, at once before three figures: resistors with their watts print `2W 470K`, films `2W474J`. */
  powerBeforeThree: -1.2,
  /** A power that no resistor is made for. */
  unusualWatts: -3,
  /** Several sections with one unit, and a further value that opens a section of its own. */
  sections: 0.5,
  furtherSection: -0.5,
  /** The ends of the range of a trimmer, which are in no series. */
  range: 1.5,
  /** The ends of what a part may have, which are in no series either. */
  span: 0.3,
  /** AC volts beside them, as on what starts a motor. */
  spanWithAc: 1.5,
  /** A voltage beside a range without a unit, which is then a value and its volts. */
  voltageOfRange: -3,
  symbol: 0.3,
  /** A resistor in series in one body with a capacitor. */
  seriesResistor: 1.5,
  /** The unit of a value before its figures, as on labels: `MFD 8`. */
  unitBefore: -0.5,
  /** The voltage of a rail behind the rating of the part. */
  rail: 0.3,
  /** A sign between a value and its volts that rather sets sections apart, as in `2 x 50 µF`. */
  times: -1,
  /** A shorter word behind the figures than stands there, such as the V of `V SURGE`. */
  shorterVolts: -0.6,
  /** Lower than any part is rated for, as the 1 V that `1V` would be. */
  lowestVolts: -1.5,
  /** A test or surge voltage below the rating. */
  testBelowRating: -5,
  /** Two voltages with a stroke between them, which may also be a value and a voltage. */
  voltagePair: -0.5,
  voltageCode: { usual: 2, other: 0.8, rare: 0 },
  /** The same, where its letter with the few figures behind it is rather the value, as in `2P8`. */
  voltageCodeForPoint: -5.5,
  /** The same, at once before the three figures of a code, as in `1K750`. */
  voltageCodeBeforeThree: 0.6,
  /** The same, where its letter is a unit of power and the value stands before it, as in `47K 2W`. */
  voltageCodeForPower: -1.2,
  voltageFigures: { usual: 1.2, other: 0.2, rare: 0 },
  voltageLetter: { usual: 1.2, other: 0.2, rare: -0.5 },
  voltageLetterBehind: { usual: 1.8, other: 0.4, rare: -0.5 },
  temperature: { usual: 2.5, other: 1.2, rare: 0.3 },
  temperatureLetter: { usual: 0.8, other: 0.4, rare: -0.8 },
  /** A code whose first letter was taken from a figure: what begins with one is rather a voltage. */
  figureForLetter: -3,
  /** The same, where what is written is a voltage as it stands, as `25V` is. */
  voltageForCode: -4.5,
  word: { usual: 1.5, other: 0.8, rare: 0.2 },
  /** The number of a series behind letters, whose figures would be a date by themselves. */
  seriesNumber: 0.8,
  /** A style of resistors that ends in their watts, whose figures would be a value by themselves: `ПЭВ-10`. */
  styleWithWatts: 1,
  safety: { usual: 2.2, other: 1, rare: 0 },
  /** A class beside a voltage for AC, which tells a letter from a tolerance. */
  safetyWithAc: 1.5,
  /** The letter of a class of mains duty beside volts that no mains has, or direct ones alone. */
  safetyOffMains: -4,
  /** The same beside volts that do not say of which kind they are. */
  safetyWithoutAc: -0.5,
  mark: { usual: 0.6, other: 0.3, rare: 0 },
  date: { usual: 0.5, other: 0.2, rare: -0.5 },
  /** Two figures that are as well a usual voltage, as the 16 of `10 16` is. */
  dateForVoltage: -2,
  /** How a potentiometer follows its travel, beside its resistance. */
  taper: { usual: 2, other: 1.2, rare: 0.4 },
  /** The same behind a code of figures alone, or a letter seldom met so before one: rather something else. */
  taperBesideCode: -2,
  /** A taper beside a tolerance or a resistance more precise than potentiometers have. */
  taperOfPrecisePart: -4,
  /** A taper on what its style says to be a potentiometer. */
  taperOfStyle: 2.5,
  /** A failure rate behind the tolerance of a military part. */
  failureRate: 1.5,
  climate: 1.2,
  climateLetters: 0.4,
  /** A number with the unit of what is not read, and a word of the form of another kind of part. */
  otherUnit: { usual: 2, other: 1, rare: 0 },
  /** The same where nothing else is printed, and where a figure and its letter are rather a code. */
  otherAlone: 2.2,
  otherForCode: -2,
  otherShape: { usual: 7, other: 4, rare: 2 },
  /** A letter in the other case than its table has it. */
  otherCase: -0.6,
  /** The same, where the small letter is a unit's. */
  otherCaseOfUnit: -4.5,
  /** A letter with a gap before it. */
  gap: -0.2,
  /** A figure that cannot be read and was made up, another character, and signs left aside. */
  wornFigure: -0.5,
  worn: -1,
  wornLeft: -1,
  /** A tolerance letter that was made up, by how often it is met. */
  completedLetter: { often: -0.7, sometimes: -1.2, seldom: -1.8 },
  completedUnit: -0.5,
  completedVoltage: -0.7,
  /** A made-up value in the series for its tolerance or a coarser one, and each series beyond. */
  inSeriesOfTolerance: 0.2,
  beyondSeriesOfTolerance: -0.5,
  /** Made-up figures, by the coarsest series that they complete a value of. */
  completedTo: { E3: 0.4, E6: 0.3, E12: 0.2, E24: 0, E48: -0.1, E96: -0.2, E192: -0.3, old: -0.4 },
  /** A stretch that stays without a meaning, and each of its characters. */
  notUnderstood: -1,
  notUnderstoodCharacter: -0.1,
  /** Figures left aside: a maker's sign has letters, seldom figures. */
  notUnderstoodFigures: -0.6,
  notUnderstoodMost: -2.5,
  /** A value with its unit, or the first of several that a sign joins. */
  valueLeft: -3,
  /** The same beside understood tokens in one word. */
  restOfWord: -2.5,
  /** A single letter at once before a code of three figures: of a maker, a type or the board. */
  strayLetter: 0.5,
  /** A value as it stands, or with a letter for its unit, in a type number that has a code for it: `RC20GF472K`. */
  unitInNumber: -4,
  /** The value is in the series of the given step, or was usual before there were series. */
  coarseSeries: 1,
  fineSeries: 0.6,
  oldValue: 0,
  /** Only in a series of precision parts, or in none, by how the value is written. */
  precisionSeries: { bare: -2, precise: 0, unit: 0 },
  noSeries: { bare: -3.5, precise: -2, unit: -0.3 },
  /** The value cannot be had in the body. */
  outsideBody: -3,
  /** The types that are named on the part are marked so whatever their age. */
  formOfTypes: 1.5,
  /** No part of the types that are named on it comes near the value. */
  outsideTypes: -3,
  /** The tolerance is greater than the value. */
  toleranceAboveValue: -4,
  /** The voltage is lower than parts marked in such a way have. */
  voltageTooLow: -3,
  /** A voltage beside a value that is likely only with one. */
  voltsBeside: 1.2,
  /** The volts behind a stroke of a part that is marked so, as the 63 of `10/63`. */
  strokeVolts: 2.5,
  /** Decimals that end in a nought, as in `10,000`, where they rather are thousands. */
  noughtsBehindPoint: -2.5,
  /** Tokens that belong to different bodies or origins. */
  bodiesClash: -3,
  originsClash: -2,
  /** Plain ohms beside watts or what the part is made of, which are on no chip. */
  plainBesideWords: 3.5,
  /** A code for the value beside per cents, which those who write codes write as a letter. */
  codeBesideWords: -1.5,
  /** A style with a value as those who use the style do not write it, as a code behind `МЛТ-2`. */
  styleOfOthers: -2,
  /** The technician says what it is. */
  bodyAgrees: 0.8,
  bodyDiffers: -3,
  originAgrees: 1,
  originDiffers: -1.5,
  kindDiffers: -6,
  /** Parts were marked so in other years than the part may be from. */
  eraDiffers: -2,
  /** A resistance without its unit where nothing says that the part is a resistor. */
  resistor: -1.8,
  /** Behind the figures, or where it tells the kind, the letter of a resistance does for a unit. */
  letterOfOhms: 1.15,
  /** Such figures and letter where nothing else is printed: few capacitors have neither volts nor more. */
  ohmsAlone: 2.4,
  /** A K for the point of a resistance with a tolerance behind, or whole thousands alone, and nothing else. */
  ohmsRather: 1,
  /** A reading without a value. */
  noValue: -0.5,
  /** A size or a designator beside no value: its figures are rather the value or a date. */
  besideNothing: -4,
} as const;

/** The weight of a use among the three of a kind. */
export const weightOf = (of: Record<Use, number>, use: Use): number => of[use];
