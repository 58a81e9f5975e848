import { reasonOf } from '../../device-view/answer.ts';
import {
  formatValue,
  type Assessment,
  type Borne,
  type DeviceAssessment,
  type Finding,
  type Habit,
  type KindAssessment,
  type Range,
  type TypeId,
} from '../../engine/index.ts';
import { partPhrase, reasonPhrase } from '../../substitution/phrases.ts';
import type { Family } from '../understanding/part-of-line.ts';

/** A part of a kind besides capacitors that may go in. */
export interface KindStandIn extends KindAssessment {
  /** What one orders it by besides value and rating, in words. */
  details: readonly string[];
  /** How many of it are joined in series in place of one; missing where one does. */
  inSeries?: number;
  /** What each of several in series bears. */
  bears?: Borne;
  /** Turns from end to end, of what has any. */
  turns?: Range;
  /** How exactly a trimmer can be set, as a share of its total, by its use; nothing where not known. */
  finest?: Readonly<Record<'rheostat' | 'divider', Range | undefined>>;
}

/** A device as a part: its type is its id. */
export interface DevicePart {
  type: TypeId;
  /** The number as the trade says it. */
  number: string;
  /** Bodies of the orders of pins that it is sold with. */
  bodies: readonly string[];
  /** Whether an order has to say which body, for letters behind the number may mean another. */
  namesBody: boolean;
}

/** A pin that does something else in the new part. */
export interface PinChange {
  pin: number;
  old: string;
  now: string;
}

/** A device that may go in. */
export interface DeviceStandIn extends Pick<DeviceAssessment, 'verdict' | 'findings' | 'worst'> {
  candidate: DevicePart;
  /** Pins that differ, those that the circuit needs. */
  pins: readonly PinChange[];
  /** What to mind about its pins, in words; nothing where they agree for certain. */
  pinNote: string;
}

/** What may go in, of whatever family; each has a type, a verdict and its findings. */
export type StandIn = Assessment | KindStandIn | DeviceStandIn;

/** Whether a stand-in is a capacitor. */
export const isCapacitor = (one: StandIn): one is Assessment => 'capacitance' in one.candidate;
/** Whether it goes by a type number. */
export const isDevice = (one: StandIn): one is DeviceStandIn => 'bodies' in one.candidate;
/** Whether it is of another kind that goes by its value, such as a resistor. */
export const isKind = (one: StandIn): one is KindStandIn => !isCapacitor(one) && !isDevice(one);

const IN_WORDS: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four' };

/** How many parts stand for one: `two in series`; nothing where one does. */
const seriesWords = (one: StandIn): string => {
  const count = isKind(one) ? one.inSeries : undefined;
  return count === undefined ? '' : `${IN_WORDS[count] ?? String(count)} in series`;
};

/** The same with what each of them bears: `two in series, each bearing up to 210 V and 4 W`. */
export const chainWords = (one: StandIn, habit?: Habit): string => {
  const joined = seriesWords(one);
  const bears = isKind(one) ? one.bears : undefined;
  return bears === undefined
    ? joined
    : `${joined}, each bearing up to ${formatValue(bears.volts, 'V', habit)} and ${formatValue(bears.watts, 'W', habit)}`;
};

/** A part with its name: `Metal film resistor, 47 kΩ ±1 % 0.5 W`; of a device its number alone. */
export const standInWords = (
  one: StandIn,
  nameOf: (id: TypeId) => string,
  habit?: Habit,
): string =>
  isDevice(one)
    ? nameOf(one.candidate.type)
    : [nameOf(one.candidate.type), partPhrase(one.candidate, habit), chainWords(one, habit)]
        .filter((text) => text !== '')
        .join(', ');

/** A finding as a reason; what a device is counted by is said with its name. */
export const whyWords = (finding: Finding, family: Family | undefined, habit?: Habit): string =>
  family === 'device' ? reasonOf(finding, habit) : reasonPhrase(finding, habit);

/** Whether what goes in is the same thing. */
export const isSame = (one: StandIn, other: StandIn | undefined): boolean =>
  JSON.stringify(one.candidate) === JSON.stringify(other?.candidate) &&
  (other === undefined || seriesWords(one) === seriesWords(other));
