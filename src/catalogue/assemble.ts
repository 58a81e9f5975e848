import type { Catalogue } from '../engine/catalogue.ts';
import type { DeviceTables } from '../schemas/devices.ts';
import { deviceTables } from '../schemas/device-tables.ts';
import type { JobTables } from '../schemas/job.ts';
import { jobTables } from '../schemas/job-tables.ts';
import type { LookTables } from '../schemas/look.ts';
import { lookTables } from '../schemas/look-tables.ts';
import type { MarkingTables } from '../schemas/markings.ts';
import { markingTables } from '../schemas/marking-tables.ts';
import { valuesOf, type TableName, type Tables } from './read-folder.ts';
import { settle } from './settle.ts';
import { toSi } from './to-si.ts';
import { settleBands } from './settle-bands.ts';

const byId = <Row extends { id: string }>(rows: readonly Row[]): Record<string, Row> =>
  Object.fromEntries(rows.map((row) => [row.id, row]));

/** The tables of a registry under the names that it gives them. */
const named = <Named>(
  tables: Tables,
  registry: Readonly<Partial<Record<TableName, { name: string }>>>,
): Named => {
  const files = Object.keys(registry) as TableName[];
  // The registry pairs each name with the schema of its rows, so the values agree with the names.
  return Object.fromEntries(
    files.map((file) => [registry[file]?.name, valuesOf(tables, file)]),
  ) as Named;
};

/** Makes the catalogue out of tables; rows with a fault of their own are left out. */
export const assembleCatalogue = (tables: Tables): Catalogue => {
  const units = Object.fromEntries(valuesOf(tables, 'units.csv').map((row) => [row.unit, row]));
  const types = valuesOf(tables, 'types.csv');
  const kindTypes = valuesOf(tables, 'kinds/types.csv');
  const properties = [
    ...valuesOf(tables, 'properties.csv'),
    ...valuesOf(tables, 'kinds/properties.csv'),
  ];
  const figures = valuesOf(tables, 'figures.csv');
  const bandedFigures = valuesOf(tables, 'kinds/figures-by-value.csv');
  const absorptionTests = valuesOf(tables, 'absorption-tests.csv');
  return {
    sources: byId(valuesOf(tables, 'sources.csv')),
    units,
    types: byId(types),
    families: byId(valuesOf(tables, 'families.csv')),
    properties: byId(properties),
    figures,
    bandedFigures,
    knowledge: settle({
      types: [...types, ...kindTypes.map(({ id }) => ({ id, union_of: [] }))],
      properties,
      figures,
      absorptionTests,
      units,
    }),
    bands: settleBands(bandedFigures, { properties, absorptionTests, units }),
    absorptionTests: byId(absorptionTests),
    offers: valuesOf(tables, 'market.csv'),
    kinds: byId(valuesOf(tables, 'kinds/kinds.csv')),
    kindTypes: byId(kindTypes),
    kindPositions: byId(valuesOf(tables, 'kinds/positions.csv')),
    kindOffers: valuesOf(tables, 'kinds/offers.csv'),
    kindValues: valuesOf(tables, 'kinds/values.csv'),
    bodies: valuesOf(tables, 'bodies.csv'),
    typeLooks: valuesOf(tables, 'type-looks.csv'),
    seriesResistance: valuesOf(tables, 'series-resistance.csv'),
    rippleByFrequency: valuesOf(tables, 'ripple-by-frequency.csv'),
    rippleByTemperature: valuesOf(tables, 'ripple-by-temperature.csv'),
    coreRises: valuesOf(tables, 'core-rise.csv'),
    pulseRatings: valuesOf(tables, 'pulse-ratings.csv'),
    series: valuesOf(tables, 'e-series.csv'),
    valueLists: valuesOf(tables, 'value-lists.csv'),
    voltages: valuesOf(tables, 'voltages.csv'),
    positions: byId(valuesOf(tables, 'positions.csv')),
    positionNotes: valuesOf(tables, 'position-notes.csv'),
    conditionDefinitions: byId(valuesOf(tables, 'condition-definitions.csv')),
    conditions: valuesOf(tables, 'conditions.csv'),
    demands: valuesOf(tables, 'demands.csv'),
    findings: byId(valuesOf(tables, 'findings.csv')),
    sumInputs: valuesOf(tables, 'sum-inputs.csv'),
    verdictRules: valuesOf(tables, 'verdict-rules.csv'),
    unlikelyPairs: valuesOf(tables, 'unlikely-pairs.csv'),
    guidelines: byId(valuesOf(tables, 'guidelines.csv')),
    derating: valuesOf(tables, 'derating.csv'),
    categoryVoltages: valuesOf(tables, 'category-voltages.csv'),
    mountings: Object.fromEntries(
      valuesOf(tables, 'styles.csv').map(({ style, mounting }) => [style, mounting]),
    ),
    seldomStyles: valuesOf(tables, 'styles.csv')
      .filter(({ kept_by: by }) => by === 'few')
      .map(({ style }) => style),
    rulesOfThumb: Object.fromEntries(
      valuesOf(tables, 'rules-of-thumb.csv').map(({ id, values, unit }) => [
        id,
        values.map((value) => toSi(value, unit, units) ?? NaN),
      ]),
    ),
    combinations: byId(valuesOf(tables, 'combinations.csv')),
    triage: valuesOf(tables, 'triage.csv'),
    kindTriage: valuesOf(tables, 'kinds/triage.csv'),
    esrOfNew: valuesOf(tables, 'esr-of-new.csv'),
    leakageLimits: valuesOf(tables, 'leakage-limits.csv'),
    reforming: valuesOf(tables, 'reforming.csv'),
    cautions: valuesOf(tables, 'cautions.csv'),
    benchWords: valuesOf(tables, 'bench-words.csv'),
    inPlaceOf: valuesOf(tables, 'in-place-of.csv'),
    markings: named<MarkingTables>(tables, markingTables),
    look: named<LookTables>(tables, lookTables),
    job: named<JobTables>(tables, jobTables),
    devices: named<DeviceTables>(tables, deviceTables),
  };
};
