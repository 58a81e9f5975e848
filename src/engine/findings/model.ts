import type { PositionRow } from '../../schemas/positions.ts';
import type { Part } from '../assessment/parts.ts';
import type {
  Band,
  Basis,
  Bounds,
  Catalogue,
  GuidelineId,
  Knowledge,
  PositionId,
  PropertyId,
  SourceId,
  TypeId,
} from '../catalogue.ts';
import { knownRange } from '../known-range.ts';
import type { Range } from '../quantities/range.ts';
import { isBetween } from '../quantities/within.ts';
import type { WithRules } from '../rule-of-thumb.ts';

/** What a finding about any kind of part is worked out from. */
export interface CommonCircumstances<P> {
  catalogue: Catalogue;
  position: { id: PositionId };
  /** Every condition of the position, SI units. */
  conditions: Record<string, Range>;
  /** The part that is being replaced. */
  original: P;
}

/** What a finding about a capacitor is worked out from. */
export interface Circumstances extends CommonCircumstances<Part> {
  position: PositionRow;
  guideline: GuidelineId;
  /**
   * Rating (V) of an old part of a type that is chosen near its voltage, where nobody said what stands
   * across it; nothing otherwise.
   */
  kept?: number;
}

/** As much of a part as what is known of it may depend on. */
export interface KnownPart {
  type: TypeId;
  /** Marked value and rating in SI, where figures of its type go by them. */
  value?: number | undefined;
  rating?: number | undefined;
}

/** What came of working out one finding for one part. */
export type Outcome =
  | {
      status: 'known';
      /** In the SI unit of the finding. */
      value: Range;
      /** Properties of the part that went into it. */
      properties: PropertyId[];
      /** Sources besides those of the properties, such as a rule or an offer. */
      sources?: SourceId[];
      /** How well those are known. */
      bases?: Basis[];
    }
  | { status: 'unknown'; missing: PropertyId[] };

/** The limit that a demand sets, in the SI unit of the finding. */
export interface Limit {
  low?: number | undefined;
  high?: number | undefined;
}

/** How one kind of finding is worked out, for parts and circumstances of some kind. */
export interface FindingModel<P = Part, C = Circumstances> {
  measure: (part: P, circumstances: C) => Outcome;
  /** The numbers put into the equation, in words that a technician can check. */
  working: (part: P, circumstances: C, value: Range) => string;
  /** How the old part stands today, where that differs from a new one; may be nothing. */
  today?: (circumstances: C) => string;
  /** Conditions that set the limit themselves, where the demand gives none. */
  limit?: (circumstances: C) => Limit;
  /**
   * How far beyond its limit a single value is, as a ratio: 1 at the limit, more beyond it. Only
   * for findings whose unit has no zero to take ratios from.
   */
  beyond?: (value: number, limit: Limit, rules: WithRules) => number;
}

/** What is known of types and of the circuit, where neither the old part nor the position counts. */
export type Surroundings = Pick<Circumstances, 'catalogue' | 'conditions'>;

const UNKNOWN: Knowledge = { status: 'unknown', sources: [] };

const isWithin = (value: number | undefined, { least = 0, most = Infinity }: Bounds): boolean =>
  value !== undefined && isBetween(value, least, most);

/** The band that a part's value and rating fall into. Apart, so that asking without bands makes nothing. */
const bandOf = (bands: readonly Band[], part: KnownPart): Band | undefined =>
  bands.find(
    ({ values, ratings }) =>
      (values === undefined || isWithin(part.value, values)) &&
      (ratings === undefined || isWithin(part.rating, ratings)),
  );

/** What is known of a property of the part's type, or of parts of its value and rating. */
export const knowledgeOf = (
  { catalogue }: Pick<Circumstances, 'catalogue'>,
  part: KnownPart,
  property: PropertyId,
): Knowledge => {
  const bands = catalogue.bands[part.type]?.[property];
  const band = bands === undefined ? undefined : bandOf(bands, part);
  return band?.knowledge ?? catalogue.knowledge[part.type]?.[property] ?? UNKNOWN;
};

/** The range of a property, or nothing where no figure is known. */
export const rangeOf = (
  circumstances: Pick<Circumstances, 'catalogue'>,
  part: KnownPart,
  property: PropertyId,
): Range | undefined => knownRange(knowledgeOf(circumstances, part, property));

/**
 * One condition of the position.
 * @throws when the position lacks it, which the data check rules out
 */
export const conditionOf = (
  { conditions, position }: Pick<CommonCircumstances<unknown>, 'conditions' | 'position'>,
  id: string,
): Range => {
  const range = conditions[id];
  if (range === undefined) throw new Error(`position ${position.id} has no condition ${id}`);
  return range;
};

/** One condition, or a stand-in for it where the position does not speak of it. */
export const conditionOr = (
  { conditions }: Pick<Circumstances, 'conditions'>,
  id: string,
  otherwise: number,
): Range => conditions[id] ?? { min: otherwise, typ: otherwise, max: otherwise };

/** An outcome with a single sure value, such as yes or no. */
export const plain = (value: number): Outcome => ({
  status: 'known',
  value: { min: value, typ: value, max: value },
  properties: [],
});
