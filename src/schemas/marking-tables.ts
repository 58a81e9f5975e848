import { drawingReferences } from './drawings.ts';
import {
  colourFormRow,
  colourLayoutRow,
  colourMeaningRow,
  colourRow,
  colourSchemeRow,
} from './marking-colours.ts';
import { arrangementRow, printedUnitRow } from './marking-print.ts';
import { resistorTables } from './marking-tables-resistors.ts';
import {
  class1CodeRow,
  class1SignRow,
  class2CodeRow,
  class2SignRow,
  metCodeRow,
  temperatureSystemRow,
} from './marking-temperatures.ts';
import {
  ambiguityRow,
  bodyMarkRow,
  climateLetterRow,
  dateSchemeRow,
  dateSignRow,
  dielectricCodeRow,
  otherMarkRow,
  safetyClassRow,
  sectionSymbolRow,
} from './marking-words.ts';
import {
  bodyRow,
  inkMultiplierRow,
  mantissaLetterRow,
  multiplierRow,
  oldMantissaRow,
  lookAlikeRow,
  pointLetterRow,
  seriesToleranceRow,
  singleCharacterRow,
  toleranceLetterRow,
  unitWordRow,
  valueFormRow,
  voltageCodeRow,
  voltageSchemeRow,
  voltageWordRow,
  type MarkingTables,
} from './markings.ts';
import { bodies, source } from './references.ts';
import type { Reference, Table } from './table.ts';

/** A table of `data/markings/`, and the property of the marking tables that it fills. */
export interface MarkingTable extends Table {
  name: keyof MarkingTables;
  /** The page that shows it in its own way, where it has one. */
  page?: `/${string}`;
  /** Column by whose words its rows are parted, where they are of several kinds. */
  partedBy?: string;
  /** The kind of code that its first column holds, where such codes have pages of their own. */
  codes?: 'letter' | 'voltage' | 'temperature' | 'taper';
}

const types: Reference = { column: 'types', table: 'types.csv', many: true };
const system: Reference = { column: 'system', table: 'markings/temperature-systems.csv' };

