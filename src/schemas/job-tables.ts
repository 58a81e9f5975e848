import { demoConditionRow, demoFoundRow, demoJobRow, demoPartRow, demoPresetRow } from './demo.ts';
import { drawingReferences } from './drawings.ts';
import {
  benchFieldRow,
  besideKindWordRow,
  closingCheckRow,
  columnWordRow,
  designatorLetterRow,
  fittingOrderRow,
  kindWordRow,
  leadFormingRow,
  packageLookRow,
  partOutlineRow,
  toldKindRow,
  usualPartRow,
  usualPlaceRow,
  type JobTables,
} from './job.ts';
import { source } from './references.ts';
import type { Reference, Table } from './table.ts';

/** A table of `data/job/` or `data/demo/`, and the property of the job tables that it fills. */
export interface JobTable extends Table {
  name: keyof JobTables;
}

const demo: Reference = { column: 'job', table: 'demo/jobs.csv' };

/** Every table that work on a whole board goes by, by file name. */
export const jobTables = {
  'job/fitting-order.csv': {
    name: 'fittingOrder',
    row: fittingOrderRow,
    key: ['id'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'In which order parts are fitted, and why.',
  },
  'job/closing-checks.csv': {
    name: 'closingChecks',
    row: closingCheckRow,
    key: ['id'],
    references: [
      source,
      { column: 'positions', table: 'positions.csv', many: true },
      { column: 'cautions', table: 'cautions.csv', many: true },
    ],
    about: 'Checks of a board after its parts are in.',
  },
  'job/bench-fields.csv': {
    name: 'benchFields',
    row: benchFieldRow,
    key: ['id'],
    references: [
      source,
      { column: 'unit', table: 'units.csv' },
      { column: 'families', table: 'families.csv', many: true },
    ],
    about: 'What is written down about a part at the bench.',
  },
  'job/package-looks.csv': {
    name: 'packageLooks',
    row: packageLookRow,
    key: ['id'],
    references: [source],
    about: 'Usual outlines of parts with two rows of pins.',
  },
  'job/part-outlines.csv': {
    name: 'partOutlines',
    row: partOutlineRow,
    key: ['id'],
    references: [
      source,
      { column: 'types', table: 'kinds/types.csv', many: true },
      ...drawingReferences,
    ],
    about: 'Usual outlines of resistors, trimmers, diodes, transistors and regulators.',
  },
  'job/lead-forming.csv': {
    name: 'leadForming',
    row: leadFormingRow,
    key: ['id'],
    references: [source],
    about: 'How leads are bent to another pitch.',
  },
  'demo/jobs.csv': {
    name: 'demoJobs',
    row: demoJobRow,
    key: ['id'],
    references: [],
    about: 'Invented jobs that show how a board is planned.',
  },
  'demo/parts.csv': {
    name: 'demoParts',
    row: demoPartRow,
    key: ['job', 'designators'],
    references: [
      demo,
      { column: 'type', table: 'types.csv', orTable: ['kinds/types.csv', 'devices/devices.csv'] },
      {
        column: 'position',
        table: 'positions.csv',
        orTable: ['kinds/positions.csv', 'devices/uses.csv'],
      },
    ],
    about: 'Parts of the invented jobs.',
  },
  'demo/found.csv': {
    name: 'demoFound',
    row: demoFoundRow,
    key: ['job', 'designators', 'reading'],
    references: [demo],
    about: 'Readings of the invented jobs.',
  },
  'demo/presets.csv': {
    name: 'demoPresets',
    row: demoPresetRow,
    key: ['job', 'designators'],
    references: [demo],
    about: 'Trimmers of the invented jobs.',
  },
  'demo/conditions.csv': {
    name: 'demoConditions',
    row: demoConditionRow,
    key: ['job', 'designators', 'condition'],
    references: [
      demo,
      {
        column: 'condition',
        table: 'condition-definitions.csv',
        orTable: 'devices/condition-definitions.csv',
      },
    ],
    about: 'Conditions of the invented jobs.',
  },
  'job/column-words.csv': {
    name: 'columnWords',
    row: columnWordRow,
    key: ['word'],
    references: [source],
    about: 'Words that head the columns of parts lists.',
  },
  'job/kind-words.csv': {
    name: 'kindWords',
    row: kindWordRow,
    key: ['word'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about: 'Words that people write for kinds of part.',
  },
  'job/beside-kind-words.csv': {
    name: 'besideKindWords',
    row: besideKindWordRow,
    key: ['word'],
    references: [source],
    about: 'Words beside the name of a kind that tell of its place or of what is around it.',
  },
  'job/told-kinds.csv': {
    name: 'toldKinds',
    row: toldKindRow,
    key: ['by', 'told'],
    references: [source],
    about: 'Kinds of part that a list of type numbers or a mark of other parts tells.',
  },
  'job/usual-parts.csv': {
    name: 'usualParts',
    row: usualPartRow,
    key: ['id'],
    references: [source, { column: 'types', table: 'types.csv', many: true }],
    about:
      'What a capacitor rather is by its value and volts alone; the first row that holds counts.',
  },
  'job/usual-places.csv': {
    name: 'usualPlaces',
    row: usualPlaceRow,
    key: ['id'],
    references: [source],
    about:
      'Where a part rather sits by its value and rating alone; the first row that holds counts.',
  },
  'job/designator-letters.csv': {
    name: 'designatorLetters',
    row: designatorLetterRow,
    key: ['letters'],
    references: [source],
    about: 'Letters that begin designators, and the kind of part that they usually stand for.',
  },
} as const satisfies Record<string, JobTable>;
