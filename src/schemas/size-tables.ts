import { drawingReferences, typeLookRow } from './drawings.ts';
import { source } from './references.ts';
import {
  bodyRow,
  coreRiseRow,
  pulseRatingRow,
  rippleFrequencyRow,
  rippleTemperatureRow,
  seriesResistanceRow,
} from './sizes.ts';
import type { Table } from './table.ts';

/** Tables of how large parts are, how they look, and what they bear by their size, by file name. */
export const sizeTables = {
  'bodies.csv': {
    row: bodyRow,
    key: ['type', 'style', 'c_min', 'voltage', 'length_mm', 'width_mm', 'height_mm'],
    references: [source, { column: 'type', table: 'types.csv' }],
    about: 'Sizes of parts by value and rated voltage.',
  },
  'type-looks.csv': {
    row: typeLookRow,
    key: ['type', 'style', 'form'],
    references: [source, { column: 'type', table: 'types.csv' }, ...drawingReferences],
    about: 'How parts of each type look, as drawings.',
  },
  'series-resistance.csv': {
    row: seriesResistanceRow,
    key: ['type', 'capacitance', 'v_min', 'frequency_hz'],
    references: [source, { column: 'type', table: 'types.csv' }],
    about: 'ESR by value and rated voltage.',
  },
  'ripple-by-frequency.csv': {
    row: rippleFrequencyRow,
    key: ['type', 'v_min', 'c_min', 'frequency_hz'],
    references: [source, { column: 'type', table: 'types.csv' }],
    about: 'How the ripple current that a part takes goes with frequency.',
  },
  'ripple-by-temperature.csv': {
    row: rippleTemperatureRow,
    key: ['type', 'temperature_c'],
    references: [source, { column: 'type', table: 'types.csv' }],
    about: 'How the ripple current that a part takes goes with temperature.',
  },
  'core-rise.csv': {
    row: coreRiseRow,
    key: ['types', 'diameter_mm'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'How much more the core of a can warms than its surface.',
  },
  'pulse-ratings.csv': {
    row: pulseRatingRow,
    key: ['type', 'style', 'c_min', 'voltage'],
    references: [source, { column: 'type', table: 'types.csv' }],
    about: 'Steepest edges that film parts withstand, by value and rated voltage.',
  },
} as const satisfies Record<string, Table>;
