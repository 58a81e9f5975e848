import { PROPERTIES_FOR_COMBINING } from '../../engine/candidates/combinations.ts';
import type { Catalogue, PositionId } from '../../engine/catalogue.ts';
import { drawnSchemes } from '../../engine/colours/bands-of.ts';
import {
  askedBy,
  dropped,
  eachWithout,
  tellingFamilies,
  nothing,
  pick,
  sumInputsOf,
  without,
  withoutLeads,
} from './slice-pieces.ts';
import { sliceSizes } from './slice-sizes.ts';

/** Properties that the findings of a position need, their sums, or a stand-in made of two parts. */
const neededProperties = (catalogue: Catalogue, findings: ReadonlySet<string>): Set<string> =>
  new Set([
    ...PROPERTIES_FOR_COMBINING,
    ...sumInputsOf(catalogue, findings).flatMap(({ takes, of }) => (takes === 'words' ? [] : of)),
    ...Object.values(catalogue.findings)
      .filter((finding) => findings.has(finding.id))
      .flatMap((finding) => finding.properties),
  ]);

/**
 * The part of the catalogue that assessments in one position need: every type, but only the
 * properties, conditions and sources that this position speaks of.
 */
export const slicePosition = (catalogue: Catalogue, position: PositionId): Catalogue => {
  const demands = catalogue.demands.filter((demand) => demand.position === position);
  const conditions = catalogue.conditions.filter((row) => row.position === position);
  const findings = new Set(demands.map((demand) => demand.finding));
  const properties = neededProperties(catalogue, findings);
  const knowledge = Object.fromEntries(
    Object.entries(catalogue.knowledge).map(([type, known]) => [type, pick(known, properties)]),
  );
  const derating = catalogue.derating.map((row) => without(row, ['locator', 'note']));
  const categoryVoltages = catalogue.categoryVoltages.map((row) =>
    without(row, ['locator', 'note']),
  );
  const sizes = sliceSizes(catalogue, findings);
  const cited = new Set([
    ...Object.values(knowledge).flatMap((known) => Object.values(known).flatMap((k) => k.sources)),
    ...demands.map((demand) => demand.source),
    ...catalogue.offers.map((row) => row.source),
    ...derating.map((row) => row.source),
    ...categoryVoltages.map((row) => row.source),
    ...Object.values(sizes).flatMap((rows) => rows.map((row) => row.source)),
    ...Object.values(catalogue.combinations).map((row) => row.source),
    ...[...findings].map((finding) => catalogue.findings[finding]?.source ?? ''),
  ]);
  const sources = Object.fromEntries(
    Object.entries(pick(catalogue.sources, cited)).map(([id, row]) => [
      id,
      without({ ...row, year: undefined }, ['publisher', 'url']),
    ]),
  );
  const types = eachWithout(catalogue.types, [
    'appearance',
    'summary',
    'failure',
    'locator',
    'note',
  ]);
  return {
    ...nothing(catalogue),
    sources,
    units: catalogue.units,
    types,
    families: tellingFamilies(catalogue),
    properties: Object.fromEntries(
      Object.entries(pick(catalogue.properties, properties)).map(([id, row]) => [
        id,
        without(row, ['meaning']),
      ]),
    ),
    knowledge,
    absorptionTests: findings.has('absorption') ? catalogue.absorptionTests : {},
    offers: catalogue.offers.map((row) => without(row, ['locator', 'note'])),
    ...sizes,
    valueLists: catalogue.valueLists.map((row) => without(row, ['locator', 'note', 'source'])),
    voltages: catalogue.voltages.map((row) => without(row, ['locator', 'note', 'source'])),
    positions: eachWithout(pick(catalogue.positions, [position]), [
      'summary',
      'decisive',
      'larger',
      'smaller',
      'locator',
      'note',
    ]),
    ...askedBy(catalogue, { conditions, demands, findings }),
    sumInputs: sumInputsOf(catalogue, findings),
    verdictRules: catalogue.verdictRules,
    guidelines: eachWithout(catalogue.guidelines, ['summary', 'locator', 'note', 'source']),
    triage: catalogue.triage.filter(
      (row) => row.positions.length === 0 || row.positions.includes(position),
    ),
    esrOfNew: catalogue.esrOfNew.map((row) => without(row, ['locator', 'note', 'source'])),
    leakageLimits: catalogue.leakageLimits.map((row) =>
      without(row, ['locator', 'note', 'source']),
    ),
    reforming: catalogue.reforming.map((row) => without(row, ['locator', 'note'])),
    derating,
    categoryVoltages,
    mountings: withoutLeads(catalogue),
    seldomStyles: catalogue.seldomStyles,
    rulesOfThumb: catalogue.rulesOfThumb,
    combinations: eachWithout(catalogue.combinations, ['locator', 'note']),
  };
};

