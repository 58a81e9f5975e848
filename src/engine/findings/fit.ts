import { formatValue } from '../quantities/index.ts';
import { singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { offersOf } from '../candidates/offers.ts';
import { exactly, mapRising, scale, type Range } from '../quantities/range.ts';
import { MILLIMETRE } from '../quantities/si.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { bodyOf, DENSITY, type Sized } from '../sizes/body-of.ts';
import type { Body } from '../sizes/body.ts';
import { bodyWords } from '../sizes/body-words.ts';
import {
  conditionOf,
  knowledgeOf,
  plain,
  rangeOf,
  type Circumstances,
  type FindingModel,
  type Outcome,
} from './model.ts';
import { covers } from './suitability.ts';

/** What a figure read from a body rests on. */
const restingOn = (value: Range, { from, sources, bases }: Body): Outcome => ({
  status: 'known',
  value,
  properties: from === 'estimate' ? [DENSITY] : [],
  sources: [...sources],
  bases: [...bases],
});

const NO_BODY: Outcome = { status: 'unknown', missing: [DENSITY] };

/** A finding that is one figure of the body. */
const bodyModel = (
  figure: (body: Body, circumstances: Circumstances) => Range | undefined,
  working: FindingModel['working'],
): FindingModel => ({
  measure: (part, circumstances) => {
    const own = bodyOf(circumstances.catalogue, part);
    const value = own && figure(own, circumstances);
    return own === undefined || value === undefined ? NO_BODY : restingOn(value, own);
  },
  working,
});

const bodyInWords = (part: Part, { catalogue }: Circumstances): string => {
  const own = bodyOf(catalogue, part);
  return own === undefined ? 'size not known' : bodyWords(own);
};

/** Volume of the body against that of the old one, neither less than what a board notices. */
export const body: FindingModel = bodyModel(
  ({ volume }, { catalogue, original }) => {
    const old = bodyOf(catalogue, original);
    const least = ruleOf(catalogue, 'least-body');
    const seenByBoard = (one: number): number => Math.max(least, one);
    // What the old body measured is one size, unknown as it is; only the new one is open.
    return old && scale(mapRising(volume, seenByBoard), 1 / seenByBoard(old.volume.typ));
  },
  (part, circumstances, value) => {
    const volume = (one: Part): string => {
      const own = bodyOf(circumstances.catalogue, one);
      return own === undefined ? 'unknown' : formatValue(own.volume.typ, 'm3');
    };
    return (
      `${bodyInWords(part, circumstances)}: ${volume(part)} for ` +
      `${volume(circumstances.original)} (${bodyInWords(circumstances.original, circumstances)}): ` +
      formatValue(value.typ, 'ratio')
    );
  },
);

/** Height above the board against the free height. */
export const height: FindingModel = bodyModel(
  (own) => own.height,
  (part, circumstances, value) =>
    `${bodyInWords(part, circumstances)}: ${formatValue(value.typ, 'm')} high, ` +
    `room for ${formatValue(conditionOf(circumstances, 'height-room').typ, 'm')}`,
);

/** Longest side on the board against the room there is. */
export const side: FindingModel = bodyModel(
  (own) => own.length,
  (part, circumstances, value) =>
    `${bodyInWords(part, circumstances)}: ${formatValue(value.typ, 'm')} long, ` +
    `room for ${formatValue(conditionOf(circumstances, 'side-room').typ, 'm')}`,
);

/** Shortest lead pitch (m) on offer for a part; 0 where its leads are bent to fit. */
const shortestOffered = (part: Sized & Part, { catalogue }: Circumstances): number | undefined => {
  const offers = offersOf(catalogue, part.type).filter(
    (offer) => covers(offer, part) && (part.style ?? offer.style) === offer.style,
  );
  if (offers.length === 0) return undefined;
  const shortest = Math.min(...offers.map((offer) => Math.min(...offer.pitch_mm)));
  return Number.isFinite(shortest) ? shortest * MILLIMETRE : 0;
};

/** The same of a part that may be made of two: what the wider one needs. */
const shortestOfAll = (part: Part, circumstances: Circumstances): number | undefined => {
  const each = singleParts(part).map((single) => shortestOffered(single, circumstances));
  const known = each.filter((pitch) => pitch !== undefined);
  return known.length < each.length ? undefined : Math.max(...known);
};

/** Shortest lead pitch against the room there is: of the body where it is known, else on offer. */
export const leadPitch: FindingModel = {
  measure: (part, circumstances) => {
    const offered = shortestOfAll(part, circumstances);
    if (offered === undefined) return { status: 'unknown', missing: ['lead-pitch'] };
    const own = bodyOf(circumstances.catalogue, part);
    return own === undefined || own.pitch.length === 0
      ? plain(offered)
      : restingOn(exactly(Math.min(...own.pitch)), own);
  },
  working: (part, circumstances, value) => {
    const room = formatValue(conditionOf(circumstances, 'room').typ, 'm');
    if (value.typ === 0) return `leads to be bent, or a chip; room for ${room}`;
    const own = bodyOf(circumstances.catalogue, part);
    const from =
      own === undefined || own.pitch.length === 0
        ? 'at the shortest on offer'
        : `at the shortest, for ${bodyWords(own)}`;
    return `${formatValue(value.typ, 'm')} ${from}, room for ${room}`;
  },
};

const LEAD = 'lead-wire';

/** Clearance (m) that a lead asks of its hole. */
const clearanceIn = ({ catalogue }: Circumstances): number => ruleOf(catalogue, 'lead-clearance');

/** Thickness (m) of the leads: of the body where its table says, else of the type. */
const leadOf = (part: Part, circumstances: Circumstances): Outcome => {
  const own = bodyOf(circumstances.catalogue, part);
  if (own?.shape === 'chip') return plain(0);
  if (own?.lead !== undefined) return restingOn(exactly(own.lead), own);
  const known = knowledgeOf(circumstances, part, LEAD);
  if (known.status === 'not-applicable') return plain(0);
  const range = rangeOf(circumstances, part, LEAD);
  return range === undefined
    ? { status: 'unknown', missing: [LEAD] }
    : { status: 'known', value: range, properties: [LEAD] };
};

/** Hole that the lead needs against the hole there is. */
export const leadWire: FindingModel = {
  measure: (part, circumstances) => {
    const lead = leadOf(part, circumstances);
    if (lead.status === 'unknown' || lead.value.max === 0) return lead;
    const { min, typ, max } = lead.value;
    const room = clearanceIn(circumstances);
    return { ...lead, value: { min: min + room, typ: typ + room, max: max + room } };
  },
  working: (_part, circumstances, value) => {
    const hole = formatValue(conditionOf(circumstances, 'hole').typ, 'm');
    const room = clearanceIn(circumstances);
    return value.max === 0
      ? `no leads; hole of ${hole}`
      : `leads of ${formatValue(value.typ - room, 'm')} and ` +
          `${formatValue(room, 'm')} to spare, hole of ${hole}`;
  },
};
