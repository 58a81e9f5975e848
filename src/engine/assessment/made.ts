import { besideEachOther, sumOf } from '../equations/combinations.ts';
import { add, exactly, type Range } from '../quantities/range.ts';
import type { Part } from './parts.ts';

/** The parts that one buys: the part itself, or those that it is made of. */
export const singleParts = (part: Part): readonly Part[] => part.made?.parts ?? [part];

/** Resistance (ohm) put in series on purpose; 0 where there is none. */
export const addedResistance = ({ made }: Part): number => made?.resistor ?? 0;

/** Whether a part minds which way round it is, by what its type says and how it is made. */
export const keepsItsSign = ({ made }: Part, polarity: string | undefined): boolean =>
  polarity === 'polar' && made?.kind !== 'back-to-back';

/** A quantity of every single part; nothing where it is not known of one. */
const ofEach = (
  part: Part,
  of: (single: Part) => Range | undefined,
): [Range, ...Range[]] | undefined => {
  const [first, ...rest] = singleParts(part).map(of);
  const known = rest.filter((range) => range !== undefined);
  return first === undefined || known.length < rest.length ? undefined : [first, ...known];
};

/** What lies in the path of the current (ohm, or H) through the whole, from that of each part. */
export const inThePath = (
  part: Part,
  of: (single: Part) => Range | undefined,
): Range | undefined => {
  const each = ofEach(part, of);
  return each && (part.made?.kind === 'parallel' ? besideEachOther(each) : sumOf(each));
};

/** What adds up whichever way parts are joined, such as the volume of their bodies. */
export const altogether = (
  part: Part,
  of: (single: Part) => Range | undefined,
): Range | undefined => {
  const each = ofEach(part, of);
  return each && sumOf(each);
};

/**
 * Current (A) that the whole lets pass at a steady voltage (V), from that of one part at its own
 * share of it. Two parts in series pass what one does at half the voltage, and the resistors across
 * them theirs; of two back to back one has all the voltage, the other is turned the wrong way.
 */
export const leakageOfWhole = (
  part: Part,
  voltage: number,
  of: (single: Part, voltage: number) => Range | undefined,
): Range | undefined => {
  const { kind, bleeder } = part.made ?? {};
  if (kind === 'parallel') return altogether(part, (single) => of(single, voltage));
  const [first = part] = singleParts(part);
  const one = of(first, kind === 'series' ? voltage / 2 : voltage);
  return one === undefined || bleeder === undefined
    ? one
    : add(one, exactly(voltage / (2 * bleeder)));
};

/** Share of the AC current through the whole that one of its parts carries. */
export const currentShare = (part: Part, single: Part): number =>
  part.made?.kind === 'parallel' ? single.capacitance / part.capacitance : 1;

/** How many times the voltage of one of its parts the whole stands: more than once in series only. */
export const timesTheVoltage = (part: Part): number =>
  part.made?.kind === 'series' ? part.ratedVoltage / (part.made.parts[0] ?? part).ratedVoltage : 1;
