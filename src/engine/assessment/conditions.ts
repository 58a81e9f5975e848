import { storedCharge } from '../equations/inrush.ts';
import type { ConditionRow } from '../../schemas/positions.ts';
import type { Catalogue, ConditionId } from '../catalogue.ts';
import { resistanceForCorner } from '../equations/coupling.ts';
import { crestOf } from '../equations/crest.ts';
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
import { rowsAt } from './at-position.ts';
import { completeOriginal, rowNamed } from './original.ts';
import type { OldPart, Part, Request } from './parts.ts';

/** One condition as an assessment uses it. */
export interface ResolvedCondition {
  id: ConditionId;
  /** SI */
  range: Range;
  /** given by the visitor; a default of the position; derived from the old part. */
  from: 'given' | 'default' | 'derived';
  row: ConditionRow;
}

/** Everything that an assessment starts from, filled in. */
export interface Situation {
  original: OldPart;
  conditions: ResolvedCondition[];
}

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
  // A rating for AC says that it bears its crest, whether its type is usually marked so or not.
  const rating = voltageKind === 'ac' ? crestOf(ratedVoltage) : ratedVoltage;
  return rating < (row.old_ample_below ?? 0) ? Math.min(rating, row.old_v_typical) : rating;
};

/** Whether circuits leave room for what a part lacks and loses, as they do for electrolytics. */
const isRoomy = ({ families, types }: Catalogue, { type }: Part): boolean =>
  families[types[type]?.family ?? '']?.roomy === true;

/** What a default may follow from besides the rating and the value of the old part. */
interface Before {
  /** Lead pitch (m) that the place takes; 0 where the position does not ask. */
  room: number;
  /** The conditions that are settled, SI. */
  conditions: Record<ConditionId, Range>;
}

/** Whether a direct voltage (V) tells no more, since before valves are warm far more may stand there. */
const tellsLittle = ({ max }: ConditionRow, direct: number): boolean => direct > (max ?? Infinity);

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
  voltageKind === 'ac' ? crestOf(ratedVoltage) : ratedVoltage;

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

/** Voltage (V) that follows from the rating of the old part, by what it tells or as it is marked. */
const afterRating = (catalogue: Catalogue, row: ConditionRow, original: Part): number =>
  row.follows === 'marked-voltage'
    ? (row.typ ?? 0) * markedVoltage(original)
    : shareOfRating(catalogue, row, original);

/** Ways to follow from the rating of the old part, which has a least where a row says so. */
const FOLLOW_RATING: readonly ConditionRow['follows'][] = ['rated-voltage', 'marked-voltage'];

/** What stands in a place at least, V, whatever the rating of the old part, where its row says so. */
const leastThere = (catalogue: Catalogue, row: ConditionRow): Range | undefined =>
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

/** Ways to follow from the series resistance of the old part. */
const FOLLOW_RESISTANCE: readonly ConditionRow['follows'][] = [
  'series-resistance',
  'least-resistance',
  'worst-resistance',
];

