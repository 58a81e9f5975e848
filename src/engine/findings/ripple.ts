import { currentShare, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import type { PropertyId } from '../catalogue.ts';
import { lossResistance } from '../equations/inrush.ts';
import { canRise, canSurface, rippleVoltage as sagOf, triangularRms } from '../equations/ripple.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { scale, type Range } from '../quantities/range.ts';
import { nearestLoss } from './loss.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';
import { capacitanceAsBought, serviceCapacitance } from './service-capacitance.ts';

/** Ripple (V) of a part that never goes below its smallest allowed value. */
const designedRipple = (circumstances: Circumstances): number => {
  const { original, position } = circumstances;
  const load = conditionOf(circumstances, 'load-current').typ;
  const least = original.capacitance * position.value_low;
  return load / (conditionOf(circumstances, 'f-work').typ * least);
};

/** Ripple from crest to trough over tolerance, temperature and age of the part. */
export const rippleVoltage: FindingModel = {
  // What the smallest allowed value lets through was right by design, whatever is asked.
  limit: (circumstances) => ({
    high: Math.max(conditionOf(circumstances, 'ripple-allowed').typ, designedRipple(circumstances)),
  }),
  measure: (part, circumstances) => {
    const { capacitance, properties } = serviceCapacitance(part, circumstances);
    const load = conditionOf(circumstances, 'load-current');
    const hertz = conditionOf(circumstances, 'f-work').typ;
    return {
      status: 'known',
      value: {
        min: sagOf(load.min, hertz, capacitance).min,
        typ: sagOf(load.typ, hertz, capacitance).typ,
        max: sagOf(load.max, hertz, capacitance).max,
      },
      properties,
    };
  },
  working: (part, circumstances, value) => {
    const { capacitance } = serviceCapacitance(part, circumstances);
    return (
      `${formatValue(conditionOf(circumstances, 'load-current').typ, 'A')} / ` +
      `(${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')} × ` +
      `${formatQuantity(capacitance, 'F')}) = ${formatQuantity(value, 'V')} from crest to trough, ` +
      `${formatValue(triangularRms(value.typ), 'V')} effective`
    );
  },
};

const DENSITY = 'charge-density';

/** Bodies (m3) smaller than this are not made with leads. */
const SMALLEST_BODY = 0.05e-6;

/** How a current warms a part, and what that was worked out from. */
export interface Heating {
  /** K */
  rise: Range;
  /** ohm */
  resistance: Range;
  /** A */
  current: Range;
  properties: PropertyId[];
}

/**
 * Rise of a single part's temperature by the current through it, estimated from its loss and from the size of
 * body that its type packs its charge into. Nothing where either is not known.
 */
const heatingOfSingle = (
  part: Part,
  current: Range,
  circumstances: Circumstances,
): Heating | undefined => {
  const density = rangeOf(circumstances, part, DENSITY);
  const loss = nearestLoss(part, circumstances);
  if (density === undefined || loss === undefined) return undefined;
  const hertz = conditionOf(circumstances, 'f-work').typ;
  const farad = capacitanceAsBought(part);
  const resistance: Range = {
    min: lossResistance(loss.range.min, hertz, farad.max),
    typ: lossResistance(loss.range.typ, hertz, farad.typ),
    max: lossResistance(loss.range.max, hertz, farad.min),
  };
  // A body is made for what is marked, whatever the part in it measures.
  const surface = (charge: number): number =>
    canSurface(Math.max(SMALLEST_BODY, (part.capacitance * part.ratedVoltage) / charge));
  return {
    rise: {
      min: canRise(current.min, resistance.min, surface(density.min)),
      typ: canRise(current.typ, resistance.typ, surface(density.typ)),
      max: canRise(current.max, resistance.max, surface(density.max)),
    },
    resistance,
    current,
    properties: [loss.property, DENSITY],
  };
};

/** Rise of a part's temperature by the ripple current; of several parts, the warmest. */
export const heatingOf = (part: Part, circumstances: Circumstances): Heating | undefined => {
  const current = conditionOf(circumstances, 'ripple-current');
  return singleParts(part)
    .map((single) =>
      heatingOfSingle(single, scale(current, currentShare(part, single)), circumstances),
    )
    .reduce((warmest, next) =>
      warmest !== undefined && next !== undefined && next.rise.typ <= warmest.rise.typ
        ? warmest
        : next,
    );
};

/** Rise of temperature by the ripple current. */
export const rippleHeating: FindingModel = {
  measure: (part, circumstances) => {
    const heating = heatingOf(part, circumstances);
    if (heating !== undefined) {
      return { status: 'known', value: heating.rise, properties: heating.properties };
    }
    const lacksSize = rangeOf(circumstances, part, DENSITY) === undefined;
    return { status: 'unknown', missing: [lacksSize ? DENSITY : 'dissipation-factor-120hz'] };
  },
  working: (part, circumstances, value) => {
    const heating = heatingOf(part, circumstances);
    if (heating === undefined) return '';
    const current = heating.current.typ;
    return (
      `${formatValue(current, 'A')} squared × ${formatQuantity(heating.resistance, 'ohm')} = ` +
      `${formatValue(current ** 2 * heating.resistance.typ, 'W')} in a body of the usual size: ` +
      `${formatQuantity(value, 'K')}; an estimate`
    );
  },
};
