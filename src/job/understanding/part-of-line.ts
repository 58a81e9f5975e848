import type { PositionId, Range, Taper, Tolerance, TypeId } from '../../engine/index.ts';
import { readRated } from '../../substitution/rated-voltage.ts';
import {
  PART_LIMITS,
  readRange,
  readToleranceText,
  type Read,
} from '../../substitution/typed-numbers.ts';
import { expandDesignators } from '../model/designators.ts';
import type { Line } from '../model/job.ts';
import type { Ask } from './ask.ts';

/** What the part of a line is understood to be; what is not known is missing. */
export interface PartOfLine {
  /** By which rules it is served; nothing for parts that none serve. */
  family?: Family | undefined;
  /** Each by itself, in the order typed. */
  designators: readonly string[];
  /** Family of parts, such as `capacitor` or `ic`; nothing where it is not said. */
  kind: string;
  /** Whether the list itself says the kind: in a cell, in words of the marking or by a type number. */
  isKindSaid?: boolean;
  type?: TypeId | undefined;
  /** F */
  capacitance?: Range | undefined;
  tolerance?: Tolerance | undefined;
  /** V */
  ratedVoltage?: Range | undefined;
  /** `ac` where that is marked as a rating for AC; else the type says. */
  voltageKind?: 'ac' | undefined;
  /** Classes of mains duty that are marked, such as `Y1` or `X1/Y2`. */
  safetyClass?: string | undefined;
  /** Of a kind besides capacitors: its marked value and its rating, SI. */
  value?: Range | undefined;
  rating?: Range | undefined;
  /** How the track of a panel control goes, where that is marked. */
  taper?: Taper | undefined;
  /** How many of a panel control are on one shaft, where that is marked. */
  gangs?: number | undefined;
  /** Of a device, the number without figures that it is judged in the place of, and what that is. */
  judgedFor?: string | undefined;
  /** Of a part that nothing here assesses, what is known of its type number, and what to look out for. */
  known?: { what: string; lookOut: string } | undefined;
  /** Of a device, the use that it is put to. */
  position?: PositionId | undefined;
  /** The part of the catalogue that it is assessed with; nothing until that is known. */
  slice?: string | undefined;
  /** What could not be understood, by the name of the line's field. */
  rejected: Readonly<Record<string, string>>;
  /** What is left to ask; nothing where nobody looked for questions. */
  asks?: readonly Ask[];
}

/** Capacitors, other kinds that go by value, and devices that go by type number. */
export type Family = 'capacitor' | 'kind' | 'device';

/**
 * How lines are understood; must depend on nothing but what is typed in the line of its part. A plan
 * asks once for all lines that say the same of designators with the same letters, with one number for
 * all, and reads each line's designators itself.
 */
export type Understand = (line: Line) => PartOfLine;

/**
 * What of the numbers that a part is ordered by was written so that nobody can understand it: a usual
 * one in its place would mislead.
 */
export const unreadOf = ({ rejected, kind }: PartOfLine): string | undefined => {
  if (Object.hasOwn(rejected, 'value')) return 'value';
  if (!Object.hasOwn(rejected, 'volts')) return undefined;
  return kind === 'capacitor' ? 'rated voltage' : 'rating';
};

/** A part as it was understood once, with the designators of one of its lines. */
export const atDesignators = (part: PartOfLine, text: string): PartOfLine => {
  const { list: designators, faults } = expandDesignators(text);
  const rejected =
    faults.length === 0 ? part.rejected : { ...part.rejected, designators: faults.join(' ') };
  return { ...part, designators, rejected };
};

/** Cells of a line as they are read one by one, and what was wrong with those that cannot be. */
interface Cells {
  /** What a cell says; nothing for an empty one, or for one that is rejected. */
  take: <T>(
    field: 'value' | 'tolerance' | 'volts',
    read: (text: string) => Read<T>,
  ) => T | undefined;
  /** Sentences by field. */
  rejected: Record<string, string>;
}

/** The cells of a line, none of them read yet. */
export const cellsOf = (line: Line): Cells => {
  const rejected: Record<string, string> = {};
  return {
    rejected,
    take: (field, read) => {
      const text = line[field].trim();
      if (text === '') return undefined;
      const result = read(text);
      if ('value' in result) return result.value;
      rejected[field] = result.message;
      return undefined;
    },
  };
};

/** Takes the cells of a line at their word: nothing is read out of its marking. */
export const partAsTyped: Understand = (line) => {
  const { rejected, take } = cellsOf(line);
  const isCapacitor = line.kind === 'capacitor' || (line.kind === '' && line.type !== '');
  const rated = isCapacitor ? take('volts', readRated) : undefined;
  const capacitance = isCapacitor
    ? take('value', (text) => readRange(text, PART_LIMITS.capacitance))
    : undefined;
  const part: PartOfLine = {
    designators: [],
    kind: isCapacitor ? 'capacitor' : line.kind,
    ...(isCapacitor
      ? {
          family: 'capacitor',
          type: line.type === '' ? undefined : line.type,
          capacitance,
          tolerance: take('tolerance', (text) =>
            readToleranceText(text, { of: 'capacitor', farad: capacitance?.typ }),
          ),
          ratedVoltage: rated?.volts,
          voltageKind: rated?.kind,
          position: line.position === '' ? undefined : line.position,
          slice: line.position === '' ? undefined : line.position,
        }
      : {}),
    rejected,
  };
  return atDesignators(part, line.designators);
};
