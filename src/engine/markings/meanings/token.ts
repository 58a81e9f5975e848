import type { SourceId, TypeId } from '../../catalogue.ts';
import type { Range } from '../../quantities/range.ts';
import type { Taper, TemperatureCharacteristic, Tolerance } from './reading.ts';
import type { Assumed } from '../text/text.ts';

/** Where a meaning stands among its rivals in a table. */
export type Use = 'usual' | 'other' | 'rare';

/** What a token must have about it to be taken so. */
export type Need =
  /** The token before is the value, with no more than blanks between. */
  | 'after-value'
  /** The same, or the voltage or temperature beside it is before. */
  | 'after-rating'
  /** As `after-value`, without a gap. */
  | 'touching-value'
  /** As `after-rating`, without a gap. */
  | 'touching-rating'
  /** The token before is a tolerance letter, without a gap. */
  | 'touching-tolerance'
  /** The same with blanks between. */
  | 'after-tolerance'
  /** The token before is a temperature letter, without a gap. */
  | 'touching-temperature'
  /** The value is a resistance. */
  | 'resistor'
  /** The token before is a style or a word for a type, without a gap. */
  | 'touching-style'
  /** A style stands somewhere before. */
  | 'style-before'
  /** Its type is named somewhere before. */
  | 'type-before'
  /** The next token is the value, without a gap. */
  | 'touching-before-value'
  /** A value stands somewhere before. */
  | 'value-before'
  /** A rated voltage stands somewhere before. */
  | 'rating-before'
  /** It fills a whole word. */
  | 'whole-word';

/** The place in a reading that a token fills; each is filled once at most. */
export type Slot =
  | 'value'
  | 'tolerance'
  | 'voltage'
  | 'ac-voltage'
  | 'temperature'
  | 'safety'
  | 'date'
  | 'climate'
  | 'dielectric'
  | 'power'
  | 'taper';

/** What a token says. */
export type Content =
  | {
      says: 'capacitance';
      value: number;
      /** Lowest value of an adjustable part, F. */
      from?: number;
      /** Whether both ends of what the part may have are marked. */
      span?: true;
      figures: string;
      withUnit: boolean;
    }
  /** `symbols` stand at as many places as values; some may have none. */
  | {
      says: 'sections';
      values: number[];
      symbols: (string | undefined)[];
      /** Rated voltage of each, V, where every one stands with its voltage. */
      volts?: number[];
    }
  | { says: 'symbol'; symbol: string }
  | { says: 'resistance'; value: number; figures: string; withUnit: boolean }
  | {
      says: 'tolerance';
      /** What it is the tolerance of; either where it is written out. */
      of?: 'capacitance' | 'resistance';
      /** Meanings by capacitance: those whose span holds the value count. */
      tolerance: Tolerance;
      fromF?: number | undefined;
      belowF?: number | undefined;
      /** What other tables have the same letter for. */
      elsewhere?: readonly ElsewhereTolerance[];
    }
  | { says: 'voltage'; volts: Range; kind?: 'dc' | 'ac' | undefined; rated: boolean }
  | { says: 'temperature'; characteristic: TemperatureCharacteristic }
  | { says: 'coefficient'; coefficient: Range }
  | { says: 'power'; watts: number }
  | { says: 'taper'; taper: Taper; settle: string }
  | { says: 'style'; construction: string; watts?: number; coefficient?: Range }
  /** `style` where figures of a style follow, as in `CM15`. */
  | { says: 'types'; style: boolean }
  | { says: 'safety'; class: string }
  | { says: 'polarity'; polarity: string }
  | { says: 'date'; dates: string[] }
  | { says: 'climate' }
  /** Something that is not read, such as `47 µH`: in words, with its article. */
  | { says: 'other'; is: string }
  /** So many alike on one shaft. */
  | { says: 'gangs'; count: number }
  /** How large the part is or how it is mounted, which lists name beside its value. */
  | { says: 'size' }
  /** What the part is made of, in words as lists have it. */
  | { says: 'material' }
  /** Which part on the board it is, not what it is. */
  | { says: 'designator'; ofOther?: true }
  | { says: 'remark' };

/** Another meaning of a tolerance letter, for the capacitances in its span, F. */
export interface ElsewhereTolerance {
  fromF: number | undefined;
  belowF: number | undefined;
  means: string;
}

/** What a stretch of the marking is taken for, wherever it stands; made once for a row of a table. */
export interface Meaning {
  slot?: Slot;
  content: Content;
  /** Bodies and origins that it is tied to, a bit for each; all bits for all. */
  bodies: number;
  origins: number;
  types: readonly TypeId[];
  /** In words; asked for only where a reading is shown. */
  means: () => string;
  source: SourceId;
  settle?: string;
  /** Lowest rated voltage of parts that bear such a value, V. */
  voltsFrom?: number | undefined;
  /** Whether such a value is likelier with a voltage beside it. */
  voltsBeside?: boolean | undefined;
  /** Highest rated voltage behind a stroke that makes the value likelier, V. */
  strokeVoltsMax?: number | undefined;
  /** Whether the last figure of the value counts zeros, or may beside what is named here. */
  countsZeros?: boolean | undefined;
  /** Types that bear such a value whatever their age. */
  ofTypes?: readonly TypeId[] | undefined;
  /** Tolerance that such a way of writing the value goes with. */
  implies?: Tolerance | undefined;
  /** Tightest usual tolerance of parts that are marked so, as a fraction. */
  toleranceFrom?: number | undefined;
  /** Widest usual tolerance of parts that are marked so, as a fraction. */
  toleranceUpTo?: number | undefined;
  /** Tolerance that a line under the value stands for, per cent each way. */
  underlinedPercent?: number | undefined;
  /** Says by itself that the part is a resistor. */
  tellsKind?: boolean | undefined;
}

/** One way to take a stretch of the marking. */
export interface Token {
  /** Index of the first character. */
  at: number;
  /** Index after the last character. */
  end: number;
  meaning: Meaning;
  /** How readily it is believed; sums over a reading. */
  weight: number;
  needs: readonly Need[];
  /** Characters that were made up or taken for others. */
  assumed: readonly Assumed[];
  /** Figures with a usual unit: the same figures are then not also taken without it. */
  withUsualUnit?: boolean;
}
