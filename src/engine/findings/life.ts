import type { Part } from '../assessment/parts.ts';
import type { Basis, PropertyId, SourceId } from '../catalogue.ts';
import { BEYOND_TELLING } from '../equations/beyond-telling.ts';
import { voltageLifeFactor, wearLife } from '../equations/life.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, mapFalling, scale, type Range } from '../quantities/range.ts';
import { HOUR } from '../quantities/si.ts';
import { voltageGainBy } from '../laws.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import {
  conditionOf,
  knowledgeOf,
  rangeOf,
  type Circumstances,
  type FindingModel,
} from './model.ts';
import { heatingOf } from './heating.ts';

const RATED = 'rated-life';
const DOUBLING = 'life-doubling';
const RISE = 'rise-halving';
const TEMPERATURE = 'temperature-max';

interface Life {
  /** In use, s. */
  life: Range;
  rated: Range;
  ratedTemperature: Range;
  voltageFactor: number;
  rise: Range;
  properties: PropertyId[];
  sources: SourceId[];
  bases: Basis[];
}

const lifeOf = (part: Part, circumstances: Circumstances): Life | undefined => {
  const rated = rangeOf(circumstances, part, RATED);
  const ratedTemperature = rangeOf(circumstances, part, TEMPERATURE);
  const heating = heatingOf(part, circumstances);
  if (rated === undefined || ratedTemperature === undefined || Array.isArray(heating)) return;
  const usual = exactly(ruleOf(circumstances.catalogue, 'halving'));
  const doubling = rangeOf(circumstances, part, DOUBLING) ?? usual;
  const riseHalving = rangeOf(circumstances, part, RISE) ?? usual;
  const ambient = conditionOf(circumstances, 't-max');
  const voltageFactor = voltageLifeFactor(
    conditionOf(circumstances, 'vdc').typ,
    part.ratedVoltage,
    voltageGainBy(circumstances.catalogue),
  );
  const longest = ruleOf(circumstances.catalogue, 'longest-life');
  const { rise } = heating;
  const at = (good: 'min' | 'typ' | 'max', bad: 'min' | 'typ' | 'max', factor: number): number =>
    wearLife({
      rated: rated[good],
      ratedTemperature: ratedTemperature[good],
      ambient: ambient[bad],
      doubling: doubling.typ,
      rise: rise[bad],
      riseHalving: riseHalving[good],
      voltageFactor: factor,
      longest,
    });
  return {
    // Makers differ on whether unused voltage lengthens life at all: the worst part gains nothing.
    life: {
      min: at('min', 'max', 1),
      typ: at('typ', 'typ', voltageFactor),
      max: at('max', 'min', voltageFactor),
    },
    rated,
    ratedTemperature,
    voltageFactor,
    rise,
    properties: [RATED, TEMPERATURE, ...heating.thermal.properties],
    sources: heating.thermal.sources,
    bases: heating.thermal.bases,
  };
};

/** A life in words: a part that boils by self-heating has none, be it minutes or microseconds. */
const lifeInWords = (life: Range): string => {
  if (life.min >= HOUR) return `${formatQuantity(life, 's')} of use`;
  return life.max < HOUR
    ? 'less than an hour of use'
    : `less than an hour to ${formatValue(life.max, 's')} of use`;
};

/** Share of its life that a part uses up in the years to come. */
export const life: FindingModel = {
  measure: (part, circumstances) => {
    if (knowledgeOf(circumstances, part, RATED).status === 'not-applicable') {
      return { status: 'known', value: exactly(0), properties: [] };
    }
    const own = lifeOf(part, circumstances);
    if (own === undefined) return { status: 'unknown', missing: [RATED] };
    const inUse = conditionOf(circumstances, 'years').max * conditionOf(circumstances, 'duty').max;
    return {
      status: 'known',
      value: mapFalling(own.life, (seconds) => Math.min(inUse / seconds, BEYOND_TELLING)),
      properties: own.properties,
      sources: own.sources,
      bases: own.bases,
    };
  },
  working: (part, circumstances, value) => {
    const own = lifeOf(part, circumstances);
    if (own === undefined) return 'nothing in it dries out';
    const ambient = conditionOf(circumstances, 't-max').typ;
    const duty = conditionOf(circumstances, 'duty').typ;
    return (
      `${formatQuantity(scale(own.rated, 1 / HOUR), 'grade')} h at ${formatQuantity(own.ratedTemperature, 'degC')}, ` +
      `used at ${formatValue(ambient, 'degC')} and ${formatValue(own.rise.typ, 'K')} of self-heating, ` +
      `× ${formatValue(own.voltageFactor, 'grade')} for the voltage: ` +
      `${lifeInWords(own.life)}; ` +
      `${formatValue(conditionOf(circumstances, 'years').typ, 's')} at ` +
      `${formatValue(duty, 'fraction')} of the time use up ${formatQuantity(value, 'fraction')}`
    );
  },
};