/** Resistance (ohm) that follows from the usual one of the old part, from its lowest or its highest. */
const resistanceAfterOld = (
  catalogue: Catalogue,
  { follows, typ = 0, max = Infinity, condition }: ConditionRow,
  original: Part,
  conditions: Before['conditions'],
): number => {
  const old = resistanceOfOld(catalogue, original, conditions);
  const factor = factorOf(catalogue, condition);
  if (follows === 'least-resistance') return Math.min(typ * factor, old?.min ?? Infinity);
  if (follows === 'worst-resistance') return Math.max(typ * factor, old?.max ?? 0);
  return Math.min(typ * (old?.typ ?? 0), max * factor);
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

/** Current (A) that the alternating voltage drives through the old value at the working frequency. */
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

/** Room (m) that follows from the body of the old part. */
const roomAfter = (catalogue: Catalogue, row: ConditionRow, old: Part, pitch: number): Range => {
  const body = bodyOf(catalogue, old);
  if (row.follows === 'body-pitch')
    return exactly(Math.max(plainDefault(catalogue, row).typ, body?.length.typ ?? 0));
  return roomFor(row, row.follows === 'body-height' ? body?.height : body?.length, pitch);
};

/** Hole (m) that is usual, but no narrower than the leads of the old part need, where they are known. */
const holeAfter = (catalogue: Catalogue, row: ConditionRow, old: Part): Range => {
  const lead = bodyOf(catalogue, old)?.lead;
  const needed = lead === undefined ? 0 : lead + ruleOf(catalogue, 'lead-clearance');
  return mapRising(plainDefault(catalogue, row), (usual) => Math.max(usual, needed));
};

/** A default that follows from the old part. */
const derivedDefault = (
  catalogue: Catalogue,
  row: ConditionRow,
  original: Part,
  { room, conditions }: Before,
): Range => {
  const rule = row.typ ?? 0;
  if (FOLLOW_RESISTANCE.includes(row.follows))
    return exactly(resistanceAfterOld(catalogue, row, original, conditions));
  if (FOLLOW_RATING.includes(row.follows)) return exactly(afterRating(catalogue, row, original));
  switch (row.follows) {
    case 'direct-voltage':
      return exactly(afterDirect(catalogue, row, original, conditions));
    case 'corner':
      return exactly(loadFor(catalogue, row, original));
    case 'value':
      return exactly(rule * original.capacitance);
    case 'charge':
      return exactly(chargeOver(catalogue, row, original));
    case 'kept':
      return exactly(
        rule * serviceCapacitance(original, { catalogue, conditions }).capacitance.min,
      );
    case 'slope':
      return exactly(rule * slopeCounted(catalogue, original));
    case 'reactive':
      return exactly(rule * currentThroughOld(original, conditions));
    case 'impedance':
      return exactly(impedanceOfOld(catalogue, row, original, conditions));
    case 'body-pitch':
    case 'body-height':
    case 'body-side':
      return roomAfter(catalogue, row, original, room);
    case 'body-lead':
      return holeAfter(catalogue, row, original);
    default:
      throw new Error(`condition ${row.condition} at ${row.position} cannot follow so`);
  }
};

/** What is kept of the old part, its resistance, its current and a rail at its limit depend on temperatures, years, frequency and voltage. */
const FOLLOW_CONDITIONS: readonly ConditionRow['follows'][] = [
  'direct-voltage',
  'kept',
  'reactive',
  'impedance',
  ...FOLLOW_RESISTANCE,
];

const STEADY = ['vdc', 'v-surge'];
const ALTERNATING = ['vac'];

/**
 * The old part completed and every condition of the position: the visitor's numbers where given,
 * the documented defaults elsewhere.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const resolveSituation = (catalogue: Catalogue, request: Request): Situation => {
  const position = rowNamed(catalogue.positions, request.position, 'position');
  const rows = rowsAt(catalogue.conditions, position.id);
  const said = (row: ConditionRow): Range | undefined =>
    request.conditions?.[row.condition] ??
    (row.follows === '' ? plainDefault(catalogue, row) : undefined);
  const steady = rows.find(({ condition }) => condition === 'vdc');
  const direct = (steady && said(steady))?.max;
  /** What is known of a voltage before the rating of the old part is. */
  const known = (row: ConditionRow): Range | undefined =>
    said(row) ??
    leastThere(catalogue, row) ??
    (row.follows !== 'direct-voltage' || direct === undefined || tellsLittle(row, direct)
      ? undefined
      : exactly((row.typ ?? 0) * direct));
  const highest = (stresses: readonly ConditionId[]): number =>
    Math.max(
      0,
      ...rows.filter((row) => stresses.includes(row.condition)).map((row) => known(row)?.max ?? 0),
    );
  const original = completeOriginal(catalogue, request.original, position, {
    peak: highest(STEADY),
    effective: highest(ALTERNATING),
  });
  const pitch = rows.find(({ condition }) => condition === 'room');
  const room =
    (request.conditions?.['room'] ?? (pitch && plainDefault(catalogue, pitch)))?.typ ?? 0;
  const resolve = (row: ConditionRow, conditions: Before['conditions']): ResolvedCondition => {
    const given = request.conditions?.[row.condition];
    if (given !== undefined) return { id: row.condition, range: given, from: 'given', row };
    return row.follows === ''
      ? { id: row.condition, range: plainDefault(catalogue, row), from: 'default', row }
      : {
          id: row.condition,
          range: derivedDefault(catalogue, row, original, { room, conditions }),
          from: 'derived',
          row,
        };
  };
  const first = rows
    .filter(({ follows }) => !FOLLOW_CONDITIONS.includes(follows))
    .map((row) => resolve(row, {}));
  const settled = Object.fromEntries(first.map(({ id, range }) => [id, range]));
  const conditions = rows.map(
    (row) => first.find((one) => one.row === row) ?? resolve(row, settled),
  );
  return { original, conditions };
};
