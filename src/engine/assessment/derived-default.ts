import type { ConditionRow } from '../../schemas/positions.ts';
import type { Catalogue, ConditionId } from '../catalogue.ts';
import { resistanceForCorner } from '../equations/coupling.ts';
import { peakOfSine } from '../equations/sine.ts';
import { storedCharge } from '../equations/inrush.ts';
import { reactiveCurrent } from '../equations/mains.ts';
import { rangeOf } from '../findings/model.ts';
import { impedanceAt } from '../findings/series-elements.ts';
import { resistanceOf } from '../findings/series-resistance.ts';
import { serviceCapacitance } from '../findings/service-capacitance.ts';
import { exactly, mapRising, scale, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { bodyOf } from '../sizes/body-of.ts';
import { TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { nearestPreferred } from '../values/index.ts';
import type { Part } from './parts.ts';

/** What a condition of a position is taken for where the visitor gives no number. */

/** SI factor of a condition's unit. */
const factorOf = (catalogue: Catalogue, id: ConditionId): number => {
  const unit = catalogue.conditionDefinitions[id]?.unit ?? '';
  return catalogue.units[unit]?.factor ?? 1;
};

/** The plain default of a row in SI; a missing end is taken as the typical value. */
export const plainDefault = (catalogue: Catalogue, row: ConditionRow): Range => {
  const typ = row.typ ?? 0;
  return scale(
    { min: row.min ?? typ, typ, max: row.max ?? typ },
    factorOf(catalogue, row.condition),
  );
};

/** The nearest preferred value, since a circuit's resistor was one. */
const asPreferred = (ohm: number): number => nearestPreferred(ohm, 'E12')[0]?.value ?? ohm;

/** Room (m) that follows from a side of the old part, but no less than its lead pitch says. */
const roomFor = (row: ConditionRow, side: Range | undefined, pitch: number): Range =>
  exactly(Math.max((row.min ?? 0) * pitch, (row.typ ?? 0) * (side?.typ ?? 0)));

/**
 * Rating (V) to infer the circuit's voltage from. Types that are often rated far above their circuit
 * say little by their mark, so what is usual for the type counts then; not where the mark is so high that
 * valves may be near.
 */
const tellingRating = (catalogue: Catalogue, { type, ratedVoltage, voltageKind }: Part): number => {
  const row = catalogue.types[type];
  if (row === undefined) return ratedVoltage;
  // A rating for AC says that it bears its peak, whether its type is usually marked so or not.
  const rating = voltageKind === 'ac' ? peakOfSine(ratedVoltage) : ratedVoltage;
  return rating < (row.old_ample_below ?? 0) ? Math.min(rating, row.old_v_typical) : rating;
};

/** Whether circuits leave room for what a part lacks and loses, as they do for electrolytics. */
const isRoomy = ({ families, types }: Catalogue, { type }: Part): boolean =>
  families[types[type]?.family ?? '']?.roomy === true;

/** What a default may follow from besides the rating and the value of the old part. */
export interface Before {
  /** Lead pitch (m) that the place takes; 0 where the position does not ask. */
  room: number;
  /** The conditions that are settled, SI. */
  conditions: Record<ConditionId, Range>;
}

/** Whether a DC voltage (V) tells no more, since before valves are warm far more may stand there. */
export const tellsLittle = ({ max }: ConditionRow, direct: number): boolean =>
  direct > (max ?? Infinity);

/** Voltage (V) that follows from the direct one, or from the rating where that tells more. */
const afterDirect = (
  catalogue: Catalogue,
  row: ConditionRow,
  original: Part,
  conditions: Before['conditions'],
): number => {
  const direct = conditions['vdc']?.max ?? 0;
  return tellsLittle(row, direct)
    ? (row.min ?? 0) * tellingRating(catalogue, original)
    : (row.typ ?? 0) * direct;
};

/** Highest voltage (V) that the mark of a part says that it bears. */
const markedVoltage = ({ ratedVoltage, voltageKind }: Part): number =>
  voltageKind === 'ac' ? peakOfSine(ratedVoltage) : ratedVoltage;

/**
 * Voltage (V) that is a share of what the rating tells, or the least that stands in such a place, as far
 * as the same share of the rating as marked bears it.
 */
const shareOfRating = (
  catalogue: Catalogue,
  { typ = 0, max = 0, condition }: ConditionRow,
  original: Part,
): number => {
  const least = Math.min(max * factorOf(catalogue, condition), typ * markedVoltage(original));
  return Math.max(typ * tellingRating(catalogue, original), least);
};

/** Ways to follow from the rating of the old part, which has a least where a row says so. */
const FOLLOW_RATING: readonly ConditionRow['follows'][] = ['rated-voltage', 'marked-voltage'];

/** What stands in a place at least, V, whatever the rating of the old part, where its row says so. */
export const leastThere = (catalogue: Catalogue, row: ConditionRow): Range | undefined =>
  FOLLOW_RATING.includes(row.follows) && row.max !== undefined
    ? exactly(row.max * factorOf(catalogue, row.condition))
    : undefined;

/** Series resistance (ohm) of a new part like the old one at the working frequency, if it is known. */
const resistanceOfOld = (
  catalogue: Catalogue,
  original: Part,
  conditions: Before['conditions'],
): Range | undefined => {
  const hertz = conditions['f-work']?.typ ?? TABLE_FREQUENCY;
  return resistanceOf(original, { catalogue }, hertz)?.range;
};

/** Impedance (ohm) that a new part like the old one has at worst, but no less than a given one. */
const impedanceOfOld = (
  catalogue: Catalogue,
  { typ, condition }: ConditionRow,
  original: Part,
  conditions: Before['conditions'],
): number => {
  const hertz = conditions['f-work']?.typ ?? TABLE_FREQUENCY;
  const worst = impedanceAt(original, { catalogue }, hertz)?.max ?? 0;
  return Math.max((typ ?? 0) * factorOf(catalogue, condition), worst);
};

/** Current (A) that the charge in the old part at its rating would feed for a time, if not too much. */
const chargeOver = (
  catalogue: Catalogue,
  { typ, max, condition }: ConditionRow,
  old: Part,
): number => {
  const charge = storedCharge(old.capacitance, tellingRating(catalogue, old));
  return Math.min(charge / (typ ?? 1), (max ?? Infinity) * factorOf(catalogue, condition));
};

/** Current (A) that the AC voltage drives through the old value at the working frequency. */
const currentThroughOld = (
  { capacitance }: Part,
  { vac, 'f-work': hertz }: Before['conditions'],
): number => reactiveCurrent(hertz?.typ ?? 0, exactly(capacitance), vac?.typ ?? 0).typ;

/** Slope (1/K) of an old part that was chosen for it, and so for what balances it; 0 for others. */
const slopeCounted = (catalogue: Catalogue, original: Part): number =>
  (rangeOf({ catalogue }, original, 'chosen-slope')?.typ ?? 0) *
  (rangeOf({ catalogue }, original, 'temperature-coefficient')?.typ ?? 0);

/** Load (ohm) that puts the corner of the old part where circuits have it, but no larger than they have. */
const loadFor = (
  catalogue: Catalogue,
  { min, typ = 0, max = Infinity }: ConditionRow,
  original: Part,
): number => {
  const corner = isRoomy(catalogue, original) ? (min ?? typ) : typ;
  return Math.min(max, asPreferred(resistanceForCorner(original.capacitance, corner)));
};

/** Room (m) along the board: what is usual, but no less than the old body is long. */
const roomAlong = (catalogue: Catalogue, row: ConditionRow, old: Part): Range =>
  exactly(Math.max(plainDefault(catalogue, row).typ, bodyOf(catalogue, old)?.length.typ ?? 0));

/** Hole (m) that is usual, but no narrower than the leads of the old part need, where they are known. */
const holeAfter = (catalogue: Catalogue, row: ConditionRow, old: Part): Range => {
  const lead = bodyOf(catalogue, old)?.lead;
  const needed = lead === undefined ? 0 : lead + ruleOf(catalogue, 'lead-clearance');
  return mapRising(plainDefault(catalogue, row), (usual) => Math.max(usual, needed));
};

/** What a default that follows from the old part is worked out from. */
interface Following extends Before {
  catalogue: Catalogue;
  row: ConditionRow;
  original: Part;
}

/** Multiple of what the old part has. */
const times = ({ row }: Following, old: number): Range => exactly((row.typ ?? 0) * old);

/** The number of its row in SI. */
const ownOf = ({ catalogue, row }: Following): number => plainDefault(catalogue, row).typ;

/** The most that is taken, in SI. */
const mostOf = ({ catalogue, row }: Following): number =>
  (row.max ?? Infinity) * factorOf(catalogue, row.condition);

const oldResistance = ({ catalogue, original, conditions }: Following): Range | undefined =>
  resistanceOfOld(catalogue, original, conditions);

/** How a default follows from the old part, by the names that `conditions.csv` uses for it. */
const followings: Partial<Record<ConditionRow['follows'], (from: Following) => Range>> = {
  'rated-voltage': ({ catalogue, row, original }) =>
    exactly(shareOfRating(catalogue, row, original)),
  'marked-voltage': (from) => times(from, markedVoltage(from.original)),
  'direct-voltage': ({ catalogue, row, original, conditions }) =>
    exactly(afterDirect(catalogue, row, original, conditions)),
  corner: ({ catalogue, row, original }) => exactly(loadFor(catalogue, row, original)),
  value: (from) => times(from, from.original.capacitance),
  charge: ({ catalogue, row, original }) => exactly(chargeOver(catalogue, row, original)),
  kept: (from) => times(from, serviceCapacitance(from.original, from).capacitance.min),
  'series-resistance': (from) =>
    exactly(Math.min(times(from, oldResistance(from)?.typ ?? 0).typ, mostOf(from))),
  'least-resistance': (from) =>
    exactly(Math.min(ownOf(from), oldResistance(from)?.min ?? Infinity)),
  'worst-resistance': (from) => exactly(Math.max(ownOf(from), oldResistance(from)?.max ?? 0)),
  slope: (from) => times(from, slopeCounted(from.catalogue, from.original)),
  reactive: (from) => times(from, currentThroughOld(from.original, from.conditions)),
  impedance: ({ catalogue, row, original, conditions }) =>
    exactly(impedanceOfOld(catalogue, row, original, conditions)),
  'body-pitch': ({ catalogue, row, original }) => roomAlong(catalogue, row, original),
  'body-height': ({ catalogue, row, original, room }) =>
    roomFor(row, bodyOf(catalogue, original)?.height, room),
  'body-side': ({ catalogue, row, original, room }) =>
    roomFor(row, bodyOf(catalogue, original)?.length, room),
  'body-lead': ({ catalogue, row, original }) => holeAfter(catalogue, row, original),
};

/**
 * A default that follows from the old part, SI.
 * @throws where its row follows in a way that only parts of other kinds do
 */
export const derivedDefault = (
  catalogue: Catalogue,
  row: ConditionRow,
  original: Part,
  before: Before,
): Range => {
  const follow = followings[row.follows];
  if (follow === undefined)
    throw new Error(`condition ${row.condition} at ${row.position} cannot follow so`);
  return follow({ catalogue, row, original, ...before });
};

/**
 * Ways to follow that want other conditions settled first: what is kept of the old part, its resistance,
 * its current and a rail at its limit depend on temperatures, years, frequency and voltage.
 */
export const FOLLOW_CONDITIONS: readonly ConditionRow['follows'][] = [
  'direct-voltage',
  'kept',
  'reactive',
  'impedance',
  'series-resistance',
  'least-resistance',
  'worst-resistance',
];
