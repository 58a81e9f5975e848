import { plain, type Outcome } from '../../findings/model.ts';
import { asBought } from '../../findings/value.ts';
import { formatValue, type Unit } from '../../quantities/index.ts';
import { exactly } from '../../quantities/range.ts';
import { holds } from '../offered.ts';
import type { KindModel, KindPart } from '../part.ts';
import { isTaper } from '../tapers.ts';
import { valueOf } from './of-part.ts';

const SUITS = plain(0);
const DOES_NOT = plain(1);

const written = (number: number | undefined, unit: Unit | undefined): string =>
  number === undefined || unit === undefined ? 'none' : formatValue(number, unit);

/** Marked value of the part over that of the old one. */
export const markedValue: KindModel = {
  measure: (part, { original }) => plain(valueOf(part) / valueOf(original)),
  working: (part, { original }, ratio) =>
    `${written(part.value, part.unit)} / ${written(original.value, original.unit)} = ` +
    formatValue(ratio.typ, 'ratio'),
};

/** How far the part as bought may be off its mark, the worse side. */
export const partTolerance: KindModel = {
  measure: ({ tolerance }): Outcome =>
    tolerance === undefined
      ? { status: 'unknown', missing: [] }
      : {
          status: 'known',
          value: exactly(Math.max(tolerance.minus, tolerance.plus)),
          properties: [],
        },
  working: ({ tolerance }) => (tolerance === undefined ? 'not known' : asBought(tolerance)),
};

const worse = ({ tolerance }: KindPart): number =>
  Math.max(tolerance?.minus ?? NaN, tolerance?.plus ?? NaN);

/** How many times as far off its mark the part as bought may be as the old one was. */
export const toleranceKept: KindModel = {
  measure: (part, { original }) => {
    const ratio = worse(part) / worse(original);
    return Number.isFinite(ratio) ? plain(ratio) : { status: 'unknown', missing: [] };
  },
  working: (part, { original }, ratio) =>
    `${formatValue(worse(part), 'fraction')} / ${formatValue(worse(original), 'fraction')} = ` +
    formatValue(ratio.typ, 'ratio'),
};

/** Rating of the part over that of the old one. */
export const ratingKept: KindModel = {
  measure: (part, { original }) => plain((part.rating ?? NaN) / (original.rating ?? NaN)),
  working: (part, { original }, ratio) =>
    `${written(part.rating, part.ratingUnit)} / ${written(original.rating, original.ratingUnit)} = ` +
    formatValue(ratio.typ, 'ratio'),
};

/** Whether the part is made for every duty that the position asks. */
export const duty: KindModel = {
  measure: ({ type }, { catalogue, position }) =>
    position.duties.every((one) => catalogue.kindTypes[type]?.duties.includes(one) === true)
      ? SUITS
      : DOES_NOT,
  working: ({ type }, { catalogue, position }) => {
    if (position.duties.length === 0) return 'no special duty here';
    const has = catalogue.kindTypes[type]?.duties ?? [];
    const none = position.duties.length > 1 ? 'neither' : 'not';
    const asked = `the place asks for a part that is ${position.duties.join(' and ')}`;
    // A track is ordered with one taper or the other; what a type is besides says nothing here.
    const asksTaper = position.duties.every(isTaper);
    if (asksTaper && position.duties.every((one) => has.includes(one)))
      return `${asked}, and this type is sold so`;
    return `${asked}; this type is ${has.join(' and ') || none}`;
  },
};

const covered = (part: KindPart, rating: readonly number[]): boolean =>
  part.rating === undefined || rating.length === 0 || rating.includes(part.rating);

/** Whether such a part is made today. */
export const kindAvailability: KindModel = {
  measure: (part, { catalogue }) => {
    const offer = catalogue.kindOffers.find(
      (one) =>
        one.type === part.type &&
        (part.value === undefined || holds(one, part.value)) &&
        covered(part, one.ratings),
    );
    return offer === undefined
      ? { ...DOES_NOT, bases: ['common-practice'] }
      : { ...SUITS, sources: [offer.source], bases: [offer.basis] };
  },
  working: ({ type }, { catalogue }, value) => {
    if (value.typ > 0) return 'not made in this value and rating';
    const market = catalogue.kindTypes[type]?.market;
    if (market === 'niche') return 'made, but few stock it';
    return market === 'common' ? 'made and stocked everywhere' : 'made and stocked';
  },
};
