import { isChip } from '../../engine/assessment/mounting.ts';
import type { Catalogue } from '../../engine/catalogue.ts';
import { TRADE } from '../../engine/markings/lexicon/trade.ts';
import {
  CITED,
  dropped,
  eachWithout,
  NOTED,
  nothing,
  pick,
  RULES_OF_LINES,
  POSITION_WORDS,
  PROVENANCE,
  TYPE_WORDS,
  without,
  withoutLeads,
} from './slice-pieces.ts';

type MarkingTable = keyof Catalogue['markings'];

/** Tables that only reading colours needs, and those of printed markings that it needs as well. */
const COLOUR_TABLES: readonly MarkingTable[] = [
  'colours',
  'colourForms',
  'colourLayouts',
  'colourSchemes',
  'colourMeanings',
  'colourWeights',
];
const WITH_COLOURS: readonly MarkingTable[] = [
  ...COLOUR_TABLES,
  'temperatureSystems',
  'class1Codes',
  'oldMantissas',
  'seriesTolerances',
];

/** Tables that nothing is read by: they are shown on their own pages alone. */
const SHOWN_ALONE: readonly MarkingTable[] = ['ambiguities'];

/** The marking tables without the words that only the pages of codes show. */
const withoutPageWords = (markings: Catalogue['markings']): Catalogue['markings'] => ({
  ...markings,
  temperatureSystems: markings.temperatureSystems.map((row) => dropped(row, ['letter_where'])),
  markGroups: markings.markGroups.map((row) => dropped(row, ['name', ...PROVENANCE])),
  metCodes: markings.metCodes.map((row) => dropped(row, PROVENANCE)),
  voltageSchemes: markings.voltageSchemes.map((row) =>
    dropped(row, ['name', 'where', ...PROVENANCE]),
  ),
});

/** The marking tables with those left empty that are not kept. */
const markingsOf = (
  { markings }: Catalogue,
  kept: (table: MarkingTable) => boolean,
): Catalogue['markings'] =>
  Object.fromEntries(
    Object.entries(withoutPageWords(markings)).map(([table, rows]) => [
      table,
      kept(table as MarkingTable) ? rows : [],
    ]),
  ) as unknown as Catalogue['markings'];

/** Tables of what is printed whose notes stand beside what may be printed. */
const PRINTED_WITH_NOTES: readonly string[] = [
  'printedUnits',
  'valueForms',
  'pointLetters',
  'mantissaLetters',
  'resistorForms',
  'toleranceLetters',
  'dielectricCodes',
  'tapers',
  'arrangements',
] satisfies MarkingTable[];

/** What the pages of a table say of where its rows were found; readers are told the source alone. */
type Found = Partial<Record<'locator' | 'basis' | 'note', unknown>>;

/** Marking tables without what only their own pages show of each row: a first visit keeps them. */
const withoutFound = (markings: Catalogue['markings']): Catalogue['markings'] =>
  Object.fromEntries(
    Object.entries(markings).map(([table, rows]) => [
      table,
      rows.map((row: Found) =>
        PRINTED_WITH_NOTES.includes(table)
          ? dropped(row, ['locator', 'basis'])
          : dropped(row, ['locator', 'basis', 'note']),
      ),
    ]),
  ) as unknown as Catalogue['markings'];

/** Offers of the types that are sold on pads alone: they tell that old boards seldom have them. */
const chipsAlone = (catalogue: Catalogue): Catalogue['kindOffers'] => {
  const { kindOffers } = catalogue;
  const leaded = new Set(
    kindOffers.filter(({ style }) => !isChip(catalogue, style)).map(({ type }) => type),
  );
  return kindOffers.filter(({ type }) => !leaded.has(type)).map((row) => without(row, NOTED));
};

/** Rules of thumb that a reading leads on by, whatever it was read from. */
const LEADING_ON = ['beyond-usual'];

