import type { ValueWriting } from '../../schemas/marking-print.ts';
import type { SourceId, TypeId } from '../catalogue.ts';
import type { Taper, Tolerance } from '../markings/meanings/reading.ts';
import type { Use } from '../markings/meanings/token.ts';

/** A part whose marking is looked for. One of capacitance and resistance is needed. */
export interface PartToPrint {
  /** F. */
  capacitance?: number;
  /** ohm. */
  resistance?: number;
  tolerance?: Tolerance;
  /** V. */
  ratedVoltage?: number;
  /** Direct where nothing is said. */
  voltageKind?: 'dc' | 'ac';
  /** Code of the temperature characteristic, in any of the systems: `X7R`, `N750`, `CH`. */
  temperatureCharacteristic?: string;
  type?: TypeId;
  /** How the resistance of a potentiometer follows its travel. */
  taper?: Taper;
}

/** Something that may stand in a marking, with where it is met. */
export interface Piece {
  text: string;
  use: Use;
  /** Ids of bodies; none for all. */
  bodies: readonly string[];
  /** As the tables name them; none for all. */
  origins: readonly string[];
  source: SourceId;
  /** Where and when it is met, or what it may be taken for. */
  note: string;
  /** How a value has to be written for the piece to stand beside it; no matter unless given. */
  besides?: RegExp;
}

/** A value as printed. */
export interface ValuePiece extends Piece {
  writing: ValueWriting;
  /** How its figures and letters come to the value. */
  means: string;
  /** The tolerance that the writing itself says. */
  implies?: Tolerance;
  /** Ids of bodies that carry it only with a voltage beside it: alone it would be another value there. */
  otherwiseAlone?: readonly string[];
}

/** One way in which a part may be marked. */
export interface Way {
  text: string;
  /** The value alone, as it stands in the text. */
  value: string;
  writing: ValueWriting;
  /** How the figures and letters of the value come to it. */
  means: string;
  /** What is printed beside the value. */
  shows: readonly ('tolerance' | 'voltage' | 'temperature' | 'dielectric' | 'taper')[];
  /** The least usual of all that it is put together from. */
  use: Use;
  /** Ids of the bodies that carry it, in the order of their table. */
  bodies: readonly string[];
  /** Where it was printed so; none for everywhere. */
  origins: readonly string[];
  /** Where and when it is met, and what it may be taken for. */
  notes: readonly string[];
  sources: readonly SourceId[];
}
