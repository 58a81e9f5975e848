import {
  chipResistorCodeRow,
  chipResistorMultiplierRow,
  failureRateRow,
  militaryChipLetterRow,
  resistorFormRow,
  resistorStyleRow,
  resistorTemperatureLetterRow,
  resistorToleranceRow,
  taperRow,
} from './marking-resistors.ts';
import type { MarkingTable } from './marking-tables.ts';
import { bodies, source } from './references.ts';

/** Tables that only resistors are read with, by file name. */
export const resistorTables = {
  'markings/resistor-forms.csv': {
    name: 'resistorForms',
    row: resistorFormRow,
    key: ['id'],
    references: [source, bodies],
    about: 'Resistances written in figures alone.',
  },
  'markings/resistor-tolerances.csv': {
    name: 'resistorTolerances',
    row: resistorToleranceRow,
    key: ['letter', 'percent'],
    references: [source, bodies],
    codes: 'letter',
    about: 'Letters that give the tolerance of a resistor.',
  },
  'markings/resistor-temperature-letters.csv': {
    name: 'resistorTemperatureLetters',
    row: resistorTemperatureLetterRow,
    key: ['letter', 'place', 'ppm'],
    references: [source, bodies],
    about: 'Letters that give the temperature coefficient of a resistor.',
  },
  'markings/eia96-codes.csv': {
    name: 'eia96Codes',
    row: chipResistorCodeRow,
    key: ['code'],
    references: [source],
    about: 'Two figures that stand for three on small chip resistors of one per cent.',
  },
  'markings/eia96-multipliers.csv': {
    name: 'eia96Multipliers',
    row: chipResistorMultiplierRow,
    key: ['letter', 'factor'],
    references: [source, bodies],
    about: 'The letter behind the two figures of a small chip resistor.',
  },
  'markings/letter-first-codes.csv': {
    name: 'letterFirstCodes',
    row: chipResistorCodeRow,
    key: ['code'],
    references: [source],
    about: 'Two figures behind a multiplier letter, on chip resistors of two per cent and wider.',
  },
  'markings/resistor-styles.csv': {
    name: 'resistorStyles',
    row: resistorStyleRow,
    key: ['style', 'watts'],
    references: [source, bodies],
    about: 'Styles of resistors, with the power and voltage that they bear.',
  },
  'markings/failure-rates.csv': {
    name: 'failureRates',
    row: failureRateRow,
    key: ['letter'],
    references: [source],
    about: 'Letters for the failure rate of American military parts.',
  },
  'markings/military-chip-letters.csv': {
    name: 'militaryChipLetters',
    row: militaryChipLetterRow,
    key: ['letter'],
    references: [source],
    about:
      'Letters for the point of the values of American military film chips, with their tolerance.',
  },
  'markings/potentiometer-tapers.csv': {
    name: 'tapers',
    row: taperRow,
    key: ['letter', 'law'],
    references: [source, bodies],
    codes: 'taper',
    about:
      'Letters and words for how the resistance of a potentiometer follows its travel. The same letter means different tapers by maker and age: measure at half travel.',
  },
} as const satisfies Record<string, MarkingTable>;
