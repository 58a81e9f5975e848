import type { Range } from './quantities/range.ts';
import type { SourceRow } from '../schemas/sources.ts';
import type {
  AbsorptionTestRow,
  FamilyRow,
  FigureRow,
  OfferRow,
  PropertyRow,
  StyleRow,
  TypeRow,
} from '../schemas/types.ts';
import type {
  BandedFigureRow,
  KindOfferRow,
  KindPositionRow,
  KindPropertyRow,
  KindRow,
  KindTypeRow,
} from '../schemas/kinds.ts';
import type {
  BodyRow,
  CoreRiseRow,
  PulseRatingRow,
  RippleFrequencyRow,
  RippleTemperatureRow,
  SeriesResistanceRow,
} from '../schemas/sizes.ts';
import type { SumInputRow } from '../schemas/sums.ts';
import type { SeriesRow, UnitRow, ValueListRow, VoltageRow } from '../schemas/values.ts';
import type {
  ConditionDefinitionRow,
  ConditionRow,
  DemandRow,
  FindingRow,
  PositionNoteRow,
  PositionRow,
  UnlikelyPairRow,
  VerdictRuleRow,
} from '../schemas/positions.ts';
import type { CategoryVoltageRow, DeratingRow, GuidelineRow } from '../schemas/derating.ts';
import type { TypeLookRow } from '../schemas/drawings.ts';
import type { CombinationRow } from '../schemas/combinations.ts';
import type { BenchWordRow } from '../schemas/bench-words.ts';
import type { InPlaceOfRow } from '../schemas/in-place-of.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { ReformingRow } from '../schemas/reforming.ts';
import type { EsrOfNewRow, KindTriageRow, LeakageLimitRow, TriageRow } from '../schemas/triage.ts';
import type { DeviceTables } from '../schemas/devices.ts';
import type { JobTables } from '../schemas/job.ts';
import type { LookTables } from '../schemas/look.ts';
import type { MarkingTables } from '../schemas/markings.ts';

export type KindId = string;
export type TypeId = string;
export type PropertyId = string;
export type PositionId = string;
export type ConditionId = string;
export type FindingId = string;
export type SourceId = string;
export type GuidelineId = string;
export type Basis = 'published' | 'common-practice' | 'memory';

/** What the figures about one property of one type come to, in SI units. */
export type Knowledge =
  | { status: 'known'; range: Range; basis: Basis; sources: SourceId[] }
  | { status: 'unknown'; sources: SourceId[] }
  | { status: 'not-applicable'; sources: SourceId[] };

/** From the least to the greatest; open at an end that is not given. */
export interface Bounds {
  least?: number;
  most?: number;
}

/** What is known of parts of a type with values or ratings in a band, both ends included, in SI. */
export interface Band {
  values?: Bounds;
  ratings?: Bounds;
  knowledge: Knowledge;
}

/** Everything the engine reckons from: the curated tables, and what their figures come to. */
export interface Catalogue {
  sources: Record<SourceId, SourceRow>;
  units: Record<string, UnitRow>;
  types: Record<TypeId, TypeRow>;
  /** What capacitors are made of. */
  families: Record<string, FamilyRow>;
  properties: Record<PropertyId, PropertyRow | KindPropertyRow>;
  /** Every figure as it stands in its table, for the reader. */
  figures: FigureRow[];
  /** The same of figures that go by value or rating. */
  bandedFigures: BandedFigureRow[];
  /** What the used figures come to; for a union, the hull of its members. */
  knowledge: Record<TypeId, Record<PropertyId, Knowledge>>;
  /** Where a figure goes by the value or the rating of a part; the first band that holds counts. */
  bands: Record<TypeId, Record<PropertyId, readonly Band[]>>;
  absorptionTests: Record<string, AbsorptionTestRow>;
  offers: OfferRow[];
  /** How parts are wired up, by their style. */
  mountings: Readonly<Record<string, StyleRow['mounting']>>;
  /** Styles that few dealers keep, or that are made to order. */
  seldomStyles: readonly string[];
  /** Kinds of part besides capacitors, with their types, their positions and what is to be had. */
  kinds: Record<KindId, KindRow>;
  kindTypes: Record<TypeId, KindTypeRow>;
  kindPositions: Record<PositionId, KindPositionRow>;
  kindOffers: KindOfferRow[];
  /** Values (SI) of theirs that are in no series of preferred numbers, rising. */
  kindValues: ValueListRow[];
  /** Sizes by value and rated voltage. */
  bodies: BodyRow[];
  /** How parts of a type look, the commonest old one first. */
  typeLooks: TypeLookRow[];
  seriesResistance: SeriesResistanceRow[];
  rippleByFrequency: RippleFrequencyRow[];
  rippleByTemperature: RippleTemperatureRow[];
  coreRises: CoreRiseRow[];
  pulseRatings: PulseRatingRow[];
  series: SeriesRow[];
  /** Values of parts that are not made in a series of preferred numbers, rising. */
  valueLists: ValueListRow[];
  voltages: VoltageRow[];
  positions: Record<PositionId, PositionRow>;
  /** What pages about positions tell besides; no assessment uses it. */
  positionNotes: PositionNoteRow[];
  conditionDefinitions: Record<ConditionId, ConditionDefinitionRow>;
  conditions: ConditionRow[];
  demands: DemandRow[];
  findings: Record<FindingId, FindingRow>;
  /** How a finding fills in the bench sum that it leads to. */
  sumInputs: SumInputRow[];
  verdictRules: VerdictRuleRow[];
  unlikelyPairs: UnlikelyPairRow[];
  guidelines: Record<GuidelineId, GuidelineRow>;
  derating: DeratingRow[];
  categoryVoltages: CategoryVoltageRow[];
  /** Numbers of the trade where no figure of a part says it, SI, by their id. */
  rulesOfThumb: Readonly<Record<string, readonly number[]>>;
  /** How a stand-in is made of two parts, by kind. */
  combinations: Record<string, CombinationRow>;
  triage: TriageRow[];
  /** What is done with old parts of other kinds that go by value. */
  kindTriage: KindTriageRow[];
  esrOfNew: EsrOfNewRow[];
  leakageLimits: LeakageLimitRow[];
  reforming: ReformingRow[];
  cautions: CautionRow[];
  /** Pages that words of the bench lead to. */
  benchWords: BenchWordRow[];
  /** What more or less of a quantity than the old part has means. */
  inPlaceOf: InPlaceOfRow[];
  markings: MarkingTables;
  /** What a part is named with by its look. */
  look: LookTables;
  /** What a whole board is fitted and checked by. */
  job: JobTables;
  /** Parts that are named by a type number, and what they are put to. */
  devices: DeviceTables;
}