/** Every table that markings are read with, by file name. */
export const markingTables = {
  'markings/bodies.csv': {
    name: 'bodies',
    row: bodyRow,
    key: ['id'],
    references: [
      source,
      types,
      { column: 'family', table: 'families.csv', orTable: 'kinds/kinds.csv' },
    ],
    about: 'Kinds of body; the same mark means different things on different bodies.',
  },
  'markings/value-forms.csv': {
    name: 'valueForms',
    row: valueFormRow,
    key: ['id'],
    references: [source, bodies, types],
    about: 'Values written in figures without a unit.',
  },
  'markings/multipliers.csv': {
    name: 'multipliers',
    row: multiplierRow,
    key: ['scheme', 'figure', 'factor'],
    references: [source, bodies],
    partedBy: 'scheme',
    about: 'The last figure of a value code.',
  },
  'markings/point-letters.csv': {
    name: 'pointLetters',
    row: pointLetterRow,
    key: ['letter', 'quantity', 'factor', 'places', 'number_min'],
    references: [source, bodies],
    partedBy: 'quantity',
    about: 'Letters that stand for the decimal point and name the unit.',
  },
  'markings/mantissa-letters.csv': {
    name: 'mantissaLetters',
    row: mantissaLetterRow,
    key: ['letter', 'value'],
    references: [source, bodies],
    about: 'Letter and figure codes of small ceramic chips.',
  },
  'markings/single-characters.csv': {
    name: 'singleCharacters',
    row: singleCharacterRow,
    key: ['character'],
    references: [source, bodies],
    about: 'Single coloured characters of ceramic chips, in pF before the multiplier.',
  },
  'markings/ink-multipliers.csv': {
    name: 'inkMultipliers',
    row: inkMultiplierRow,
    key: ['colour'],
    references: [source, { column: 'colour', table: 'markings/colours.csv' }],
    about: 'What the ink of a single character on a ceramic chip multiplies it by.',
  },
  'markings/unit-words.csv': {
    name: 'unitWords',
    row: unitWordRow,
    key: ['word', 'factor'],
    references: [source, bodies],
    partedBy: 'quantity',
    about: 'Units as they were written over the years.',
  },
  'markings/old-mantissas.csv': {
    name: 'oldMantissas',
    row: oldMantissaRow,
    key: ['value'],
    references: [source],
    about: 'Values that were usual before preferred values.',
  },
  'markings/look-alikes.csv': {
    name: 'lookAlikes',
    row: lookAlikeRow,
    key: ['written', 'taken_as'],
    references: [source],
    about: 'Characters that are taken for each other.',
  },
  'markings/series-tolerances.csv': {
    name: 'seriesTolerances',
    row: seriesToleranceRow,
    key: ['series'],
    references: [source],
    about: 'Series of preferred values by the tolerance of the parts.',
  },
  'markings/tolerance-letters.csv': {
    name: 'toleranceLetters',
    row: toleranceLetterRow,
    key: ['letter', 'from_f', 'below_f', 'minus', 'plus', 'unit', 'origins'],
    references: [source, bodies],
    partedBy: 'script',
    codes: 'letter',
    about: 'Letters that give the tolerance.',
  },
  'markings/temperature-systems.csv': {
    name: 'temperatureSystems',
    row: temperatureSystemRow,
    key: ['id'],
    references: [source, bodies],
    about: 'Systems of temperature codes.',
  },
  'markings/class1-signs.csv': {
    name: 'class1Signs',
    row: class1SignRow,
    key: ['system', 'place', 'symbol', 'value'],
    references: [source, types, system],
    partedBy: 'system',
    about: 'Signs that class 1 ceramic codes are put together from.',
  },
  'markings/class1-codes.csv': {
    name: 'class1Codes',
    row: class1CodeRow,
    key: ['code', 'system', 'min_ppm', 'max_ppm'],
    references: [source, bodies, types, system],
    partedBy: 'system',
    codes: 'temperature',
    about: 'Temperature coefficients that have a name of their own.',
  },
  'markings/class2-signs.csv': {
    name: 'class2Signs',
    row: class2SignRow,
    key: ['system', 'place', 'symbol', 'low', 'high'],
    references: [source, types, system],
    partedBy: 'system',
    about: 'Signs that class 2 ceramic codes are put together from.',
  },
  'markings/class2-codes.csv': {
    name: 'class2Codes',
    row: class2CodeRow,
    key: ['code', 'system'],
    references: [source, bodies, types, system],
    partedBy: 'system',
    codes: 'temperature',
    about: 'Class 2 characteristics that have a name of their own.',
  },
  'markings/met-codes.csv': {
    name: 'metCodes',
    row: metCodeRow,
    key: ['system'],
    references: [source, system],
    partedBy: 'system',
    about:
      'Which of the ceramic codes that are put together by rule are met on parts. Each of them has a page; the rules make many more.',
  },
  'markings/voltage-schemes.csv': {
    name: 'voltageSchemes',
    row: voltageSchemeRow,
    key: ['id'],
    references: [source],
    about: 'Ways of writing the rated voltage in a code.',
  },
  'markings/voltage-codes.csv': {
    name: 'voltageCodes',
    row: voltageCodeRow,
    key: ['scheme', 'code', 'volts_min', 'volts_max'],
    references: [source, bodies, { column: 'scheme', table: 'markings/voltage-schemes.csv' }],
    partedBy: 'scheme',
    codes: 'voltage',
    about: 'Codes for the rated voltage.',
  },
  'markings/voltage-words.csv': {
    name: 'voltageWords',
    row: voltageWordRow,
    key: ['word', 'place'],
    references: [source, bodies],
    partedBy: 'role',
    about: 'Words beside the figures of a voltage.',
  },
  'markings/dielectric-codes.csv': {
    name: 'dielectricCodes',
    row: dielectricCodeRow,
    key: ['code', 'form', 'dielectric', 'origins'],
    references: [source, bodies, types],
    partedBy: 'form',
    about: 'Letters and words that say what a part is made of.',
  },
  'markings/safety-classes.csv': {
    name: 'safetyClasses',
    row: safetyClassRow,
    key: ['mark'],
    references: [source, bodies, types],
    about: 'Marks of mains duty.',
  },
  'markings/body-marks.csv': {
    name: 'bodyMarks',
    row: bodyMarkRow,
    key: ['mark', 'bodies'],
    references: [source, bodies, types],
    partedBy: 'group',
    about: 'Polarity, outer foil and approval marks.',
  },
  'markings/other-marks.csv': {
    name: 'otherMarks',
    row: otherMarkRow,
    key: ['form', 'written'],
    references: [source],
    about:
      'Units and forms of types that parts of other kinds bear, such as coils, crystals, fuses and varistors. They are said to be so, and no capacitance is read from them.',
  },
  'markings/climate-letters.csv': {
    name: 'climateLetters',
    row: climateLetterRow,
    key: ['place', 'letter'],
    references: [source],
    partedBy: 'place',
    about: 'Letters of the climatic class.',
  },
  'markings/date-schemes.csv': {
    name: 'dateSchemes',
    row: dateSchemeRow,
    key: ['id'],
    references: [source, bodies],
    about: 'Ways of writing the date of making.',
  },
  'markings/date-signs.csv': {
    name: 'dateSigns',
    row: dateSignRow,
    key: ['scheme', 'place', 'symbol', 'value'],
    references: [source, { column: 'scheme', table: 'markings/date-schemes.csv' }],
    partedBy: 'scheme',
    about: 'Letters and figures of date codes.',
  },
  'markings/section-symbols.csv': {
    name: 'sectionSymbols',
    row: sectionSymbolRow,
    key: ['sign'],
    references: [source, bodies],
    about: 'Signs that tell the sections of one can apart.',
  },
  'markings/ambiguities.csv': {
    name: 'ambiguities',
    row: ambiguityRow,
    key: ['mark'],
    references: [source],
    about: 'Marks that can be taken in two ways.',
  },
  'markings/colours.csv': {
    name: 'colours',
    page: '/read/colours/',
    row: colourRow,
    key: ['id'],
    references: [source, { column: 'shade_of', table: 'markings/colours.csv' }],
    about: 'Colours that parts are marked with.',
  },
  'markings/colour-forms.csv': {
    name: 'colourForms',
    page: '/read/colours/',
    row: colourFormRow,
    key: ['id'],
    references: [source, { column: 'body', table: 'markings/bodies.csv' }, ...drawingReferences],
    about: 'Bodies that carry colours instead of figures.',
  },
  'markings/colour-layouts.csv': {
    name: 'colourLayouts',
    page: '/read/colours/',
    row: colourLayoutRow,
    key: ['id'],
    references: [source, { column: 'form', table: 'markings/colour-forms.csv' }],
    about: 'Where the colours are on a body, by how many there are.',
  },
  'markings/colour-schemes.csv': {
    name: 'colourSchemes',
    page: '/read/colours/',
    row: colourSchemeRow,
    key: ['id'],
    references: [source, types, system, { column: 'layout', table: 'markings/colour-layouts.csv' }],
    about: 'What each coloured place tells.',
  },
  'markings/colour-meanings.csv': {
    name: 'colourMeanings',
    page: '/read/colours/',
    row: colourMeaningRow,
    key: ['code', 'role', 'colour', 'second', 'from_f', 'below_f', 'low', 'value', 'high', 'word'],
    references: [
      source,
      types,
      { column: 'colour', table: 'markings/colours.csv' },
      { column: 'second', table: 'markings/colours.csv' },
    ],
    about: 'What a colour stands for in each place.',
  },
  ...resistorTables,
  'markings/printed-units.csv': {
    name: 'printedUnits',
    row: printedUnitRow,
    key: ['word', 'factor', 'number_min'],
    references: [source, bodies],
    partedBy: 'quantity',
    about: 'Units as they stand on parts, with the numbers that stand before them.',
  },
  'markings/arrangements.csv': {
    name: 'arrangements',
    row: arrangementRow,
    key: ['id'],
    references: [source, bodies],
    about: 'How value, tolerance, voltage and temperature code stand together on a part.',
  },
} as const satisfies Record<string, MarkingTable>;
