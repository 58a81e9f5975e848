import type { KindOfferRow } from '../../schemas/kinds.ts';
import { madeValues } from '../candidates/made-values.ts';
import { readTolerance } from '../candidates/generate.ts';
import type { TypeId } from '../catalogue.ts';
import type { Unit } from '../quantities/index.ts';
import { isAtLeast, isBetween, ROUNDING } from '../quantities/within.ts';
import { nearestMade } from '../values/index.ts';
import type { KindCircumstances, KindPart, OfferedKindPart } from './part.ts';

/** Values of a band that are tried: the nearest few that the position allows. */
const VALUES_PER_BAND = 3;

/** Whether an offer has parts of a value. */
export const holds = ({ value_min, value_max }: KindOfferRow, value: number): boolean =>
  isBetween(value, value_min ?? 0, value_max ?? Infinity);

const valuesOf = (
  offer: KindOfferRow,
  { catalogue, original, position }: KindCircumstances,
): (number | undefined)[] => {
  const { value } = original;
  if (value === undefined || offer.series === '') return [undefined];
  const { value_policy: kind, value_low: low, value_high: high } = position;
  return nearestMade(value, { kind, low, high }, (from, to) =>
    madeValues({ valueLists: catalogue.kindValues }, offer.series, from, to),
  )
    .map((near) => near.value)
    .filter((near) => holds(offer, near))
    .slice(0, VALUES_PER_BAND);
};

/** A rating below that of the old part comes behind every one above it: decades that no offer spans. */
const BELOW = 100;

/** How far a rating is from what one would choose: that of the old part, the next above, the next below. */
const ratingStep = (rating: number | undefined, old: number | undefined): number => {
  if (rating === undefined || old === undefined) return 0;
  const above = Math.log10(rating / old);
  return isAtLeast(rating, old) ? Math.max(0, above) : BELOW - above;
};

/** All ratings of an offer; the lowest where nothing says what the old part had. */
const ratingsOf = (
  { ratings }: KindOfferRow,
  { original: { rating } }: KindCircumstances,
): readonly (number | undefined)[] =>
  ratings.length === 0 || rating === undefined ? [ratings[0]] : ratings;

interface Preference {
  part: OfferedKindPart;
  order: readonly number[];
}

const partsOf = (offer: KindOfferRow, circumstances: KindCircumstances): Preference[] => {
  const { kind, original } = circumstances;
  const tolerances = offer.tolerances.length === 0 ? [undefined] : offer.tolerances;
  return valuesOf(offer, circumstances).flatMap((value) =>
    ratingsOf(offer, circumstances).flatMap((rating) =>
      tolerances.map((cell, usual) => ({
        part: {
          type: offer.type,
          ...(value === undefined ? {} : { value, unit: kind.unit as Unit }),
          ...(cell === undefined ? {} : { tolerance: readTolerance(cell) }),
          ...(rating === undefined ? {} : { rating, ratingUnit: kind.rating_unit as Unit }),
          style: offer.style,
          pitch: offer.pitch_mm,
          series: offer.series,
        },
        order: [
          value === undefined ? 0 : Math.abs(Math.log(value / (original.value ?? value))),
          ratingStep(rating, original.rating),
          usual,
        ],
      })),
    ),
  );
};

const compareOrders = (a: readonly number[], b: readonly number[]): number =>
  a.map((mine, index) => mine - (b[index] ?? 0)).find((step) => Math.abs(step) > ROUNDING) ?? 0;

/**
 * Every part of a type that the market offers for the old value and position, in the order in which
 * one would choose if all were equally good: the nearest value, the rating of the old part or the
 * next above, the tolerance that is usual.
 */
export const offeredKindParts = (
  type: TypeId,
  circumstances: KindCircumstances,
): OfferedKindPart[] =>
  circumstances.catalogue.kindOffers
    .filter((offer) => offer.type === type)
    .flatMap((offer) => partsOf(offer, circumstances))
    .toSorted((a, b) => compareOrders(a.order, b.order))
    .map(({ part }) => part);

/** A part of a type that no offer covers, so that its findings can still be shown. */
export const unofferedKindPart = (
  type: TypeId,
  { catalogue, original }: KindCircumstances,
): KindPart => {
  const row = catalogue.kindTypes[type];
  const cell = row?.old_tolerance ?? '';
  return {
    ...original,
    type,
    ...(cell === '' ? {} : { tolerance: readTolerance(cell) }),
  };
};
