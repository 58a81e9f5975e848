import type { Range } from '../quantities/range.ts';
import type { ConditionId, GuidelineId, PositionId, TypeId } from '../catalogue.ts';

/** How far a part may be off its mark, as positive fractions. */
export interface Tolerance {
  minus: number;
  plus: number;
}

/** The old part, as far as the visitor knows it. */
export interface Original {
  type: TypeId;
  /** F; its typical value is taken as the mark. */
  capacitance?: Range | undefined;
  tolerance?: Tolerance | undefined;
  /** V */
  ratedVoltage?: Range | undefined;
  /** `ac` where the rating is marked as one for AC; else the type says. */
  voltageKind?: 'ac' | undefined;
  /** Since it was made or last hotter than about 125 degC, s; what is usual for the type unless given. */
  age?: Range | undefined;
}

/** What is asked: an old part, the position it sits in, and what is known of the circuit. */
export interface Request {
  original: Original;
  position: PositionId;
  /** SI units; what is left out takes the default of the position. */
  conditions?: Record<ConditionId, Range> | undefined;
  /** Derating guideline for the voltage margin; the workshop's own unless given. */
  guideline?: GuidelineId | undefined;
}

/** A stand-in to be assessed; what is left out is taken from the market for its type. */
export interface Candidate {
  type: TypeId;
  /** F */
  capacitance?: number | undefined;
  tolerance?: Tolerance | undefined;
  /** V */
  ratedVoltage?: number | undefined;
  voltageKind?: 'dc' | 'ac' | undefined;
}

/** How a stand-in is made of two parts, or of one and a resistor, where no single part serves. */
export interface Made {
  /** Side by side; in series; in series with like poles joined; one with a resistor in series. */
  kind: 'parallel' | 'series' | 'back-to-back' | 'with-resistor';
  /** What one buys: two parts, or the one that the resistor goes with. */
  parts: OfferedPart[];
  /** In series with the part, ohm. */
  resistor?: number;
  /** Power that this resistor must be rated for, W; nothing where its current is not known. */
  power?: number;
  /** Across each of the parts, ohm. */
  bleeder?: number;
  /** What it comes to, in numbers. */
  why: string;
}

/** A part with everything filled in that a finding may ask for. */
export interface Part {
  type: TypeId;
  /** Marked value, F. */
  capacitance: number;
  tolerance: Tolerance;
  /** V */
  ratedVoltage: number;
  voltageKind: 'dc' | 'ac';
  /** How long ago it was made, s; nothing for a part that is new. */
  age?: number;
  /** Where it takes more than one part; value, tolerance and rating are then those of the whole. */
  made?: Made;
}

/** The old part, whose age is known or taken as usual. */
export type OldPart = Part & Required<Pick<Part, 'age'>>;

/** A part that the market offers, with what one needs to order it. */
export interface OfferedPart extends Part {
  style: string;
  /** Lead pitches, mm; none for axial parts and chips. */
  pitch: number[];
  series: string;
}
