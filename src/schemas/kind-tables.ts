import {
  bandedFigureRow,
  kindOfferRow,
  kindPositionRow,
  kindPropertyRow,
  kindRow,
  kindTypeRow,
} from './kinds.ts';
import { source } from './references.ts';
import type { Table } from './table.ts';
import { kindTriageRow } from './triage.ts';
import { valueListRow } from './values.ts';

const kind = { column: 'kind', table: 'kinds/kinds.csv' };
const type = { column: 'type', table: 'kinds/types.csv' };

/**
 * Kinds of part besides capacitors. Their figures, conditions, demands, notes and cautions stand in
 * the same tables as those of capacitors.
 */
export const kindTables = {
  'kinds/kinds.csv': {
    row: kindRow,
    key: ['id'],
    references: [{ column: 'ordered', table: 'kinds/properties.csv', many: true }],
    about: 'Kinds of part besides capacitors.',
  },
  'kinds/types.csv': {
    row: kindTypeRow,
    key: ['id'],
    references: [source, kind],
    about: 'Types of resistor, trimmer and other parts.',
  },
  'kinds/properties.csv': {
    row: kindPropertyRow,
    key: ['id'],
    references: [
      { column: 'kinds', table: 'kinds/kinds.csv', many: true },
      { column: 'unit', table: 'units.csv' },
    ],
    about: 'Properties that figures of such parts are given for.',
  },
  'kinds/figures-by-value.csv': {
    row: bandedFigureRow,
    key: ['type', 'property', 'value_min', 'value_max', 'rating_min', 'source', 'locator'],
    references: [
      source,
      type,
      { column: 'property', table: 'properties.csv', orTable: 'kinds/properties.csv' },
      { column: 'unit', table: 'units.csv' },
    ],
    about: 'Figures of such parts that go by their value or rating.',
  },
  'kinds/positions.csv': {
    row: kindPositionRow,
    key: ['id'],
    references: [source, kind],
    about: 'Places in a circuit where such parts sit.',
  },
  'kinds/values.csv': {
    row: valueListRow,
    key: ['list', 'value'],
    references: [source],
    about: 'Values of such parts that are not made in a series of preferred numbers.',
  },
  'kinds/offers.csv': {
    row: kindOfferRow,
    key: ['type', 'style', 'value_min', 'ratings'],
    references: [source, type, { column: 'style', table: 'styles.csv' }],
    about: 'What of such parts can be bought today.',
  },
  'kinds/triage.csv': {
    row: kindTriageRow,
    key: ['id'],
    references: [
      source,
      { column: 'kinds', table: 'kinds/kinds.csv', many: true },
      { column: 'types', table: 'kinds/types.csv', many: true },
    ],
    about: 'Whether an old part of such a kind needs replacing at all.',
  },
} as const satisfies Record<string, Table>;
