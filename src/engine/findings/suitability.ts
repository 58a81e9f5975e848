import type { OfferRow } from '../../schemas/types.ts';
import { plain, rangeOf, type Circumstances, type FindingModel, type Outcome } from './model.ts';
import { keepsItsSign, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { offersOf } from '../candidates/offers.ts';
import { TABLE_ROUNDING } from '../sizes/interpolate.ts';

const SUITS = plain(0);
const DOES_NOT = plain(1);

const typeOf = (part: Part, { catalogue }: Circumstances) => catalogue.types[part.type];

/** A polar part needs a voltage that keeps its sign. */
export const polarity: FindingModel = {
  measure: (part, circumstances): Outcome => {
    const polarity = typeOf(part, circumstances)?.polarity;
    if (circumstances.position.voltage_sense === 'one sign') return SUITS;
    if (keepsItsSign(part, polarity)) return DOES_NOT;
    return polarity === 'unknown' ? { status: 'unknown', missing: ['polarity'] } : SUITS;
  },
  working: (part, circumstances, value) => {
    const sense = circumstances.position.voltage_sense;
    const polar = keepsItsSign(part, typeOf(part, circumstances)?.polarity);
    if (value.typ > 0) return 'polar part, but the voltage here takes both signs';
    return polar
      ? 'polar part, and the voltage here keeps one sign: mind which way round'
      : `non-polar ${part.made?.kind === 'back-to-back' ? 'pair' : 'part'}; the voltage here is of ${sense === 'ac' ? 'both signs' : sense}`;
  },
};

/** Whether it is known which way round a polar part goes: a part that was not polar does not tell. */
export const signKnown: FindingModel = {
  measure: (part, circumstances) => {
    const { original } = circumstances;
    const minds = keepsItsSign(part, typeOf(part, circumstances)?.polarity);
    const told = keepsItsSign(original, typeOf(original, circumstances)?.polarity);
    return minds && !told ? DOES_NOT : SUITS;
  },
  working: (part, circumstances, value) => {
    if (value.typ > 0)
      return 'polar part where the old one was not: measure which end is positive, in use and at switch-on';
    return keepsItsSign(part, typeOf(part, circumstances)?.polarity)
      ? 'the old part was polar too: its marking and the board say which end is positive'
      : 'either way round will do';
  },
};

/** A mains position takes only an approved part. */
export const safetyClass: FindingModel = {
  measure: (part, circumstances) => {
    const wanted = circumstances.position.safety;
    const has = typeOf(part, circumstances)?.safety_classes ?? [];
    return wanted.length === 0 || wanted.some((duty) => has.includes(duty)) ? SUITS : DOES_NOT;
  },
  working: (part, circumstances) => {
    const wanted = circumstances.position.safety;
    const has = typeOf(part, circumstances)?.safety_classes ?? [];
    if (wanted.length === 0) return 'no mains duty here';
    return `the place asks for approval as ${wanted.join(' or ')}, and this type has ${has.join(', ') || 'none'}`;
  },
};

/** Whether an offer covers a part's type, value and rating. */
export const covers = (offer: OfferRow, part: Part): boolean =>
  offer.type === part.type &&
  offer.c_min <= part.capacitance * (1 + TABLE_ROUNDING) &&
  offer.c_max >= part.capacitance * (1 - TABLE_ROUNDING) &&
  offer.voltages.includes(part.ratedVoltage);

/** Whether such a part is made today. */
export const availability: FindingModel = {
  measure: (part, { catalogue }) => {
    const offers = singleParts(part).map((single) =>
      offersOf(catalogue, single.type).find((offer) => covers(offer, single)),
    );
    const found = offers.filter((offer) => offer !== undefined);
    if (found.length < offers.length) return { ...DOES_NOT, bases: ['common-practice'] };
    // How it is put together is as much a ground for it as where to buy it.
    const made = part.made && catalogue.combinations[part.made.kind];
    const grounds = made === undefined ? found : [...found, made];
    return {
      ...SUITS,
      sources: grounds.map(({ source }) => source).filter((id) => id !== ''),
      bases: grounds.map(({ basis }) => basis),
    };
  },
  working: (part, circumstances, value) => {
    if (value.typ > 0) return 'not made in this value and voltage';
    const market = typeOf(part, circumstances)?.market;
    if (market === 'niche') return 'made, but few stock it';
    return market === 'common' ? 'made and stocked everywhere' : 'made and stocked';
  },
};

/** Whether a knock makes a voltage. */
export const microphony: FindingModel = {
  measure: (part, circumstances) => {
    const range = rangeOf(circumstances, part, 'piezoelectric');
    return range === undefined
      ? { status: 'unknown', missing: ['piezoelectric'] }
      : { status: 'known', value: range, properties: ['piezoelectric'] };
  },
  working: (_part, _circumstances, value) => {
    if (value.max === 0) return 'a knock makes no voltage';
    return value.min === 1 ? 'a knock makes a voltage' : 'a knock may make a voltage';
  },
};