type MarkingTable = keyof Catalogue['markings'];

/** Tables that only reading colours needs, and those of printed markings that it needs as well. */
const COLOUR_TABLES: readonly MarkingTable[] = [
  'colours',
  'colourForms',
  'colourLayouts',
  'colourSchemes',
  'colourMeanings',
];
const WITH_COLOURS: readonly MarkingTable[] = [
  ...COLOUR_TABLES,
  'temperatureSystems',
  'class1Codes',
  'oldMantissas',
];

/** Columns that tell where a row comes from, of tables that are only searched. */
const PROVENANCE = ['locator', 'note', 'source', 'basis'] as const;

/** The marking tables without the words that only the pages of codes show. */
const withoutPageWords = (markings: Catalogue['markings']): Catalogue['markings'] => ({
  ...markings,
  temperatureSystems: markings.temperatureSystems.map((row) => dropped(row, ['letter_where'])),
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

/** Where rows were found, which readers are told by their source alone. */
type Found = Partial<Record<'locator' | 'basis', unknown>>;

/** Marking tables without where each row was found: a first visit keeps them. */
const withoutFound = (markings: Catalogue['markings']): Catalogue['markings'] =>
  Object.fromEntries(
    Object.entries(markings).map(([table, rows]) => [
      table,
      rows.map((row: Found) => dropped(row, ['locator', 'basis'])),
    ]),
  ) as unknown as Catalogue['markings'];

/** Words of types besides capacitors that only their own pages show. */
const KIND_TYPE_WORDS = ['appearance', 'summary', 'failure', 'locator', 'note'] as const;

/** The part of the catalogue that reading a marking and naming types and positions need. */
export const sliceReading = (catalogue: Catalogue): Catalogue => ({
  ...nothing(catalogue),
  units: catalogue.units,
  series: catalogue.series.map((row) => dropped(row, PROVENANCE)),
  types: eachWithout(catalogue.types, ['appearance', 'failure', 'locator', 'note']),
  positions: eachWithout(catalogue.positions, ['decisive', 'larger', 'smaller', 'locator', 'note']),
  // That they are not met is all that is asked of them here, and they grow as types times positions.
  unlikelyPairs: catalogue.unlikelyPairs.map((row) => dropped(row, ['why', ...PROVENANCE])),
  kinds: catalogue.kinds,
  kindTypes: eachWithout(catalogue.kindTypes, KIND_TYPE_WORDS),
  kindPositions: eachWithout(catalogue.kindPositions, [
    'summary',
    'decisive',
    'larger',
    'smaller',
    'locator',
    'note',
  ]),
  devices: {
    ...nothing(catalogue).devices,
    functions: catalogue.devices.functions.map((row) => dropped(row, ['socket_pins'])),
    devices: catalogue.devices.devices.map((row) =>
      without(row, ['summary', 'trap', 'locator', 'note', 'source']),
    ),
    uses: catalogue.devices.uses.map((row) =>
      without(row, ['summary', 'decisive', 'symptom', 'trap', 'locator', 'note', 'source']),
    ),
    families: catalogue.devices.families.map((row) => without(row, ['name', 'one', 'summary'])),
    affixes: catalogue.devices.affixes.map((row) => dropped(row, PROVENANCE)),
    besideWords: catalogue.devices.besideWords.map((row) => dropped(row, PROVENANCE)),
    numberSystems: catalogue.devices.numberSystems.map((row) => dropped(row, PROVENANCE)),
    knownNumbers: catalogue.devices.knownNumbers.map((row) =>
      dropped(row, ['list', ...PROVENANCE]),
    ),
    pinouts: catalogue.devices.pinouts.map((row) => dropped(row, ['name', 'view', 'name_body'])),
  },
  job: {
    ...nothing(catalogue).job,
    kindWords: catalogue.job.kindWords.map((row) => without(row, ['locator', 'note', 'source'])),
    besideKindWords: catalogue.job.besideKindWords.map((row) => dropped(row, PROVENANCE)),
  },
  markings: {
    ...withoutFound(markingsOf(catalogue, (table) => !COLOUR_TABLES.includes(table))),
    // By their names one sees that someone typed colours.
    colours: catalogue.markings.colours.map((row) =>
      without(row, ['fill', 'locator', 'note', 'source']),
    ),
  },
});

/** The same for reading colours, which nothing but a capacitor or a resistor is marked with here. */
export const sliceColours = (catalogue: Catalogue): Catalogue => ({
  ...sliceReading(catalogue),
  series: [],
  devices: nothing(catalogue).devices,
  job: nothing(catalogue).job,
  markings: {
    ...markingsOf(catalogue, (table) => WITH_COLOURS.includes(table)),
    colours: catalogue.markings.colours.map((row) => without(row, ['locator', 'note', 'source'])),
    colourMeanings: catalogue.markings.colourMeanings.map((row) =>
      without(row, ['locator', 'note']),
    ),
  },
});

/** The part of the catalogue that naming a part by its look needs. */
export const sliceLook = (catalogue: Catalogue): Catalogue => {
  const { look, markings } = catalogue;
  const empty = nothing(catalogue);
  const asked = new Set([...look.questions, ...look.ranges].map(({ unit }) => unit));
  return {
    ...empty,
    units: pick(catalogue.units, asked),
    cautions: catalogue.cautions
      .filter(({ severity, types }) => severity === 'danger' && types.length > 0)
      .map((row) => without(row, ['text', 'locator', 'note', 'source'])),
    markings: {
      ...empty.markings,
      colours: markings.colours.map((row) => without(row, ['locator', 'note', 'source'])),
    },
    look: {
      ...look,
      styles: look.styles.map((row) => without(row, ['locator', 'note', 'source'])),
      questions: look.questions.map((row) => without(row, ['text', 'hint', 'how'])),
      answers: look.answers.map((row) => without(row, ['meaning', 'drawn'])),
      features: look.features.map((row) => without(row, ['locator'])),
      ranges: look.ranges.map((row) => without(row, ['locator'])),
      disguises: look.disguises.map((row) => without(row, ['locator', 'note'])),
      weights: look.weights.map((row) => without(row, ['meaning', 'locator', 'note'])),
    },
  };
};

/** The part of the catalogue that the papers of a job need beside the slices of its positions. */
export const sliceJob = (catalogue: Catalogue): Catalogue => ({
  ...nothing(catalogue),
  units: catalogue.units,
  types: eachWithout(catalogue.types, ['appearance', 'failure', 'locator', 'note']),
  kinds: catalogue.kinds,
  kindTypes: eachWithout(catalogue.kindTypes, KIND_TYPE_WORDS),
  devices: {
    ...nothing(catalogue).devices,
    devices: catalogue.devices.devices.map((row) =>
      without(row, ['summary', 'trap', 'locator', 'note', 'source']),
    ),
  },
  cautions: catalogue.cautions,
  mountings: withoutLeads(catalogue),
  rulesOfThumb: pick(catalogue.rulesOfThumb, ['valve-rating']),
  job: {
    ...nothing(catalogue).job,
    fittingOrder: catalogue.job.fittingOrder,
    closingChecks: catalogue.job.closingChecks,
    benchFields: catalogue.job.benchFields,
    leadForming: catalogue.job.leadForming,
    columnWords: catalogue.job.columnWords,
    designatorLetters: catalogue.job.designatorLetters
      .filter(({ kind }) => kind !== '')
      .map((row) => without(row, ['locator', 'note', 'source'])),
  },
});

/** The part of the catalogue that drawings need beside the sizes of a position's slice. */
export const sliceDrawings = (catalogue: Catalogue): Catalogue => {
  const empty = nothing(catalogue);
  const { colours, toleranceLetters, colourMeanings } = catalogue.markings;
  const banded = drawnSchemes(catalogue.markings);
  const codes = new Set(banded.flatMap((scheme) => scheme.codes));
  return {
    ...empty,
    typeLooks: catalogue.typeLooks.map((row) => without(row, ['locator', 'note'])),
    job: {
      ...empty.job,
      packageLooks: catalogue.job.packageLooks.map((row) => without(row, ['locator', 'note'])),
      partOutlines: catalogue.job.partOutlines.map((row) => without(row, ['locator', 'note'])),
    },
    markings: {
      ...empty.markings,
      colours: colours.map((row) => without(row, ['locator', 'note', 'source'])),
      toleranceLetters: toleranceLetters.map((row) => without(row, ['locator', 'note', 'source'])),
      colourSchemes: banded.map((row) => without(row, ['locator', 'note', 'source', 'about'])),
      colourMeanings: colourMeanings
        .filter(({ code }) => codes.has(code))
        .map((row) => without(row, ['locator', 'note', 'source', 'word', 'types'])),
    },
  };
};

/** The part of the catalogue that assessments of one family of devices need. */
export const sliceDevices = (catalogue: Catalogue, family: string): Catalogue => {
  const { devices } = catalogue;
  const own = devices.devices.filter((device) => device.family === family);
  const owners = new Set(own.flatMap((device) => [device.id, ...device.series]));
  const orders = new Set(own.flatMap((device) => device.pinouts));
  const functions = new Set(own.map((device) => device.function));
  const uses = devices.uses.filter((use) => use.functions.some((one) => functions.has(one)));
  const ofUse = ({ position }: { position: string }): boolean =>
    uses.some(({ id }) => id === position);
  const figures = devices.figures.filter((row) => owners.has(row.of) && row.use === 'used');
  const pins = devices.pins.filter((row) => orders.has(row.pinout));
  const demands = devices.demands.filter(ofUse);
  const asked = new Set(demands.map(({ finding }) => finding));
  const cited = new Set([...figures, ...pins, ...demands].map((row) => row.source));
  return {
    ...nothing(catalogue),
    units: catalogue.units,
    verdictRules: catalogue.verdictRules,
    sources: eachWithout(pick(catalogue.sources, cited), ['publisher', 'url']),
    devices: {
      ...devices,
      devices: own.map((row) => without(row, ['locator', 'note'])),
      figures: figures.map((row) => without(row, ['locator', 'note', 'conditions'])),
      pinouts: devices.pinouts.filter(({ id }) => orders.has(id)),
      pins: pins.map((row) => without(row, ['locator', 'note'])),
      uses,
      findings: devices.findings.filter(({ id }) => asked.has(id)),
      conditions: devices.conditions.filter(ofUse),
      demands: demands.map((row) => without(row, ['locator', 'note'])),
      affixes: [],
      besideWords: [],
      numberSystems: [],
      knownNumbers: [],
    },
  };
};
