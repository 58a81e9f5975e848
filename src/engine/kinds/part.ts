import type { KindPositionRow, KindRow } from '../../schemas/kinds.ts';
import type { Tolerance } from '../assessment/parts.ts';
import type { ConditionId, PositionId, TypeId } from '../catalogue.ts';
import type { CommonCircumstances, FindingModel } from '../findings/model.ts';
import type { Unit } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';

/** A resistor, trimmer or other part that is no capacitor, as far as it is ordered by numbers. */
export interface KindPart {
  type: TypeId;
  /** Marked value in its unit; nothing for a part without one. */
  value?: number;
  unit?: Unit;
  tolerance?: Tolerance;
  /** In its unit; nothing for a part that is not ordered by a rating. */
  rating?: number;
  ratingUnit?: Unit;
}

/** Such a part as the market offers it. */
export interface OfferedKindPart extends KindPart {
  style: string;
  /** Lead pitches, mm. */
  pitch: number[];
  series: string;
}

/** What is asked: an old part, where it sits, and what is known of the circuit. */
export interface KindRequest {
  original: {
    type: TypeId;
    /** SI; its typical value is taken as the mark. */
    value?: Range | undefined;
    tolerance?: Tolerance | undefined;
    rating?: Range | undefined;
  };
  position: PositionId;
  /** SI units; what is left out takes the default of the position. */
  conditions?: Record<ConditionId, Range> | undefined;
}

/** A stand-in to be assessed; what is left out is taken from the market for its type. */
export interface KindCandidate {
  type: TypeId;
  value?: number | undefined;
  tolerance?: Tolerance | undefined;
  rating?: number | undefined;
}

/** What a finding about such a part is worked out from. */
export interface KindCircumstances extends CommonCircumstances<KindPart> {
  kind: KindRow;
  position: KindPositionRow;
}

/** How a finding about such parts is worked out. */
export type KindModel = FindingModel<KindPart, KindCircumstances>;
