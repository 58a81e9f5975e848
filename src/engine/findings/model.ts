import type { PositionRow } from '../../schemas/positions.ts';
import type { Part } from '../assessment/parts.ts';
import type {
  Basis,
  Catalogue,
  GuidelineId,
  Knowledge,
  PropertyId,
  SourceId,
} from '../catalogue.ts';
import type { Range } from '../quantities/range.ts';

/** What a finding is worked out from. */
export interface Circumstances {
  catalogue: Catalogue;
  position: PositionRow;
  /** Every condition of the position, SI units. */
  conditions: Record<string, Range>;
  guideline: GuidelineId;
  /** The part that is being replaced. */
  original: Part;
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

/** How one kind of finding is worked out. */
export interface FindingModel {
  measure: (part: Part, circumstances: Circumstances) => Outcome;
  /** The numbers put into the equation, in words that a technician can check. */
  working: (part: Part, circumstances: Circumstances, value: Range) => string;
  /** How the old part stands today, where that differs from a new one; may be nothing. */
  today?: (circumstances: Circumstances) => string;
  /** Conditions that set the limit themselves, where the demand gives none. */
  limit?: (circumstances: Circumstances) => Limit;
  /**
   * How far beyond its limit a single value is, as a ratio: 1 at the limit, more beyond it. Only
   * for findings whose unit has no zero to take ratios from.
   */
  beyond?: (value: number, limit: Limit) => number;
}

/** What is known of types and of the circuit, where neither the old part nor the position counts. */
export type Surroundings = Pick<Circumstances, 'catalogue' | 'conditions'>;

const UNKNOWN: Knowledge = { status: 'unknown', sources: [] };

/** What is known of a property of the part's type. */
export const knowledgeOf = (
  { catalogue }: Pick<Circumstances, 'catalogue'>,
  part: Pick<Part, 'type'>,
  property: PropertyId,
): Knowledge => catalogue.knowledge[part.type]?.[property] ?? UNKNOWN;

/** The range of a property, or nothing where no figure is known. */
export const rangeOf = (
  circumstances: Pick<Circumstances, 'catalogue'>,
  part: Pick<Part, 'type'>,
  property: PropertyId,
): Range | undefined => {
  const knowledge = knowledgeOf(circumstances, part, property);
  return knowledge.status === 'known' ? knowledge.range : undefined;
};

/**
 * One condition of the position.
 * @throws when the position lacks it, which the data check rules out
 */
export const conditionOf = ({ conditions, position }: Circumstances, id: string): Range => {
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