/** The part of the catalogue that reading a marking and naming types and positions need. */
export const sliceReading = (catalogue: Catalogue): Catalogue => ({
  ...nothing(catalogue),
  units: catalogue.units,
  series: catalogue.series.map((row) => dropped(row, PROVENANCE)),
  types: eachWithout(catalogue.types, ['appearance', 'failure', ...NOTED]),
  positions: eachWithout(catalogue.positions, ['decisive', 'larger', 'smaller', ...NOTED]),
  // That they are not met is all that is asked of them here, and they grow as types times positions.
  unlikelyPairs: catalogue.unlikelyPairs.map((row) => dropped(row, ['why', ...PROVENANCE])),
  benchWords: catalogue.benchWords.map((row) => dropped(row, PROVENANCE)),
  rulesOfThumb: pick(catalogue.rulesOfThumb, [
    ...Object.values(TRADE),
    ...RULES_OF_LINES,
    ...LEADING_ON,
  ]),
  inPlaceOf: catalogue.inPlaceOf.map((row) => dropped(row, ['locator', 'note'])),
  kinds: catalogue.kinds,
  kindTypes: eachWithout(catalogue.kindTypes, TYPE_WORDS),
  kindOffers: chipsAlone(catalogue),
  mountings: withoutLeads(catalogue),
  kindPositions: eachWithout(catalogue.kindPositions, POSITION_WORDS),
  devices: {
    ...nothing(catalogue).devices,
    functions: catalogue.devices.functions.map((row) => dropped(row, ['socket_pins'])),
    devices: catalogue.devices.devices.map((row) =>
      dropped(row, ['summary', 'trap', ...PROVENANCE]),
    ),
    uses: catalogue.devices.uses.map((row) =>
      dropped(row, ['summary', 'decisive', 'symptom', 'trap', ...PROVENANCE]),
    ),
    families: catalogue.devices.families.map((row) => without(row, ['name', 'one', 'summary'])),
    affixes: catalogue.devices.affixes.map((row) => dropped(row, PROVENANCE)),
    besideWords: catalogue.devices.besideWords.map((row) => dropped(row, PROVENANCE)),
    numberSystems: catalogue.devices.numberSystems.map((row) => dropped(row, PROVENANCE)),
    knownNumbers: catalogue.devices.knownNumbers.map((row) => dropped(row, PROVENANCE)),
    pinouts: catalogue.devices.pinouts.map((row) => dropped(row, ['name', 'view', 'name_body'])),
  },
  job: {
    ...nothing(catalogue).job,
    kindWords: catalogue.job.kindWords.map((row) => dropped(row, PROVENANCE)),
    besideKindWords: catalogue.job.besideKindWords.map((row) => dropped(row, PROVENANCE)),
    toldKinds: catalogue.job.toldKinds.map((row) => dropped(row, PROVENANCE)),
    usualParts: catalogue.job.usualParts.map((row) => dropped(row, PROVENANCE)),
    usualPlaces: catalogue.job.usualPlaces.map((row) => dropped(row, PROVENANCE)),
    // What a part is named beside does not outweigh the letters of its designator.
    designatorLetters: catalogue.job.designatorLetters
      .filter(({ kind }) => kind !== '')
      .map((row) => dropped(row, PROVENANCE)),
  },
  markings: {
    ...withoutFound(
      markingsOf(
        catalogue,
        (table) => !COLOUR_TABLES.includes(table) && !SHOWN_ALONE.includes(table),
      ),
    ),
    // By their names one sees that someone typed colours.
    colours: catalogue.markings.colours.map((row) => without(row, ['fill', ...CITED])),
  },
});

/** The same for reading colours, which nothing but a capacitor or a resistor is marked with here. */
export const sliceColours = (catalogue: Catalogue): Catalogue => ({
  ...sliceReading(catalogue),
  benchWords: [],
  kindOffers: [],
  mountings: {},
  inPlaceOf: [],
  series: [],
  rulesOfThumb: pick(catalogue.rulesOfThumb, [...LEADING_ON, TRADE.largestAt1kHz]),
  devices: nothing(catalogue).devices,
  job: nothing(catalogue).job,
  markings: {
    ...markingsOf(catalogue, (table) => WITH_COLOURS.includes(table)),
    colours: catalogue.markings.colours.map((row) => without(row, CITED)),
    colourMeanings: catalogue.markings.colourMeanings.map((row) => without(row, NOTED)),
    seriesTolerances: catalogue.markings.seriesTolerances.map((row) => dropped(row, PROVENANCE)),
    colourWeights: catalogue.markings.colourWeights.map((row) =>
      dropped(row, ['meaning', ...PROVENANCE]),
    ),
  },
});
