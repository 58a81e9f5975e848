import { rippleTaken } from '../equations/ripple.ts';
import { currentShare, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, PropertyId, SourceId } from '../catalogue.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, overPositive, scale, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { temperatureFactor } from '../sizes/ripple-factors.ts';
import type { ListedRipple } from '../sizes/ripple-of.ts';
import { currentFor, thermalOf } from './heating.ts';
import { listingOf } from './listed-ripple.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';

const HIGHEST = 'temperature-max';

/** Rise (K) that no part is spared: at its highest temperature it bears next to none. */
const LEAST_RISE = 0.01;

/** Rise (K) that a part bears: the usual one, but not past its highest temperature. */
const bearableRise = (part: Part, circumstances: Circumstances): number => {
  const highest = rangeOf(circumstances, part, HIGHEST)?.typ ?? Infinity;
  const spare = highest - conditionOf(circumstances, 't-max').max;
  return Math.max(LEAST_RISE, Math.min(ruleOf(circumstances.catalogue, 'ripple-rise'), spare));
};

/** Ripple current that a single part takes at the frequency and temperature of the position. */
interface Allowed {
  /** A */
  current: Range;
  /** How it came about; nothing where it is estimated by heat. */
  listed: { ripple: ListedRipple; byFrequency: number; byTemperature: number } | undefined;
  properties: PropertyId[];
  sources: SourceId[];
  bases: Basis[];
}

const allowedByList = (part: Part, circumstances: Circumstances): Allowed | undefined => {
  const listing = listingOf(part, circumstances);
  if (listing === undefined) return undefined;
  const { ripple, frequency } = listing;
  const warm = conditionOf(circumstances, 't-max').max;
  const temperature = temperatureFactor(circumstances.catalogue, part, ripple.temperature, warm);
  if (temperature === undefined) return undefined;
  const [byFrequency, byTemperature] = [frequency.factor, temperature.factor];
  const grounds = [ripple, frequency, temperature];
  return {
    current: exactly(rippleTaken(ripple.current, byFrequency, byTemperature)),
    listed: { ripple, byFrequency, byTemperature },
    properties: [],
    sources: [...new Set(grounds.flatMap(({ sources }) => sources))],
    bases: grounds.flatMap(({ bases }) => bases),
  };
};

const allowedByHeat = (part: Part, circumstances: Circumstances): Allowed | PropertyId[] => {
  const thermal = thermalOf(part, circumstances);
  if (Array.isArray(thermal)) return thermal;
  const { properties, sources, bases } = thermal;
  return {
    current: currentFor(thermal, bearableRise(part, circumstances)),
    listed: undefined,
    properties: [...properties, HIGHEST],
    sources,
    // The rise that parts bear is common practice, whatever the rest is known by.
    bases: [...bases, 'common-practice'],
  };
};

/** The current through one part of the whole against what it takes. */
interface Load {
  part: Part;
  current: Range;
  allowed: Allowed;
  /** The one over the other. */
  ratio: Range;
}

const loadOf = (part: Part, whole: Part, circumstances: Circumstances): Load | PropertyId[] => {
  const allowed = allowedByList(part, circumstances) ?? allowedByHeat(part, circumstances);
  if (Array.isArray(allowed)) return allowed;
  const current = scale(conditionOf(circumstances, 'ripple-current'), currentShare(whole, part));
  return { part, current, allowed, ratio: overPositive(current, allowed.current) };
};

/** Of several parts, the one that is loaded most; what is missing where it is not known. */
const heaviestLoad = (whole: Part, circumstances: Circumstances): Load | PropertyId[] =>
  singleParts(whole)
    .map((part) => loadOf(part, whole, circumstances))
    .reduce((heaviest, next) => {
      if (Array.isArray(heaviest)) return heaviest;
      return Array.isArray(next) || next.ratio.typ > heaviest.ratio.typ ? next : heaviest;
    });

const inWords = ({ part, allowed }: Load, circumstances: Circumstances): string => {
  const { current, listed } = allowed;
  if (listed === undefined) {
    return (
      `${formatQuantity(current, 'A')} (not listed; what warms its body by ` +
      `${formatValue(bearableRise(part, circumstances), 'K')}, an estimate)`
    );
  }
  const { ripple, byFrequency, byTemperature } = listed;
  const hertz = conditionOf(circumstances, 'f-work').typ;
  const warm = conditionOf(circumstances, 't-max').max;
  return (
    `(${formatValue(ripple.current, 'A')} listed at ${formatValue(ripple.frequency, 'Hz')} and ` +
    `${formatValue(ripple.temperature, 'degC')} × ${formatValue(byFrequency, 'grade')} at ` +
    `${formatValue(hertz, 'Hz')} × ${formatValue(byTemperature, 'grade')} at ` +
    `${formatValue(warm, 'degC')})`
  );
};

/** Ripple current against what the part takes at the frequency and temperature of the position. */
export const rippleCurrent: FindingModel = {
  measure: (part, circumstances) => {
    const load = heaviestLoad(part, circumstances);
    if (Array.isArray(load)) return { status: 'unknown', missing: load };
    const { properties, sources, bases } = load.allowed;
    return { status: 'known', value: load.ratio, properties, sources, bases };
  },
  working: (part, circumstances, value) => {
    const load = heaviestLoad(part, circumstances);
    if (Array.isArray(load)) return '';
    const { current, allowed } = load;
    const through =
      load.part.capacitance === part.capacitance
        ? ''
        : ` through the ${formatValue(load.part.capacitance, 'F')} of it`;
    const cool =
      (allowed.listed?.byTemperature ?? 1) > 1 ? '; what the cool allows more costs life' : '';
    return (
      `${formatQuantity(current, 'A')}${through} / ${inWords(load, circumstances)} = ` +
      `${formatQuantity(value, 'fraction')}${cool}`
    );
  },
};
