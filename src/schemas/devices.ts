import { z } from 'zod';
import {
  count,
  id,
  idList,
  list,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import type { ConditionDefinitionRow, ConditionRow, DemandRow, FindingRow } from './positions.ts';
import type { DeviceTriageRow } from './triage.ts';

/** Parts that are named by a type number of the trade and have no value of their own. */
export const familyRow = z.strictObject({
  id,
  name: text.describe('as a heading, in the plural'),
  one: text.describe('one of them, in a sentence'),
  summary: text.describe('what decides among them, one sentence'),
  kinds: idList.describe('kinds of part that a parts list puts them under, such as ic'),
});
export type FamilyRow = z.output<typeof familyRow>;

/** What several devices share figures by. */
export const seriesOfDevicesRow = z.strictObject({ id, name: text, meaning: text });

/** One type number of the trade, whoever makes it. */
export const deviceRow = z.strictObject({
  id,
  name: text.describe('the number as the trade says it'),
  family: id,
  function: id.describe('what it does; only devices of one function are tried for each other'),
  series: idList.describe(
    'series whose figures hold for it as well, the widest first; the nearest that has a figure counts',
  ),
  pinouts: idList.describe('orders of pins that it is sold with, the usual one first'),
  also: list.describe('other numbers that mean the same part'),
  usual_in: idList.describe(
    'uses that it is met in most, likeliest first; of those that its function has, they are named first',
  ),
  never_in: idList.describe(
    'uses of its function that nobody put it to, such as a point-contact diode at the mains',
  ),
  market: z
    .enum(['common', 'current', 'niche', 'old-stock'])
    .describe('as for types of capacitor; old-stock is no longer made and never a stand-in'),
  summary: text.describe('what it is, in our own words'),
  trap: optionalText.describe('what misleads about this number'),
  ...provenance,
});
export type DeviceRow = z.output<typeof deviceRow>;

/** What a device does. */
export const deviceFunctionRow = z.strictObject({
  id,
  family: id,
  name: text.describe('in a sentence'),
  socket_pins: optionalNumber
    .refine((pins) => pins === undefined || (pins > 0 && pins % 2 === 0), 'expected an even number')
    .describe(
      'contacts of a socket in two rows, which it is drawn with; nothing for other devices',
    ),
});
export type DeviceFunctionRow = z.output<typeof deviceFunctionRow>;

/** Something that figures of devices are given for. */
export const devicePropertyRow = z.strictObject({
  id,
  name: text,
  unit: text.describe('unit in units.csv that pages print'),
  better: z.enum(['low', 'high', 'neither']),
  lowest: number.describe('physically possible lowest value, in the unit'),
  highest: number.describe('physically possible highest value, in the unit'),
  at: z.enum(['V', 'A']).describe('unit of the point that its figures hold at: supply or current'),
  meaning: text,
});
export type DevicePropertyRow = z.output<typeof devicePropertyRow>;

/** One figure of a device or of a series, from one source. */
export const deviceFigureRow = z.strictObject({
  of: id.describe('a device or a series'),
  property: id,
  at: optionalNumber.describe(
    'supply in V, or current in A for drops, that the figure holds at; nothing where it holds throughout',
  ),
  min: optionalNumber,
  typ: optionalNumber,
  max: optionalNumber,
  unit: text.describe('unit in units.csv'),
  use: z
    .enum(['used', 'shown'])
    .describe('used: part of the range that assessments take; shown: kept for the reader only'),
  conditions: optionalText,
  ...provenance,
});
export type DeviceFigureRow = z.output<typeof deviceFigureRow>;

/** An order of pins on a body. */
export const pinoutRow = z.strictObject({
  id,
  name: text,
  body: text.describe('such as DIP 14 or TO-92'),
  pins: count,
  view: text.describe('how one must look at it for the numbers to hold'),
  name_body: yesNo.describe(
    'whether an order has to name the body, as letters behind a number may mean another',
  ),
});
export type PinoutRow = z.output<typeof pinoutRow>;

/** What one pin of a pinout does. */
export const pinRow = z.strictObject({
  pinout: id,
  pin: positive,
  function: id,
  section: optionalText.describe('which of several alike, such as 1 to 4'),
  ...provenance,
});
export type PinRow = z.output<typeof pinRow>;

/** What a pin can be for. */
export const pinFunctionRow = z.strictObject({
  id,
  name: text,
  role: z
    .enum(['main', 'trim', 'none'])
    .describe(
      'main: the circuit needs it; trim: null, balance or compensation, used by some circuits; none: not connected',
    ),
  meaning: text,
});
export type PinFunctionRow = z.output<typeof pinFunctionRow>;

/** What a device does in a circuit, and what that asks of it. */
export const useRow = z.strictObject({
  id,
  name: text,
  functions: idList.describe('functions of the devices that are met here'),
  also_called: list,
  summary: text.describe('what the device does here, one sentence'),
  decisive: text.describe('what decides, and why'),
  symptom: text.describe('how a wrong or failing part shows'),
  trap: text.describe('what misleads'),
  cautions: idList,
  ...provenance,
});
export type UseRow = z.output<typeof useRow>;

/** Letters printed before or after a type number. */
export const affixRow = z.strictObject({
  text: text.describe('letters as printed, capital'),
  place: z.enum(['before', 'after']),
  numbers: list.describe(
    'figures that numbers beside these letters begin with; any where nothing is named',
  ),
  stands_for: optionalText.describe(
    'what belongs in the place of the letters, as 74 in that of 9N; nothing where they are left out',
  ),
  meaning: text,
  ...provenance,
});
export type AffixRow = z.output<typeof affixRow>;

/** A word that may stand beside a type number on a body and says nothing of a value. */
export const besideWordRow = z.strictObject({
  form: z
    .string()
    .regex(/^(?:[A9]\+?)+$/u, 'expected A, 9 and +')
    .describe('what it looks like: A for a letter, 9 for a figure, + for one or more of these'),
  meaning: text.describe('what it may be, in a sentence'),
  ...provenance,
});
export type BesideWordRow = z.output<typeof besideWordRow>;

/** A register whose type numbers all have one form. */
export const numberSystemRow = z.strictObject({
  starts: text.describe('what its numbers begin with, capital; * stands for any one letter'),
  fewest: count.describe('digits after that, at least'),
  most: count.describe('digits after that, at most'),
  ends: list.describe(
    'letters that may follow the digits; * where any may; with % for one to three digits and a letter of a grade, one of them must',
  ),
  names: text.describe('what a number of it names, in a sentence'),
  left_off: optionalText.describe(
    'the beginning that small bodies leave off, or print on a line of its own',
  ),
  ...provenance,
});
export type NumberSystemRow = z.output<typeof numberSystemRow>;

/** A number that boards carry and that has no page: what it is is known, its figures are not here. */
export const knownNumberRow = z.strictObject({
  number: z
    .string()
    .regex(/^[A-Z0-9*#$%@]+$/u, 'expected capital letters, digits, *, #, $, % and @')
    .describe(
      'as printed, without a maker\u2019s letters and a package\u2019s; * stands for the letters of a family, # for a voltage such as 5V1, $ for one that has a point or a V in it, % for a whole number, @ for two figures such as 04',
    ),
  also: list.describe('other numbers that mean the same, written alike'),
  list: z
    .enum(['logic', 'chips', 'transistors', 'valves', 'zeners', 'others'])
    .describe('list that it stands in, among the numbers without a page'),
  what: text.describe(
    'what it is, in a sentence; #, $, % and @ are filled with what they stand for in the number',
  ),
  near: idList.describe('devices of the tables that are nearest, to compare with'),
  look_out: optionalText.describe('what misleads about it, one sentence'),
  ...provenance,
});
export type KnownNumberRow = z.output<typeof knownNumberRow>;

/** What one field of a bench sum is filled with where a finding about a device leads to it. */
export const deviceSumInputRow = z.strictObject({
  sum: id.describe('id of a bench sum'),
  input: text.describe('key of one of its fields'),
  takes: z
    .enum([
      'condition',
      'property',
      'property-if-known',
      'warm-leakage',
      'bias',
      'old-bias',
      'charge',
      'words',
    ])
    .describe(
      'condition: of the use; property: of the device; property-if-known: the field keeps its usual number where it is not; warm-leakage: a leakage at the temperature of the use; bias, old-bias: current of an input of the device and of the old one, warm where it has field-effect transistors; charge: that the switch injects, by its capacitance where no charge is given; words: always the same',
    ),
  of: optionalText.describe('the condition, the property or the words'),
  at: optionalId.describe(
    'the condition that the property is read at, where its figures depend on one',
  ),
  for: idList.describe(
    'findings that this row is for; all that lead to the sum where none is named',
  ),
});
export type DeviceSumInputRow = z.output<typeof deviceSumInputRow>;

/** Every table of `data/devices/`. */
export interface DeviceTables {
  families: FamilyRow[];
  series: z.output<typeof seriesOfDevicesRow>[];
  functions: DeviceFunctionRow[];
  devices: DeviceRow[];
  properties: DevicePropertyRow[];
  figures: DeviceFigureRow[];
  pinouts: PinoutRow[];
  pins: PinRow[];
  pinFunctions: PinFunctionRow[];
  uses: UseRow[];
  conditionDefinitions: ConditionDefinitionRow[];
  conditions: ConditionRow[];
  findings: FindingRow[];
  demands: DemandRow[];
  affixes: AffixRow[];
  besideWords: BesideWordRow[];
  numberSystems: NumberSystemRow[];
  knownNumbers: KnownNumberRow[];
  sumInputs: DeviceSumInputRow[];
  triage: DeviceTriageRow[];
}
