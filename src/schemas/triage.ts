import { z } from 'zod';
import {
  id,
  idList,
  list,
  nonNegative,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
} from './cells.ts';

/** A rule on whether an old part needs replacing at all. */
export const triageRow = z.strictObject({
  id: id.describe('unique, such as paper-always'),
  types: idList.describe('types that it is for'),
  positions: idList.describe('positions that it is for; none for all'),
  v_from: optionalNumber.describe('lowest rated voltage that it is for, V; nothing for all'),
  v_to: optionalNumber.describe('rated voltage below which it holds, V; nothing for all'),
  reading: z
    .enum([
      'none',
      'sign',
      'age',
      'idle',
      'capacitance',
      'capacitance-for-age',
      'loss-120hz',
      'loss-1khz',
      'loss-ratio',
      'esr',
      'esr-of-new',
      'esr-of-standard',
      'leakage-of-new',
      'insulation',
      'insulation-rc',
    ])
    .describe(
      'what it goes by; none: it always applies; sign: what is seen; idle: time without voltage; capacitance: reading over mark; capacitance-for-age: reading over the least that tolerance and ageing by decades leave of the mark; loss-ratio: loss at 100 or 120 Hz over that at 1 kHz; esr-of-new and esr-of-standard: series resistance over that of a new part, esr-of-new.csv; leakage-of-new: leakage over the limit of a new part, leakage-limits.csv; insulation-rc: resistance times marked capacitance',
    ),
  comparison: z.enum(['any', 'at-least', 'below']),
  limit: optionalNumber.describe('in the unit'),
  unit: text.describe('unit in units.csv; x where there is no limit'),
  sign: optionalText.describe('what is seen on the part, where the rule goes by that'),
  advice: z.enum(['replace', 'test', 'leave']),
  why: text,
  ...provenance,
});
export type TriageRow = z.output<typeof triageRow>;

/** What is done with an old part that no readings judge. */
const standingAdvice = {
  advice: z.enum(['replace', 'test', 'leave']),
  why: text,
  ...provenance,
};

/**
 * The same for parts that go by value: of whole kinds, or of types, which say more. Of the rows that go
 * by a reading the first that holds is what is said.
 */
export const kindTriageRow = z.strictObject({
  id: id.describe('unique, such as resistor-general'),
  kinds: idList.describe('kinds of which it is said'),
  types: idList.describe('types of which it is said instead of what holds for their kind'),
  reading: z
    .enum(['none', 'taken', 'mark', 'above-tolerance', 'below-tolerance', 'off-tolerance', 'drift'])
    .describe(
      'what it goes by; none: it always applies; taken: whatever was read, where no row above holds; mark: reading over mark; above-tolerance, below-tolerance: how far it is off that way, in tolerances; off-tolerance: either way; drift: how far above what the tolerance allows, over the change of its type in a thousand hours at full load',
    ),
  comparison: z.enum(['any', 'above', 'at-most']),
  limit: optionalNumber.describe('in the unit'),
  unit: text.describe('unit in units.csv; x where there is no limit'),
  ...standingAdvice,
});
export type KindTriageRow = z.output<typeof kindTriageRow>;

/** The same for parts that go by type number: of families, functions or devices, which say more and more. */
export const deviceTriageRow = z.strictObject({
  id: id.describe('unique, such as sockets-general'),
  families: idList.describe('families of which it is said'),
  functions: idList.describe(
    'functions of which it is said instead of what holds for their family',
  ),
  bodies: list.describe(
    'bodies, as in pinouts.csv, that it is said of instead of what holds for other bodies; none for all',
  ),
  devices: idList.describe('devices of which it is said instead of all that'),
  ...standingAdvice,
});
export type DeviceTriageRow = z.output<typeof deviceTriageRow>;

/** Series resistance of a new wet aluminium part of one value and rating, as meters read it. */
export const esrOfNewRow = z.strictObject({
  grade: z
    .enum(['worst-case', 'standard-grade'])
    .describe('worst-case: the most that a good new part reads; standard-grade: a plain part'),
  rated_voltage: positive.describe('V'),
  capacitance: positive.describe('F'),
  esr: positive.describe('ohm'),
  ...provenance,
});
export type EsrOfNewRow = z.output<typeof esrOfNewRow>;

/** What a new part may leak at its rated voltage. */
export const leakageLimitRow = z.strictObject({
  types: idList.describe('types that it is for'),
  v_from: nonNegative.describe('rated voltage above which it holds, V'),
  v_to: positive.describe('highest rated voltage that it is for, V'),
  per_charge: positive.describe('uA per uF and V'),
  least: nonNegative.describe('uA; a limit is never below this'),
  added: nonNegative.describe('uA, on top of what goes with the charge'),
  minutes: positive.describe('after which the current is read'),
  ...provenance,
});
export type LeakageLimitRow = z.output<typeof leakageLimitRow>;
