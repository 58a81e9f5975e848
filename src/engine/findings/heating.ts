import { heatByCurrent } from '../equations/heat.ts';
import { currentShare, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, PropertyId, SourceId } from '../catalogue.ts';
import {
  canRise,
  currentForRise,
  heatForRise,
  rippleTaken,
  riseByList,
  type Cooling,
} from '../equations/ripple.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { mapRising, scale, type Range } from '../quantities/range.ts';
import { bodyOf, DENSITY } from '../sizes/body-of.ts';
import { bodyWords } from '../sizes/body-words.ts';
import type { Body } from '../sizes/body.ts';
import { coolingSurface, coreRiseOf } from '../sizes/surface.ts';
import { coolingBy } from '../laws.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { listingOf, type RippleListing } from './listed-ripple.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { originOf, resistanceOf, type PartResistance } from './series-resistance.ts';

/** What the heat of a single part follows from. */
export interface Thermal {
  resistance: PartResistance;
  body: Body;
  /** m2 */
  surface: Range;
  cooling: Cooling;
  /** Rise of the core over that of the surface. */
  core: number;
  properties: PropertyId[];
  sources: SourceId[];
  bases: Basis[];
}

const findThermal = (part: Part, circumstances: Circumstances): Thermal | PropertyId[] => {
  const body = bodyOf(circumstances.catalogue, part);
  if (body === undefined) return [DENSITY];
  const hertz = conditionOf(circumstances, 'f-work').typ;
  const resistance = resistanceOf(part, circumstances, hertz);
  if (resistance === undefined) return ['dissipation-factor-120hz'];
  const core = coreRiseOf(circumstances.catalogue, part.type, body);
  return {
    resistance,
    body,
    surface: coolingSurface(circumstances.catalogue, body),
    cooling: coolingBy(circumstances.catalogue),
    core: core?.ratio ?? 1,
    properties: [...resistance.properties, ...(body.from === 'estimate' ? [DENSITY] : [])],
    sources: [...new Set([...resistance.sources, ...body.sources, ...(core ? [core.source] : [])])],
    bases: [...resistance.bases, ...body.bases, ...(core ? [core.basis] : [])],
  };
};

/** What has been found: heat, life and ripple current ask for the same of each part. */
const found = new WeakMap<Circumstances, WeakMap<Part, Thermal | PropertyId[]>>();

/**
 * What the heat of a single part follows from, by its series resistance at the working frequency
 * and the surface of its body; what is missing where either is not known.
 */
export const thermalOf = (part: Part, circumstances: Circumstances): Thermal | PropertyId[] => {
  const all = found.get(circumstances) ?? new WeakMap<Part, Thermal | PropertyId[]>();
  found.set(circumstances, all);
  const thermal = all.get(part) ?? findThermal(part, circumstances);
  all.set(part, thermal);
  return thermal;
};

/** Heat (W) that a single part gives off when its surface is so much (K) warmer than the air. */
export const heatFor = (
  part: Part,
  { catalogue }: Circumstances,
  rise: number,
): Range | undefined => {
  const body = bodyOf(catalogue, part);
  return (
    body &&
    mapRising(coolingSurface(catalogue, body), (surface) =>
      heatForRise(rise, surface, coolingBy(catalogue)),
    )
  );
};

/** Current (A) that warms the core of a single part by so much (K). */
export const currentFor = (
  { resistance: { range: ohm }, surface, cooling, core }: Thermal,
  rise: number,
): Range => ({
  min: currentForRise(rise / core, ohm.max, surface.min, cooling),
  typ: currentForRise(rise / core, ohm.typ, surface.typ, cooling),
  max: currentForRise(rise / core, ohm.min, surface.max, cooling),
});

/**
 * The most (K) that a current (A) warms a part by what its sheet lists: the listed one warms it as
 * much as parts are taken to bear, however high its resistance, and heat goes by the square.
 */
const mostByList = (
  part: Part,
  current: number,
  circumstances: Circumstances,
): { rise: number; listing: RippleListing } | undefined => {
  const listing = listingOf(part, circumstances);
  if (listing === undefined) return undefined;
  const listed = rippleTaken(listing.ripple.current, listing.frequency.factor, 1);
  const borne = ruleOf(circumstances.catalogue, 'ripple-rise');
  return { rise: riseByList(current, listed, borne), listing };
};

