import { benchWordRow } from './bench-words.ts';
import { cautionRow } from './cautions.ts';
import { changeRow } from './changes.ts';
import { circuitRow, circuitSymbolRow } from './circuits.ts';
import { combinationRow } from './combinations.ts';
import { categoryVoltageRow, deratingRow, guidelineRow } from './derating.ts';
import { deviceTables } from './device-tables.ts';
import { inPlaceOfRow } from './in-place-of.ts';
import { jobTables } from './job-tables.ts';
import { kindTables } from './kind-tables.ts';
import { ladderRow } from './ladders.ts';
import { lookTables } from './look-tables.ts';
import { markingTables } from './marking-tables.ts';
import { plausibleRow } from './plausible.ts';
import {
  conditionDefinitionRow,
  conditionRow,
  demandRow,
  findingRow,
  positionNoteRow,
  positionRow,
  unlikelyPairRow,
  verdictRuleRow,
} from './positions.ts';
import { source } from './references.ts';
import { reformingRow } from './reforming.ts';
import { ruleOfThumbRow } from './rules-of-thumb.ts';
import { sizeTables } from './size-tables.ts';
import { soughtDeviceRow, soughtRow } from './sought.ts';
import { sourceRow } from './sources.ts';
import { sumInputRow } from './sums.ts';
import type { Table } from './table.ts';
import { esrOfNewRow, leakageLimitRow, triageRow } from './triage.ts';
import {
  absorptionTestRow,
  familyRow,
  figureRow,
  offerRow,
  propertyRow,
  styleRow,
  typeRow,
} from './types.ts';
import { seriesRow, unitRow, valueListRow, voltageRow } from './values.ts';

