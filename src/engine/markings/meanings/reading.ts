import type { SourceId, TypeId } from '../../catalogue.ts';
import type { Range } from '../../quantities/range.ts';
import type { Assumed } from '../text/text.ts';

/** What is known about the part beside its marking; everything may be missing. */
export interface Hints {
  /** Id in `markings/bodies.csv`, such as `ceramic`, `film`, `aluminium`. */
  body?: string;
  /** The type, where it is known already; stands for its body too. */
  type?: TypeId;
  /** Where the part comes from, as the tables name it: `british`, `soviet`, `german`, … */
  origin?: string;
  /** Years that the part may have been made in; narrows dates. */
  era?: { from: number; to: number };
  /** What the part is, where that is known. */
  kind?: ReadingKind;
  /** Whether there is a line under the value; nothing where nobody looked. */
  underlined?: boolean;
}

export type ReadingKind = 'capacitor' | 'resistor';

/** How far a reading may be trusted. */
export type Sureness = 'sure' | 'likely' | 'possible';

/** How far a part may be off its value, both as positive magnitudes: 0.2 and 0.8 for −20/+80 %. */
export interface Tolerance {
  minus: number;
  plus: number;
  unit: 'fraction' | 'F' | 'ohm';
}

/** How a ceramic's capacitance follows temperature. */
export interface TemperatureCharacteristic {
  code: string;
  class: number;
  /** Largest change over the temperature span, as fractions; class 2. */
  capacitanceChange?: { min: number; max: number };
  /** Temperature coefficient, 1/K; class 1. */
  coefficient?: Range;
  /** True where the code says how far the coefficient may be off. */
  spreadKnown: boolean;
  /** degC at which the value is stated. */
  tReference: number;
  /** degC. */
  tMin: number;
  /** degC. */
  tMax: number;
}

/** One stretch of the marking and what it was taken for. */
export interface Evidence {
  text: string;
  /** Zero-based index of its first character in the marking. */
  at: number;
  means: string;
  source: SourceId;
  /** Characters in it that cannot be read and were made up, or that were taken for others. */
  assumed?: Assumed[];
}

/** How the resistance of a potentiometer follows its travel. */
export type Taper = 'linear' | 'logarithmic' | 'reverse logarithmic' | 'S-shaped';

/** How colours were read. */
export interface ReadColours {
  /** Id in `markings/colour-schemes.csv`. */
  scheme: string;
  /** Its name. */
  name: string;
  /** Whether the part was turned round, so that its last place comes first. */
  turned: boolean;
  /** Colours of all places as they were given, unknown ones of the value filled in. */
  marks: (string | undefined)[];
  /** Zero-based places that were filled in. */
  guessed: number[];
}

/** What a meter reads if a reading is right. */
export interface Measured {
  /** F or ohm, with the tolerance. */
  range: Range;
  with: '1 kHz' | '100 or 120 Hz' | 'dc';
  /** Tolerance each way that was taken, as a fraction, where none is marked. */
  toleranceTaken?: number;
  /** Whether a rival with another value may read the same, so that the meter does not settle it. */
  overlaps: boolean;
}

/** One of several capacitors in one can. */
export interface Section {
  /** F, with the tolerance. */
  capacitance: Range;
  /** V. */
  ratedVoltage?: Range;
  /** `half moon`, `square`, `triangle`, `circle` or `plain`. */
  symbol?: string;
}

/** One way in which a marking can be understood. SI units throughout. */
export interface Reading {
  kind: ReadingKind;
  /** F; nothing where there are several sections. */
  capacitance?: Range;
  /** Several capacitors in one can, in the order of the marking; at least two. */
  sections?: Section[];
  /** ohm. */
  resistance?: Range;
  tolerance?: Tolerance;
  /** V. */
  ratedVoltage?: Range;
  voltageKind?: 'dc' | 'ac';
  /** V rms, where one for dc is marked as well. */
  acVoltage?: Range;
  temperatureCharacteristic?: TemperatureCharacteristic;
  /** Temperature coefficient of a resistor, 1/K. */
  temperatureCoefficient?: Range;
  /** Rated power of a resistor, W. */
  power?: Range;
  /** Only of a potentiometer, where it is marked. */
  taper?: Taper;
  /** F, with tolerance and temperature; only where a temperature characteristic is marked. */
  capacitanceOverTemperature?: Range;
  /** How many potentiometers of the value are on one shaft, where that is marked. */
  gangs?: number;
  /** Types that the marking suggests, the likeliest first. */
  types: TypeId[];
  /** Dates that the date code may stand for, `1989-W23` or `1998-05`, joined by ` or `. */
  date?: string;
  /** `X2`, `X1/Y2`, … */
  safetyClass?: string;
  /** Which lead is which, where the marking says so. */
  polarity?: string;
  /** What else is printed that is not read, such as `47 µH, an inductance`. */
  notRead?: string;
  /** What such parts are, as `markings/other-marks.csv` names them: `an inductance`, `a fuse`. */
  others?: readonly string[];
  /** What the style that is printed on a resistor says it is, such as `wirewound trimmer`. */
  construction?: string;
  /** Only where colours were read. */
  colours?: ReadColours;
  /** What a meter reads if this is right; nothing without a value or with several sections. */
  measured?: Measured;
  sure: Sureness;
  /** In the order of the marking, not overlapping. */
  evidence: Evidence[];
  /** Stretches that stayed without a meaning, in the order of the marking. */
  notUnderstood: string[];
  /** What would settle between this reading and its rivals. */
  settleBy: string[];
}
