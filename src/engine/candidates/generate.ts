import type { OfferRow } from '../../schemas/types.ts';
import type { OfferedPart, Part, Tolerance } from '../assessment/parts.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import type { Circumstances } from '../findings/model.ts';
import { neededRating } from '../findings/voltage.ts';
import { isChip, isScrewed } from '../assessment/mounting.ts';
import { isAtLeast, isBetween, ROUNDING } from '../quantities/within.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { nearestMade, valuesBetween, type ValuePolicy } from '../values/index.ts';
import { madeValues } from './made-values.ts';
import { offersOf } from './offers.ts';
import { voltageKindOf } from './voltage-kind.ts';

/** Values of a band that are tried: the nearest few that the position allows. */
const VALUES_PER_BAND = 5;

/** What has been read: tables say the same few tolerances over and over. */
const readBefore = new Map<string, Tolerance>();

/** `5` or `20/80` (minus/plus), in percent, as fractions. */
export const readTolerance = (cell: string): Tolerance => {
  const known = readBefore.get(cell);
  if (known !== undefined) return known;
  const [minus = NaN, plus = minus] = cell.split('/').map((percent) => Number(percent) / 100);
  const tolerance = { minus, plus };
  readBefore.set(cell, tolerance);
  return tolerance;
};

const policyOf = ({ position }: Circumstances): ValuePolicy => ({
  kind: position.value_policy,
  low: position.value_low,
  high: position.value_high,
});

/** Values near the old one, worked out once a series for each set of circumstances. */
const nearValues = new WeakMap<Circumstances, Map<string, number[]>>();

const valuesOfSeries = (series: string, circumstances: Circumstances): number[] => {
  const known = nearValues.get(circumstances) ?? new Map<string, number[]>();
  nearValues.set(circumstances, known);
  const values =
    known.get(series) ??
    nearestMade(circumstances.original.capacitance, policyOf(circumstances), (low, high) =>
      madeValues(circumstances.catalogue, series, low, high),
    ).map((near) => near.value);
  known.set(series, values);
  return values;
};

/** The preferred values of a band nearest to the old one, the allowed ones first. */
const valuesFor = (offer: OfferRow, circumstances: Circumstances): number[] =>
  valuesOfSeries(offer.series, circumstances)
    .filter((farad) => isBetween(farad, offer.c_min, offer.c_max))
    .slice(0, VALUES_PER_BAND);

/** Which of its ratings serve: the lowest that suffices and the next one up; the highest there is where none does. */
const ratingsFor = (offer: OfferRow, circumstances: Circumstances): Ratings => {
  const needed = neededRating({ type: offer.type, voltageKind: offer.voltage_kind }, circumstances);
  const first = offer.voltages.findIndex((volts) => isAtLeast(volts, needed));
  return first < 0 ? [-1] : [first, first + 2];
};

/** Ends of a slice of the ratings of an offer. */
type Ratings = readonly [first: number, after?: number];

/** An offered part with how readily one would choose it, smaller numbers first. */
interface Preference {
  part: OfferedPart;
  /** How far its value lies from the old one. */
  distance: number;
  /** Whether it is a chip, for which a board made for leads has no place. */
  isChip: boolean;
  /** Whether few dealers keep its style. */
  isRare: boolean;
  /** Place of its rating among those that suffice, of its tolerance among those that are stocked. */
  rating: number;
  usual: number;
}

/**
 * How far a value lies from the old one: nothing for the neighbours of a value that is made no more,
 * where the position does not ask for it closely, or 51 nF of 1 % would come before 47 nF: where so much
 * less would do, a few per cent decide nothing. Where at least the old value is asked for, one that is
 * less lies further off than the next larger one, if that is near.
 */
const distanceFrom = (circumstances: Circumstances): ((farad: number) => number) => {
  const { catalogue, original, position } = circumstances;
  const old = original.capacitance;
  const isMade = valuesBetween('E24', old * (1 - ROUNDING), old * (1 + ROUNDING)).length > 0;
  const loose = !isMade && position.value_low <= ruleOf(catalogue, 'loose-value');
  const near = Math.log1p(ruleOf(catalogue, 'as-good-as-nearest'));
  const rather =
    position.value_policy === 'at-least' ? Math.log(ruleOf(catalogue, 'rather-more')) : 0;
  return (farad) => {
    const more = Math.log(farad / old);
    const distance = Math.abs(more);
    if (distance < near) return loose ? 0 : distance;
    return more < 0 ? Math.max(distance, rather) : distance;
  };
};

const partsOf = (
  offer: OfferRow,
  [first, after]: Ratings,
  circumstances: Circumstances,
): Preference[] => {
  const values = valuesFor(offer, circumstances);
  if (values.length === 0) return [];
  const distanceTo = distanceFrom(circumstances);
  const voltages = offer.voltages.slice(first, after);
  const tolerances = offer.tolerances.map(readTolerance);
  const ofChips = isChip(circumstances.catalogue, offer.style);
  const isRare = circumstances.catalogue.seldomStyles.includes(offer.style);
  return values.flatMap((capacitance) => {
    const distance = distanceTo(capacitance);
    return voltages.flatMap((volts, rating) =>
      tolerances.map((tolerance, usual) => ({
        part: {
          type: offer.type,
          capacitance,
          tolerance,
          ratedVoltage: volts,
          voltageKind: offer.voltage_kind,
          style: offer.style,
          pitch: offer.pitch_mm,
          series: offer.series,
        },
        distance,
        isChip: ofChips,
        isRare,
        rating,
        usual,
      })),
    );
  });
};