/** Every table of `data/`, by file name. Adding a table starts here. */
export const tables = {
  'sources.csv': {
    row: sourceRow,
    key: ['id'],
    references: [],
    about: 'Documents that figures come from.',
  },
  'changes.csv': {
    row: changeRow,
    key: ['id'],
    references: [],
    about: 'Changes of the data that a reader should hear of, the newest first.',
  },
  'in-place-of.csv': {
    row: inPlaceOfRow,
    key: ['quantity', 'than_old'],
    references: [source],
    about: 'What can be said of a part that has more or less of a quantity than the old one.',
  },
  'bench-words.csv': {
    row: benchWordRow,
    key: ['page'],
    references: [source],
    about: 'Words of the bench, such as hum, and the pages that they lead to.',
  },
  'units.csv': { row: unitRow, key: ['unit'], references: [], about: 'Units that tables use.' },
  'types.csv': {
    row: typeRow,
    key: ['id'],
    references: [
      source,
      { column: 'family', table: 'families.csv' },
      { column: 'union_of', table: 'types.csv', many: true },
    ],
    about: 'Kinds of capacitor.',
  },
  'families.csv': {
    row: familyRow,
    key: ['id'],
    references: [source, { column: 'kin', table: 'families.csv' }],
    about: 'What capacitors are made of, as lists and rules go by it.',
  },
  'properties.csv': {
    row: propertyRow,
    key: ['id'],
    references: [{ column: 'unit', table: 'units.csv' }],
    about: 'Properties that figures are given for.',
  },
  'absorption-tests.csv': {
    row: absorptionTestRow,
    key: ['id'],
    references: [source],
    about:
      'Ways in which dielectric absorption was measured; the first is the one that all are brought to.',
  },
  'figures.csv': {
    row: figureRow,
    key: ['type', 'property', 'source', 'locator', 'conditions'],
    references: [
      source,
      { column: 'type', table: 'types.csv', orTable: 'kinds/types.csv' },
      { column: 'property', table: 'properties.csv', orTable: 'kinds/properties.csv' },
      { column: 'unit', table: 'units.csv' },
      { column: 'test', table: 'absorption-tests.csv' },
    ],
    about: 'Figures of types, one source a row.',
  },
  'sought.csv': {
    row: soughtRow,
    key: ['property', 'sought'],
    references: [
      { column: 'property', table: 'properties.csv' },
      { column: 'types', table: 'types.csv', many: true },
    ],
    about: 'Figures that were looked for in vain, and where.',
  },
  'sought-devices.csv': {
    row: soughtDeviceRow,
    key: ['property', 'sought'],
    references: [
      { column: 'property', table: 'devices/properties.csv' },
      { column: 'devices', table: 'devices/devices.csv', many: true },
    ],
    about: 'Figures of devices that were looked for in vain, and where.',
  },
  'market.csv': {
    row: offerRow,
    key: ['type', 'style', 'c_min', 'voltages'],
    references: [
      source,
      { column: 'type', table: 'types.csv' },
      { column: 'style', table: 'styles.csv' },
    ],
    about: 'What can be bought today.',
  },
  'styles.csv': {
    row: styleRow,
    key: ['style'],
    references: [source],
    about: 'How parts that can be bought are wired up.',
  },
  ...sizeTables,
  'e-series.csv': {
    row: seriesRow,
    key: ['series', 'position'],
    references: [source],
    about: 'Preferred values of IEC 60063.',
  },
  'value-lists.csv': {
    row: valueListRow,
    key: ['list', 'value'],
    references: [source],
    about: 'Values of parts that are not made in a series of preferred numbers.',
  },
  'voltages.csv': {
    row: voltageRow,
    key: ['volts', 'kind', 'families'],
    references: [source, { column: 'families', table: 'families.csv', many: true }],
    about: 'Rated voltages that capacitors are made for.',
  },
  'positions.csv': {
    row: positionRow,
    key: ['id'],
    references: [source, { column: 'home', table: 'families.csv' }],
    about: 'Places in a circuit where a capacitor sits.',
  },
  'circuits.csv': {
    row: circuitRow,
    key: ['position'],
    references: [{ column: 'position', table: 'positions.csv', orTable: 'kinds/positions.csv' }],
    about: 'The circuit that each position is shown in.',
  },
  'circuit-symbols.csv': {
    row: circuitSymbolRow,
    key: ['position', 'symbol', 'places'],
    references: [{ column: 'position', table: 'circuits.csv' }],
    about: 'What each circuit is drawn with, symbol by symbol.',
  },
  'position-notes.csv': {
    row: positionNoteRow,
    key: ['position', 'kind', 'title'],
    references: [
      source,
      { column: 'position', table: 'positions.csv', orTable: 'kinds/positions.csv' },
      { column: 'unit', table: 'units.csv' },
    ],
    about: 'Equations, figures, usual choices, symptoms and traps of each position.',
  },
  'condition-definitions.csv': {
    row: conditionDefinitionRow,
    key: ['id'],
    references: [{ column: 'unit', table: 'units.csv' }],
    about: 'Numbers of a circuit that assessments use.',
  },
  'conditions.csv': {
    row: conditionRow,
    key: ['position', 'condition'],
    references: [
      source,
      { column: 'position', table: 'positions.csv', orTable: 'kinds/positions.csv' },
      { column: 'condition', table: 'condition-definitions.csv' },
    ],
    about: 'Default conditions of each position.',
  },
  'findings.csv': {
    row: findingRow,
    key: ['id'],
    references: [
      source,
      { column: 'unit', table: 'units.csv' },
      {
        column: 'properties',
        table: 'properties.csv',
        orTable: 'kinds/properties.csv',
        many: true,
      },
      { column: 'conditions', table: 'condition-definitions.csv', many: true },
      { column: 'told', table: 'condition-definitions.csv', many: true },
    ],
    about: 'Things that are worked out about a part in a position.',
  },
  'sum-inputs.csv': {
    row: sumInputRow,
    key: ['sum', 'input', 'for'],
    references: [{ column: 'for', table: 'findings.csv', many: true }],
    about: 'What the fields of a bench sum are filled with where a finding leads to it.',
  },
  'demands.csv': {
    row: demandRow,
    key: ['id'],
    references: [
      source,
      { column: 'position', table: 'positions.csv', orTable: 'kinds/positions.csv' },
      { column: 'finding', table: 'findings.csv' },
      { column: 'limit_of', table: 'condition-definitions.csv' },
    ],
    about: 'What each position asks.',
  },
  'verdict-rules.csv': {
    row: verdictRuleRow,
    key: ['weight', 'end', 'beyond'],
    references: [],
    about: 'Which verdict a finding earns by how far it is beyond its limit.',
  },
  'unlikely-pairs.csv': {
    row: unlikelyPairRow,
    key: ['type', 'position'],
    references: [
      source,
      { column: 'type', table: 'types.csv', orTable: 'kinds/types.csv' },
      { column: 'position', table: 'positions.csv', orTable: 'kinds/positions.csv' },
    ],
    about: 'Types that are not met in a position, and why.',
  },
  'guidelines.csv': {
    row: guidelineRow,
    key: ['id'],
    references: [source],
    about: 'Bodies of derating rules.',
  },
  'derating.csv': {
    row: deratingRow,
    key: ['guideline', 'types', 'above_v', 'from_c'],
    references: [
      source,
      { column: 'guideline', table: 'guidelines.csv' },
      { column: 'types', table: 'types.csv', many: true },
    ],
    about: 'Share of the rated voltage to use, by guideline, type, rating and temperature.',
  },
  'category-voltages.csv': {
    row: categoryVoltageRow,
    key: ['types', 'rated_v'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'Voltages that makers print for their ratings at the highest temperature.',
  },
  'rules-of-thumb.csv': {
    row: ruleOfThumbRow,
    key: ['id'],
    references: [source, { column: 'unit', table: 'units.csv' }],
    about: 'Numbers of the trade that assessments go by where no figure of a part says it.',
  },
  'combinations.csv': {
    row: combinationRow,
    key: ['id'],
    references: [source, { column: 'mends', table: 'findings.csv', many: true }],
    about: 'Stand-ins made of two parts where no single part serves.',
  },
  'triage.csv': {
    row: triageRow,
    key: ['id'],
    references: [
      source,
      { column: 'types', table: 'types.csv', many: true },
      { column: 'positions', table: 'positions.csv', many: true },
      { column: 'unit', table: 'units.csv' },
    ],
    about: 'Whether an old part needs replacing at all.',
  },
  'esr-of-new.csv': {
    row: esrOfNewRow,
    key: ['grade', 'rated_voltage', 'capacitance'],
    references: [source],
    about: 'What new electrolytics read on an ESR meter.',
  },
  'leakage-limits.csv': {
    row: leakageLimitRow,
    key: ['types', 'v_from'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'What new electrolytics may leak.',
  },
  'reforming.csv': {
    row: reformingRow,
    key: ['figure', 'types', 'idle_from', 'v_from'],
    references: [
      source,
      { column: 'types', table: 'types.csv', many: true },
      { column: 'unit', table: 'units.csv' },
    ],
    about: 'How electrolytics are re-formed after years without voltage.',
  },
  'cautions.csv': {
    row: cautionRow,
    key: ['id'],
    references: [
      source,
      { column: 'types', table: 'types.csv', orTable: 'kinds/types.csv', many: true },
      {
        column: 'positions',
        table: 'positions.csv',
        orTable: 'kinds/positions.csv',
        many: true,
      },
      { column: 'condition', table: 'condition-definitions.csv' },
      { column: 'made', table: 'combinations.csv', many: true },
    ],
    about: 'What can hurt a person or the equipment.',
  },
  'plausible.csv': {
    row: plausibleRow,
    key: ['file', 'column', 'by', 'is'],
    references: [],
    about: 'Between what the numbers of a column lie, for the check of the tables.',
  },
  'ladders.csv': {
    row: ladderRow,
    key: ['file', 'among', 'by', 'column'],
    references: [],
    about: 'Which numbers go steadily with others from row to row, for the check of the tables.',
  },
  ...kindTables,
  ...markingTables,
  ...lookTables,
  ...jobTables,
  ...deviceTables,
} as const satisfies Record<string, Table>;