/** How a current warms a part, and what that was worked out from. */
export interface Heating {
  /** Of the core, K. */
  rise: Range;
  /** What the sheet of the part says, where that bounds the rise. */
  listing: RippleListing | undefined;
  /** A */
  current: Range;
  thermal: Thermal;
}

const heatingOfSingle = (
  part: Part,
  current: Range,
  circumstances: Circumstances,
): Heating | PropertyId[] => {
  const thermal = thermalOf(part, circumstances);
  if (Array.isArray(thermal)) return thermal;
  const { resistance, surface, cooling, core } = thermal;
  const rise = {
    min: core * canRise(current.min, resistance.range.min, surface.max, cooling),
    typ: core * canRise(current.typ, resistance.range.typ, surface.typ, cooling),
    max: core * canRise(current.max, resistance.range.max, surface.min, cooling),
  };
  const most = mostByList(part, current.max, circumstances);
  const bounded = most !== undefined && most.rise < rise.max;
  return {
    rise: bounded ? mapRising(rise, (kelvin) => Math.min(kelvin, most.rise)) : rise,
    listing: bounded ? most.listing : undefined,
    current,
    thermal,
  };
};

/**
 * Rise of a part's temperature by the ripple current; of several parts, the warmest. What is missing
 * where it is not known.
 */
export const heatingOf = (part: Part, circumstances: Circumstances): Heating | PropertyId[] => {
  const current = conditionOf(circumstances, 'ripple-current');
  return singleParts(part)
    .map((single) =>
      heatingOfSingle(single, scale(current, currentShare(part, single)), circumstances),
    )
    .reduce((warmest, next) => {
      if (Array.isArray(warmest)) return warmest;
      return Array.isArray(next) || next.rise.typ > warmest.rise.typ ? next : warmest;
    });
};

/** The body that gets rid of the heat, in a working. */
const bodyInWords = (body: Body): string => {
  switch (body.from) {
    case 'estimate':
      return 'a body estimated from the charge that the type packs in';
    case 'between':
      return `a body ${bodyWords(body)}`;
    default:
      return bodyWords(body);
  }
};

/** What bounds the rise, in a working. */
const listedInWords = (listing: RippleListing | undefined): string =>
  listing === undefined
    ? ''
    : `, no more than the ${formatValue(listing.ripple.current, 'A')} listed at ` +
      `${formatValue(listing.ripple.frequency, 'Hz')} and ` +
      `${formatValue(listing.ripple.temperature, 'degC')} let expect`;

/** Rise of temperature by the ripple current. */
export const rippleHeating: FindingModel = {
  measure: (part, circumstances) => {
    const heating = heatingOf(part, circumstances);
    if (Array.isArray(heating)) return { status: 'unknown', missing: heating };
    const { properties, sources, bases } = heating.thermal;
    const { listing } = heating;
    const grounds = listing === undefined ? [] : [listing.ripple, listing.frequency];
    return {
      ...{ status: 'known', value: heating.rise, properties },
      sources: [...new Set([...sources, ...grounds.flatMap((one) => one.sources)])],
      bases: [...bases, ...grounds.flatMap((one) => one.bases)],
    };
  },
  working: (part, circumstances, value) => {
    const heating = heatingOf(part, circumstances);
    if (Array.isArray(heating)) return '';
    const { resistance, body, core } = heating.thermal;
    const inside =
      core === 1 ? '' : ` whose core warms ${formatValue(core, 'ratio')} as much as its surface`;
    const current = heating.current.typ;
    const from = originOf(resistance, conditionOf(circumstances, 'f-work').typ);
    return (
      `${formatValue(current, 'A')} squared × ${formatQuantity(resistance.range, 'ohm')} ${from} = ` +
      `${formatValue(heatByCurrent(current, resistance.range.typ), 'W')} in ${bodyInWords(body)}${inside}: ` +
      `${formatQuantity(value, 'K')}${listedInWords(heating.listing)}; an estimate`
    );
  },
};