/** Of values that are alike save for rounding neither is nearer. */
const nearer = (a: number, b: number): number => (Math.abs(a - b) > ROUNDING ? a - b : 0);

const byPreference = (a: Preference, b: Preference): number =>
  nearer(a.distance, b.distance) ||
  Number(a.isChip) - Number(b.isChip) ||
  a.rating - b.rating ||
  Number(a.isRare) - Number(b.isRare) ||
  a.usual - b.usual ||
  b.part.tolerance.plus - a.part.tolerance.plus ||
  a.part.ratedVoltage - b.part.ratedVoltage;

/** The highest rating (V) of a type that is not absurd where so much is needed. */
const highestSensible = (
  { types, rulesOfThumb }: Catalogue,
  type: TypeId,
  needed: number,
): number => {
  const rules = { rulesOfThumb };
  const far = ruleOf(rules, 'high-times-needed') * needed;
  // Films and discs lie about for a few hundred volts; beyond that they are made for pulses and tubes.
  if (types[type]?.old_ample_below !== undefined)
    return Math.max(ruleOf(rules, 'highest-plain-rating'), far);
  const most = ruleOf(rules, 'times-needed') * needed;
  return Math.min(most, Math.max(ruleOf(rules, 'highest-low-rating'), far));
};

/** Parts of a type without those rated absurdly high, where there are others, by rules of thumb. */
const sensiblyRated = (
  type: TypeId,
  parts: readonly OfferedPart[],
  circumstances: Circumstances,
): readonly OfferedPart[] => {
  const sensible = parts.filter(
    (part) =>
      part.ratedVoltage <=
      highestSensible(circumstances.catalogue, type, neededRating(part, circumstances)),
  );
  return sensible.length > 0 ? sensible : parts;
};

/** Parts without those with screws, where others bear as much: boards have holes for wires and pins. */
const forBoards = (
  parts: readonly OfferedPart[],
  circumstances: Circumstances,
): readonly OfferedPart[] => {
  const others = parts.filter(({ style }) => !isScrewed(circumstances.catalogue, style));
  const bears = (part: OfferedPart): boolean =>
    isAtLeast(part.ratedVoltage, neededRating(part, circumstances));
  return others.some(bears) ? others : parts;
};

/**
 * Parts with those of each value first that are rated for no less than the old one: where nobody measured,
 * it is what the circuit is known to be safe with, and costs little.
 */
const keptFirst = (
  parts: readonly OfferedPart[],
  { kept }: Circumstances,
): readonly OfferedPart[] => {
  if (kept === undefined) return parts;
  const isLess = (part: OfferedPart): number =>
    Number(part.voltageKind === 'dc' && part.ratedVoltage < kept);
  return [...Map.groupBy(parts, ({ capacitance }) => capacitance).values()].flatMap((alike) =>
    alike.toSorted((a, b) => isLess(a) - isLess(b)),
  );
};

/** How many lists of parts are remembered; with more, all are forgotten. */
const MOST_REMEMBERED = 5000;

/**
 * Parts in the order of preference, by what they follow from. Another condition seldom asks for
 * another rating, so a board whose conditions change meets the same parts again, with all that has
 * been looked up of them.
 */
const offeredBefore = new WeakMap<Catalogue, Map<string, readonly OfferedPart[]>>();

const inOrder = (
  catalogue: Catalogue,
  type: TypeId,
  circumstances: Circumstances,
): readonly OfferedPart[] => {
  const offers = offersOf(catalogue, type);
  const ratings = offers.map((offer) => ratingsFor(offer, circumstances));
  const { kind, low, high } = policyOf(circumstances);
  const firsts = ratings.map(([first]) => first);
  const key = [type, kind, low, high, circumstances.original.capacitance, ...firsts].join(' ');
  const known = offeredBefore.get(catalogue) ?? new Map<string, readonly OfferedPart[]>();
  offeredBefore.set(catalogue, known);
  const remembered = known.get(key);
  if (remembered !== undefined) return remembered;
  const parts = offers
    .flatMap((offer, index) => partsOf(offer, ratings[index] ?? [-1], circumstances))
    .toSorted(byPreference)
    .map(({ part }) => part);
  if (known.size >= MOST_REMEMBERED) known.clear();
  known.set(key, parts);
  return parts;
};

/**
 * Every part of a type that the market offers for the old value, voltage and position, in the
 * order in which one would choose if all were equally good: the nearest value, leads before pads, the lowest rating
 * that suffices in what many dealers keep, the tolerance that is usual, of two usual ones the looser.
 */
export const offeredParts = (
  catalogue: Catalogue,
  type: TypeId,
  circumstances: Circumstances,
): readonly OfferedPart[] =>
  keptFirst(
    forBoards(
      sensiblyRated(type, inOrder(catalogue, type, circumstances), circumstances),
      circumstances,
    ),
    circumstances,
  );

/** A part of a type that no offer covers, so that its findings can still be shown. */
export const unofferedPart = (type: TypeId, circumstances: Circumstances): Part => {
  const row = circumstances.catalogue.types[type];
  return {
    type,
    capacitance: circumstances.original.capacitance,
    tolerance: readTolerance(row?.old_tolerance ?? '20'),
    ratedVoltage: row?.old_v_typical ?? circumstances.original.ratedVoltage,
    voltageKind: row === undefined ? 'dc' : voltageKindOf(row),
  };
};
