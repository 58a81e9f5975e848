import type { Catalogue, PositionId } from '../../engine/catalogue.ts';
import type { RuleOfThumb } from '../../engine/rule-of-thumb.ts';
import {
  askedBy,
  CITED,
  eachWithout,
  NOTED,
  nothing,
  pick,
  POSITION_WORDS,
  RULES_OF_SURENESS,
  sumInputsOf,
  TYPE_WORDS,
  without,
  withoutLeads,
} from './slice-pieces.ts';

const RULES_OF_FINDINGS: readonly RuleOfThumb[] = [
  ...RULES_OF_SURENESS,
  'halving',
  'resistor-power-in-hand',
  'thermal-noise-over',
  'chain-tolerance',
  'chain-value',
  'overload-times',
  'overload-times-limit',
  'overload-time',
];
/** By these an answer names one of the parts that fit equally; those that go by capacitance are left out. */
const RULES_OF_ANSWERS: readonly RuleOfThumb[] = [
  'against-pair',
  'against-rare',
  'against-other-family',
  'against-less-common',
  'against-special',
  'against-away',
];

/** Ids of the types of one kind. */
const typesOf = ({ kindTypes }: Catalogue, kind: string): string[] =>
  Object.values(kindTypes)
    .filter((type) => type.kind === kind)
    .map(({ id }) => id);

/** What is known of some types, as far as some properties go. */
const knownOf = <Known>(
  record: Readonly<Record<string, Readonly<Record<string, Known>>>>,
  types: readonly string[],
  properties: ReadonlySet<string>,
): Record<string, Record<string, Known>> =>
  Object.fromEntries(
    Object.entries(pick(record, types)).map(([type, known]) => [type, pick(known, properties)]),
  );

/**
 * The part of the catalogue that assessments in one position of a kind besides capacitors need: every
 * type of that kind, but only the properties, conditions and sources that this position speaks of.
 * @throws if the catalogue has no such position
 */
export const sliceKindPosition = (catalogue: Catalogue, position: PositionId): Catalogue => {
  const kind = catalogue.kindPositions[position]?.kind;
  if (kind === undefined) throw new Error(`no kind has a position ${position}`);
  const types = typesOf(catalogue, kind);
  const demands = catalogue.demands.filter((demand) => demand.position === position);
  const conditions = catalogue.conditions.filter((row) => row.position === position);
  const findings = new Set(demands.map((demand) => demand.finding));
  const sumInputs = sumInputsOf(catalogue, findings);
  const properties = new Set([
    ...(catalogue.kinds[kind]?.ordered ?? []),
    ...sumInputs.flatMap(({ takes, of }) => (takes === 'words' ? [] : of)),
    ...Object.values(pick(catalogue.findings, findings)).flatMap((row) => row.properties),
    // A voltage that follows from the power of the old part is no more than its body stood.
    ...(conditions.some(({ follows }) => follows === 'power') ? ['voltage-limit'] : []),
    // What readings of an old part are judged by.
    'full-load-change',
  ]);
  const offers = catalogue.kindOffers.filter(({ type }) => types.includes(type));
  const knowledge = knownOf(catalogue.knowledge, types, properties);
  const bands = knownOf(catalogue.bands, types, properties);
  const known = [
    ...Object.values(knowledge).flatMap((one) => Object.values(one)),
    ...Object.values(bands).flatMap((one) =>
      Object.values(one).flatMap((some) => some.map((band) => band.knowledge)),
    ),
  ];
  const cited = new Set([
    ...known.flatMap(({ sources }) => sources),
    ...demands.map(({ source }) => source),
    ...offers.map(({ source }) => source),
    ...[...findings].map((finding) => catalogue.findings[finding]?.source ?? ''),
  ]);
  return {
    ...nothing(catalogue),
    sources: eachWithout(pick(catalogue.sources, cited), ['publisher', 'url']),
    units: catalogue.units,
    kinds: pick(catalogue.kinds, [kind]),
    kindTypes: eachWithout(pick(catalogue.kindTypes, types), TYPE_WORDS),
    kindPositions: eachWithout(pick(catalogue.kindPositions, [position]), [
      ...POSITION_WORDS,
      'source',
    ]),
    kindOffers: offers.map((row) => without(row, NOTED)),
    kindValues: catalogue.kindValues.map((row) => without(row, CITED)),
    properties: eachWithout(pick(catalogue.properties, properties), ['meaning']),
    knowledge,
    bands,
    ...askedBy(catalogue, { conditions, demands, findings }),
    mountings: withoutLeads(catalogue),
    seldomStyles: catalogue.seldomStyles,
    rulesOfThumb: pick(catalogue.rulesOfThumb, [
      ...RULES_OF_FINDINGS,
      'meter-most-ohms',
      ...RULES_OF_ANSWERS,
    ]),
    sumInputs,
    verdictRules: catalogue.verdictRules,
    kindTriage: catalogue.kindTriage
      .filter((row) => row.kinds.includes(kind) || row.types.some((id) => types.includes(id)))
      .map((row) => without(row, ['locator'])),
  };
};
