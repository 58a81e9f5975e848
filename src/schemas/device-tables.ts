import {
  affixRow,
  besideWordRow,
  deviceFigureRow,
  deviceFunctionRow,
  devicePropertyRow,
  deviceSumInputRow,
  deviceRow,
  familyRow,
  knownNumberRow,
  numberSystemRow,
  pinFunctionRow,
  pinRow,
  pinoutRow,
  seriesOfDevicesRow,
  useRow,
  type DeviceTables,
} from './devices.ts';
import { conditionDefinitionRow, conditionRow, demandRow, findingRow } from './positions.ts';
import { source, unit } from './references.ts';
import type { Reference, Table } from './table.ts';
import { deviceTriageRow } from './triage.ts';

/** A table of `data/devices/`, and the property of the device tables that it fills. */
export interface DeviceTable extends Table {
  name: keyof DeviceTables;
}

const family: Reference = { column: 'family', table: 'devices/families.csv' };
const definitions = 'devices/condition-definitions.csv';

/** Every table of parts that are named by a type number, by file name. */
export const deviceTables = {
  'devices/families.csv': {
    name: 'families',
    row: familyRow,
    key: ['id'],
    references: [],
    about: 'Families of devices named by a type number.',
  },
  'devices/series.csv': {
    name: 'series',
    row: seriesOfDevicesRow,
    key: ['id'],
    references: [],
    about: 'What several devices share figures by.',
  },
  'devices/functions.csv': {
    name: 'functions',
    row: deviceFunctionRow,
    key: ['id'],
    references: [family],
    about: 'What devices do; only those of one function are tried for each other.',
  },
  'devices/devices.csv': {
    name: 'devices',
    row: deviceRow,
    key: ['id'],
    references: [
      source,
      family,
      { column: 'function', table: 'devices/functions.csv' },
      { column: 'series', table: 'devices/series.csv', many: true },
      { column: 'pinouts', table: 'devices/pinouts.csv', many: true },
      { column: 'usual_in', table: 'devices/uses.csv', many: true },
      { column: 'never_in', table: 'devices/uses.csv', many: true },
    ],
    about: 'Switches, amplifiers, regulators, diodes and transistors by their type numbers.',
  },
  'devices/properties.csv': {
    name: 'properties',
    row: devicePropertyRow,
    key: ['id'],
    references: [unit],
    about: 'What figures of devices are given for.',
  },
  'devices/figures.csv': {
    name: 'figures',
    row: deviceFigureRow,
    key: ['of', 'property', 'at', 'source', 'locator', 'conditions'],
    references: [source, unit, { column: 'property', table: 'devices/properties.csv' }],
    about: 'Figures of devices and of their series, one source a row.',
  },
  'devices/pinouts.csv': {
    name: 'pinouts',
    row: pinoutRow,
    key: ['id'],
    references: [],
    about: 'Orders of pins.',
  },
  'devices/pins.csv': {
    name: 'pins',
    row: pinRow,
    key: ['pinout', 'pin'],
    references: [
      source,
      { column: 'pinout', table: 'devices/pinouts.csv' },
      { column: 'function', table: 'devices/pin-functions.csv' },
    ],
    about: 'What each pin of a pinout does.',
  },
  'devices/pin-functions.csv': {
    name: 'pinFunctions',
    row: pinFunctionRow,
    key: ['id'],
    references: [],
    about: 'What a pin can be for.',
  },
  'devices/uses.csv': {
    name: 'uses',
    row: useRow,
    key: ['id'],
    references: [
      source,
      { column: 'functions', table: 'devices/functions.csv', many: true },
      { column: 'cautions', table: 'cautions.csv', many: true },
    ],
    about: 'What devices do in a circuit, and what that asks of them.',
  },
  'devices/condition-definitions.csv': {
    name: 'conditionDefinitions',
    row: conditionDefinitionRow,
    key: ['id'],
    references: [unit],
    about: 'Numbers of a circuit that the findings about devices use.',
  },
  'devices/conditions.csv': {
    name: 'conditions',
    row: conditionRow,
    key: ['position', 'condition'],
    references: [
      source,
      { column: 'position', table: 'devices/uses.csv' },
      { column: 'condition', table: definitions },
    ],
    about: 'Default numbers of each use of a device.',
  },
  'devices/findings.csv': {
    name: 'findings',
    row: findingRow,
    key: ['id'],
    references: [
      source,
      unit,
      { column: 'properties', table: 'devices/properties.csv', many: true },
      { column: 'conditions', table: definitions, many: true },
      { column: 'told', table: definitions, many: true },
    ],
    about: 'What is worked out about a device in a use.',
  },
  'devices/demands.csv': {
    name: 'demands',
    row: demandRow,
    key: ['id'],
    references: [
      source,
      { column: 'position', table: 'devices/uses.csv' },
      { column: 'finding', table: 'devices/findings.csv' },
    ],
    about: 'What each use asks of a device; a limit may be a multiple of what the old one gives.',
  },
  'devices/affixes.csv': {
    name: 'affixes',
    row: affixRow,
    key: ['text', 'place', 'numbers'],
    references: [source],
    about: 'Letters printed before and after a type number, which a search may leave out.',
  },
  'devices/beside-words.csv': {
    name: 'besideWords',
    row: besideWordRow,
    key: ['form'],
    references: [source],
    about: 'Words printed beside a type number, such as a date or the letters of a lot.',
  },
  'devices/number-systems.csv': {
    name: 'numberSystems',
    row: numberSystemRow,
    key: ['starts'],
    references: [source],
    about: 'Forms of type numbers by the registers that gave them out.',
  },
  'devices/known-numbers.csv': {
    name: 'knownNumbers',
    row: knownNumberRow,
    key: ['number'],
    references: [source, { column: 'near', table: 'devices/devices.csv', many: true }],
    about: 'Numbers met on boards that have no page: what each is, and what to compare it with.',
  },
  'devices/sum-inputs.csv': {
    name: 'sumInputs',
    row: deviceSumInputRow,
    key: ['sum', 'input', 'for'],
    references: [
      { column: 'at', table: definitions },
      { column: 'for', table: 'devices/findings.csv', many: true },
    ],
    about: 'What bench sums are filled in with where a finding about a device leads to them.',
  },
  'devices/triage.csv': {
    name: 'triage',
    row: deviceTriageRow,
    key: ['id'],
    references: [
      source,
      { column: 'families', table: 'devices/families.csv', many: true },
      { column: 'functions', table: 'devices/functions.csv', many: true },
      { column: 'devices', table: 'devices/devices.csv', many: true },
    ],
    about: 'Whether an old device needs replacing at all.',
  },
} as const satisfies Record<string, DeviceTable>;
