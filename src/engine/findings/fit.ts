import { formatValue } from '../quantities/index.ts';
import type { Part } from '../assessment/parts.ts';
import { mapFalling, scale, type Range } from '../quantities/range.ts';
import { conditionOf, plain, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { covers } from './suitability.ts';

const METRES_PER_MM = 1e-3;

/** Shortest lead pitch (m) on offer for a part; 0 where its leads are bent to fit. */
const shortestPitch = (part: Part, { catalogue }: Circumstances): number | undefined => {
  const offers = catalogue.offers.filter((offer) => covers(offer, part));
  if (offers.length === 0) return undefined;
  const pitches = offers.map((offer) => Math.min(...offer.pitch_mm));
  const shortest = Math.min(...pitches);
  return Number.isFinite(shortest) ? shortest * METRES_PER_MM : 0;
};

/** Bodies smaller than this (m3, 0.15 cm3) are all alike to a board. */
const SMALLEST_BODY = 0.15e-6;

const DENSITY = 'charge-density';

/** Volume (m3) of a part's body, estimated from what its type packs into a given size. */
const bodyVolume = (part: Part, circumstances: Circumstances): Range | undefined => {
  const density = rangeOf(circumstances, part, DENSITY);
  return (
    density &&
    mapFalling(density, (rho) =>
      Math.max(SMALLEST_BODY, (part.capacitance * part.ratedVoltage) / rho),
    )
  );
};

/** Body of the part against that of the old one, by their typical densities. */
export const body: FindingModel = {
  measure: (part, circumstances) => {
    const own = bodyVolume(part, circumstances);
    const old = bodyVolume(circumstances.original, circumstances);
    if (own === undefined || old === undefined) return { status: 'unknown', missing: [DENSITY] };
    // What the old body measured is one size, unknown as it is; only the new one is open.
    return { status: 'known', value: scale(own, 1 / old.typ), properties: [DENSITY] };
  },
  working: (part, circumstances, value) => {
    const own = bodyVolume(part, circumstances);
    const old = bodyVolume(circumstances.original, circumstances);
    const size = (range: Range | undefined): string =>
      range === undefined ? 'unknown' : formatValue(range.typ, 'm3');
    return `about ${size(own)} for ${size(old)}: ${formatValue(value.typ, 'ratio')}`;
  },
};

/** Shortest lead pitch on offer against the room there is. */
export const leadPitch: FindingModel = {
  measure: (part, circumstances) => {
    const pitch = shortestPitch(part, circumstances);
    return pitch === undefined ? { status: 'unknown', missing: ['lead-pitch'] } : plain(pitch);
  },
  working: (_part, circumstances, value) => {
    const room = formatValue(conditionOf(circumstances, 'room').typ, 'm');
    return value.typ === 0
      ? `leads to be bent, or a chip; room for ${room}`
      : `${formatValue(value.typ, 'm')} at the shortest, room for ${room}`;
  },
};
