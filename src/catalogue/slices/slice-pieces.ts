import type { Catalogue } from '../../engine/catalogue.ts';
import type { RuleOfThumb } from '../../engine/rule-of-thumb.ts';
import type { SumInputRow } from '../../schemas/sums.ts';

/** Where in its source a row was found, and what is noted of it: only pages of the data tell. */
export const NOTED = ['locator', 'note'] as const;
/** The same with the source, for rows that nobody is told the source of. */
export const CITED = [...NOTED, 'source'] as const;
/** All that says where a row comes from. */
export const PROVENANCE = [...CITED, 'basis'] as const;
/** Words of types that only their own pages show. */
export const TYPE_WORDS = ['appearance', 'summary', 'failure', ...NOTED] as const;
/** Words of positions that only their own pages show. */
export const POSITION_WORDS = ['summary', 'decisive', 'larger', 'smaller', ...NOTED] as const;

/** Rules of thumb by which every finding is sure or not. */
export const RULES_OF_SURENESS: readonly RuleOfThumb[] = [
  'apart-likely',
  'apart-possible',
  'as-good-as-nothing',
];

/** Rules of thumb by which what a line of a list tells in part is completed. */
export const RULES_OF_LINES: readonly RuleOfThumb[] = [
  'valve-rating',
  'old-type-age',
  'rating-far-below',
  'looser-type',
  'unlike-tolerance',
];

/** The keys of a record that are named. */
export const pick = <Value>(
  record: Readonly<Record<string, Value>>,
  keys: Iterable<string>,
): Record<string, Value> =>
  Object.fromEntries(
    [...keys].flatMap((key) => {
      const value = record[key];
      return value === undefined ? [] : [[key, value]];
    }),
  );

/** A row without the words that only its own page shows. */
export const without = <Row extends object>(row: Row, columns: readonly (keyof Row)[]): Row => {
  const blank = columns.map((column) => [column, '']);
  return { ...row, ...Object.fromEntries(blank) };
};

/** A row without columns that nobody who has the slice looks at, not even blank: rows are many. */
export const dropped = <Row extends object>(row: Row, columns: readonly (keyof Row)[]): Row =>
  Object.fromEntries(
    Object.entries(row).filter(([column]) => !columns.includes(column as keyof Row)),
  ) as Row;

/** Named rows without the words that only their own pages show. */
export const eachWithout = <Row extends object>(
  rows: Readonly<Record<string, Row>>,
  columns: readonly (keyof Row)[],
): Record<string, Row> =>
  Object.fromEntries(Object.entries(rows).map(([id, row]) => [id, without(row, columns)]));

/** The families that a rule goes by; of the others nothing more is asked than their names. */
export const tellingFamilies = ({ families }: Catalogue): Catalogue['families'] =>
  Object.fromEntries(
    Object.entries(families)
      .filter(
        ([, { kin, set_by_hand: isSet, roomy, film_up_to: least }]) =>
          kin !== '' || isSet || roomy || least !== undefined,
      )
      .map(([id, row]) => [id, dropped(row, PROVENANCE)]),
  );

/** How styles are wired up that have no leads; all others have. */
export const withoutLeads = ({ mountings }: Catalogue): Catalogue['mountings'] =>
  Object.fromEntries(Object.entries(mountings).filter(([, mounting]) => mounting !== 'leads'));

/** A catalogue with nothing in it, to lay parts into. */
export const nothing = (catalogue: Catalogue): Catalogue => ({
  sources: {},
  units: {},
  types: {},
  families: {},
  properties: {},
  figures: [],
  bandedFigures: [],
  knowledge: {},
  bands: {},
  absorptionTests: {},
  offers: [],
  kinds: {},
  kindTypes: {},
  kindPositions: {},
  kindOffers: [],
  kindValues: [],
  bodies: [],
  typeLooks: [],
  seriesResistance: [],
  rippleByFrequency: [],
  rippleByTemperature: [],
  coreRises: [],
  pulseRatings: [],
  series: [],
  valueLists: [],
  voltages: [],
  positions: {},
  positionNotes: [],
  conditionDefinitions: {},
  conditions: [],
  demands: [],
  findings: {},
  sumInputs: [],
  verdictRules: [],
  unlikelyPairs: [],
  guidelines: {},
  derating: [],
  categoryVoltages: [],
  mountings: {},
  seldomStyles: [],
  rulesOfThumb: {},
  benchWords: [],
  inPlaceOf: [],
  combinations: {},
  triage: [],
  kindTriage: [],
  esrOfNew: [],
  leakageLimits: [],
  reforming: [],
  cautions: [],
  markings: Object.fromEntries(
    Object.keys(catalogue.markings).map((table) => [table, []]),
  ) as unknown as Catalogue['markings'],
  look: Object.fromEntries(
    Object.keys(catalogue.look).map((table) => [table, []]),
  ) as unknown as Catalogue['look'],
  job: Object.fromEntries(
    Object.keys(catalogue.job).map((table) => [table, []]),
  ) as unknown as Catalogue['job'],
  devices: Object.fromEntries(
    Object.keys(catalogue.devices).map((table) => [table, []]),
  ) as unknown as Catalogue['devices'],
});

/** How the bench sums are filled in that some findings lead to. */
export const sumInputsOf = (catalogue: Catalogue, findings: ReadonlySet<string>): SumInputRow[] => {
  const sums = new Set([...findings].map((finding) => catalogue.findings[finding]?.sum));
  return catalogue.sumInputs.filter(
    (row) => sums.has(row.sum) && (row.for.length === 0 || row.for.some((id) => findings.has(id))),
  );
};

/** What a position asks, without the words that stand on pages of their own. */
interface Asked extends Pick<Catalogue, 'conditions' | 'demands'> {
  /** Ids of the findings that its demands name. */
  findings: ReadonlySet<string>;
}

/** Conditions, demands and findings of a position of any kind of part. */
export const askedBy = (
  catalogue: Catalogue,
  { conditions, demands, findings }: Asked,
): Pick<Catalogue, 'conditionDefinitions' | 'conditions' | 'demands' | 'findings'> => ({
  conditionDefinitions: eachWithout(
    pick(
      catalogue.conditionDefinitions,
      conditions.map((row) => row.condition),
    ),
    ['meaning'],
  ),
  conditions: conditions.map((row) => without(row, CITED)),
  demands: demands.map((row) => without(row, NOTED)),
  findings: eachWithout(pick(catalogue.findings, findings), ['equation', 'meaning', ...NOTED]),
});
