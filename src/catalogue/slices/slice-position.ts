import { PROPERTIES_FOR_COMBINING } from '../../engine/candidates/combinations.ts';
import type { Catalogue, PositionId } from '../../engine/catalogue.ts';
import {
  askedBy,
  CITED,
  eachWithout,
  NOTED,
  nothing,
  pick,
  POSITION_WORDS,
  sumInputsOf,
  tellingFamilies,
  TYPE_WORDS,
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
  const derating = catalogue.derating.map((row) => without(row, NOTED));
  const categoryVoltages = catalogue.categoryVoltages.map((row) => without(row, NOTED));
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
  const types = eachWithout(catalogue.types, TYPE_WORDS);
  return {
    ...nothing(catalogue),
    sources,
    units: catalogue.units,
    types,
    families: tellingFamilies(catalogue),
    properties: eachWithout(pick(catalogue.properties, properties), ['meaning']),
    knowledge,
    absorptionTests: findings.has('absorption') ? catalogue.absorptionTests : {},
    offers: catalogue.offers.map((row) => without(row, NOTED)),
    ...sizes,
    valueLists: catalogue.valueLists.map((row) => without(row, CITED)),
    voltages: catalogue.voltages.map((row) => without(row, CITED)),
    positions: eachWithout(pick(catalogue.positions, [position]), POSITION_WORDS),
    ...askedBy(catalogue, { conditions, demands, findings }),
    sumInputs: sumInputsOf(catalogue, findings),
    verdictRules: catalogue.verdictRules,
    guidelines: eachWithout(catalogue.guidelines, ['summary', ...CITED]),
    triage: catalogue.triage.filter(
      (row) => row.positions.length === 0 || row.positions.includes(position),
    ),
    esrOfNew: catalogue.esrOfNew.map((row) => without(row, CITED)),
    leakageLimits: catalogue.leakageLimits.map((row) => without(row, CITED)),
    reforming: catalogue.reforming.map((row) => without(row, NOTED)),
    derating,
    categoryVoltages,
    mountings: withoutLeads(catalogue),
    seldomStyles: catalogue.seldomStyles,
    rulesOfThumb: catalogue.rulesOfThumb,
    combinations: eachWithout(catalogue.combinations, NOTED),
  };
};
